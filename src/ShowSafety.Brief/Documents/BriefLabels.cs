using System.Globalization;
using ShowSafety.Core;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>
/// Every label of the printed pages that the wording of findings and figures does not give: heads, column names, the
/// words for choices, and the cautions. None of them is made anywhere else.
/// </summary>
internal static class BriefLabels
{
    public const string DocumentTitle = "Brief for running a model gas turbine before the public";
    public const string Subject = "Plan of a demonstration: levels, zones, findings, sources";
    public const string UnnamedEvent = "Event not named";
    public const string NoDate = "Date not given";
    public const string NotStated = "not stated";
    public const string WholePlan = "Place and plan";
    public const string WholeSite = "The whole site";
    public const string DetailTitle = "Round the engine, larger";
    public const string DetailDescription =
        "The surroundings of the engine at a larger scale, drawn and hatched as on the plan of the whole site.";
    public const string AllOfTheSite = ": the whole site";
    public const string SeeDetail = "See the larger drawing";
    public const string Uncut = "Zones are drawn uncut: what lies beyond the edge of the site is part of them.";
    public const string CannotTell = ExposureWords.CannotTell;
    public const string Meets = "Meets the rule chosen";
    public const string Comparison = ExposureWords.Comparison;
    public const string AtTheEar = "under the protector worn";
    public const string UnknownRules = "not known here, nothing was compared with it";
    public const string NothingRuns = ExposureWords.NothingRuns;
    public const string InHearingZone = ExposureWords.InHearingZone;
    public const string PlanNotes = "Notes of the plan";
    public const string Nobody = "nobody named";

    public const string StopsHead = "NOT TO RUN";
    public const string StopsLead = "Each of these stands until the plan is changed, with evidence:";
    public const string CautionsHead = "What this brief is, and what it is not";

    public const string EventSection = "The demonstration";
    public const string SitePlanSection = "Site plan";
    public const string PeopleSection = "Levels and exposures, by person";
    public const string NotesAnnex = "Annex A: findings for information";
    public const string PeopleAnnex = "Annex B: levels and exposures in full";
    public const string RulesSection = "Annex C: rules, clause by clause";
    public const string ZonesSection = "Distances and zones";
    public const string AirSection = "Indoor air";
    public const string ValuesSection = "Annex D: other calculated values";
    public const string FindingsSection = "Before the run";
    public const string FindOutSection = "To be found out";
    public const string PapersSection = "Permissions and evidence";
    public const string AssumptionsSection = "Annex E: what was not measured";
    public const string SourcesSection = "Annex F: sources";
    public const string SignaturesSection = "Signatures";

    public const string BestAndPlanning =
        "Planning values lie on the cautious side of the best estimate and are the ones compared with limits. For sound "
        + "the planning value is the best estimate plus the expanded uncertainty, one-sided 95 %.";

    public const string ZonesLead =
        "A zone applies in full while its phase lasts, to everybody it names, whatever the site plan shows of it. "
        + "Distances are from the engine named; numbers in brackets are those of the sources.";

    public const string AssumptionsLead =
        "Everything the results rest on that was not measured for this engine and this place. What is assumed was taken "
        + "on the cautious side because nobody stated it.";

    public const string SignaturesLead =
        "Signed by hand on the printed brief. Whoever signs has read the whole of it, annexes included, and signs for the "
        + "plan version at the foot of this page and for no other.";

    public const string SignaturesBarred = "NOT TO RUN: signing does not lift what stands on the first page.";

    public static readonly ValueList<string> SignatureRoles =
    [
        "Runs the engine",
        "Answers for the public",
        "Organiser",
        "For the venue",
    ];

    public static readonly ValueList<string> SignatureFields = ["Name", "Signature", "Date and time"];

    public static readonly ValueList<string> Cautions =
    [
        "It is an aid to planning. It holds for the dates, the weather, the engine and the plan version printed on it, and "
            + "for nothing else.",
        "It does not take the place of a competent person on the spot, of the rules of the venue and the organiser, of the "
            + "fire authority, of the insurers or of the law of the place. Where they ask for more, they decide.",
        "Its results are no better than the data given: what was not measured is listed, and what could not be told is "
            + "called so.",
        "No distance alone makes a bursting rotor harmless.",
        "Nothing is run while a page says NOT TO RUN.",
    ];

    public static string MoreStops(int more) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"And {more} more: all of them are listed under {FindingsSection}."
        );

    public static string OnDays(IReadOnlyList<DateOnly> days) =>
        days.Count switch
        {
            0 => NoDate,
            1 => Day(days[0]),
            _ => $"{Day(days[0])} and {(days.Count - 1).ToString(CultureInfo.InvariantCulture)} more",
        };

    public static string Day(DateOnly day) => day.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture);

    public static string Time(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    public static string PlanVersion(string hash) => $"Plan version {hash[..Math.Min(12, hash.Length)]}";

    public static string Counted(PersonPart part, int number) =>
        (part, number) switch
        {
            (PersonPart.Children, 1) => "child",
            (PersonPart.Children, _) => "children",
            (_, 1) => "adult",
            _ => "adults",
        };

    public static string Of(Severity severity) =>
        severity switch
        {
            Severity.Stop => "Stops",
            Severity.Act => "To be closed before the run, by name and time",
            _ => "For information",
        };

    public static string Of(ZoneEffect effect) => ZoneWords.Of(effect);

    public static string Of(Audience whom) => ZoneWords.Of(whom);

    public static string Of(Phases phases) => ZoneWords.Of(phases);

    public static string Of(PersonRole role) =>
        role switch
        {
            PersonRole.Crew => "crew",
            PersonRole.Exhibitor => "exhibitors",
            PersonRole.Visitor => "visitors",
            _ => "neighbours",
        };

    public static string Of(PermissionGiver giver) =>
        giver switch
        {
            PermissionGiver.Venue => "the venue",
            PermissionGiver.Organiser => "the organiser",
            PermissionGiver.FireAuthority => "the fire officer or fire authority",
            _ => "the insurer",
        };

    public static string Of(PersonPart part) => part == PersonPart.Adults ? "adults" : "children";

    public static string Of(RuleMetric metric) => AssessedListeners.Of(metric);

    public static string Of(Duty duty) => AssessedListeners.Of(duty);

    public static string Of(LegalClass legalClass) =>
        legalClass switch
        {
            LegalClass.Worker => "at work",
            LegalClass.SelfEmployed => "self-employed",
            LegalClass.Volunteer => "volunteer",
            _ => "member of the public",
        };
}
