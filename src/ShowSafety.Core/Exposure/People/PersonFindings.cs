using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Exposure.Zones;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.People;

/// <summary>What must be said about the exposure of one part of a group.</summary>
public static class PersonFindings
{
    /// <summary>The findings, in a fixed order.</summary>
    public static IEnumerable<Finding> Of(PersonContext context, PersonGroup group, PersonExposure person) =>
        Unknowns(context, group, person)
            .Concat(Coverage(context, group, person))
            .Concat(RuleFindings(context, group, person))
            .Concat(Ceilings(context, group, person))
            .Concat(ProtectorFindings.Of(context, group, person));

    /// <summary>Name of a part as it stands in a sentence.</summary>
    public static FindingArgument People(PersonPart part) =>
        FindingArgument.Of("people", part == PersonPart.Adults ? "adults" : "children");

    // Visitors, neighbours and children are those whom nobody trained, equipped or told what to expect.
    internal static bool IsUnprotectedPublic(PersonContext context, PersonGroup group, PersonPart part) =>
        (
            RuleCover.ClassOf(group) == LegalClass.Visitor
            || RuleCover.IsPublic(group.Role)
            || part == PersonPart.Children
        ) && (context.Protector(group.ProtectorId) is not { } protector || !WornProtector.IsRated(protector));

    private static IEnumerable<Finding> Unknowns(PersonContext context, PersonGroup group, PersonExposure person)
    {
        if (group.Area.Count < 3 && group.Place is null)
        {
            yield return About(group, person, "exposure.place-unknown", Severity.Stop) with
            {
                CannotTell = true,
                Field = "PersonGroup.Area",
                Row = ZoneRow.AudienceLimit,
            };
        }
        else if (person.Hearing == HearingState.CannotTell && context.Timeline.Combinations.Count > 0)
        {
            yield return About(group, person, "exposure.level-at-people-unknown", Severity.Stop) with
            {
                CannotTell = true,
                Field = "EngineSheet.Measurements",
                Row = ZoneRow.AudienceLimit,
            };
        }

        if (person is { Hearing: HearingState.Known, Peak: null })
        {
            yield return About(group, person, "exposure.peak-at-people-unknown", Severity.Act) with
            {
                CannotTell = true,
                Field = "SoundMeasurement.PeakDbC",
                Row = ZoneRow.SoundCeiling,
                Citations = ["who-community-noise-1999"],
            };
        }
    }

    private static IEnumerable<Finding> Coverage(PersonContext context, PersonGroup group, PersonExposure person)
    {
        if (context.RuleSets.Count > 0 && person.Rules.Count == 0)
        {
            bool mustHave = group.Role == PersonRole.Visitor || person.Part == PersonPart.Children;
            yield return About(group, person, "exposure.covered-by-no-rule", mustHave ? Severity.Act : Severity.Note);
        }

        foreach (string id in person.Rules.Where(rule => rule.IsComparison).Select(rule => rule.RuleSetId).Distinct())
        {
            yield return About(group, person, "exposure.rule-as-comparison", Severity.Note, RuleTitle(id)) with
            {
                Citations = [Source(id)],
            };
        }
    }

    private static IEnumerable<Finding> RuleFindings(PersonContext context, PersonGroup group, PersonExposure person)
    {
        foreach (IGrouping<string, RuleVerdict> rule in person.Rules.GroupBy(r => r.RuleSetId))
        {
            RuleVerdict? worst = rule.Where(r => r.Verdict == Verdict.Exceeds).MaxBy(r => Weight(r.Duty));
            if (worst?.Value is { } value)
            {
                bool isStop = worst.Duty == Duty.KeepAudienceOut && IsUnprotectedPublic(context, group, person.Part);
                yield return About(
                    group,
                    person,
                    Code(worst.Duty),
                    isStop ? Severity.Stop : Severity.Act,
                    RuleTitle(worst.RuleSetId),
                    FindingArgument.Of("value", value),
                    FindingArgument.Of("limit", worst.Limit)
                ) with
                {
                    Row = worst.Duty == Duty.KeepAudienceOut ? ZoneRow.AudienceLimit : ZoneRow.HearingZone,
                    Citations = [Source(worst.RuleSetId)],
                };
            }

            if (rule.Any(r => r.Metric == RuleMetric.FastMaximumLevel && r.Verdict == Verdict.CannotTell))
            {
                yield return About(
                    group,
                    person,
                    "exposure.fast-maximum-unknown",
                    Severity.Act,
                    RuleTitle(rule.Key)
                ) with
                {
                    CannotTell = true,
                    Citations = [Source(rule.Key)],
                };
            }
        }
    }

    private static IEnumerable<Finding> Ceilings(PersonContext context, PersonGroup group, PersonExposure person)
    {
        Severity severity = IsUnprotectedPublic(context, group, person.Part) ? Severity.Stop : Severity.Act;
        if (person.HighestLevel is { Planning: >= SoundZones.CeilingDbA } level)
        {
            yield return About(
                group,
                person,
                "exposure.ceiling-exceeded",
                severity,
                FindingArgument.Of("value", level),
                FindingArgument.Of("limit", Quantity.Plain(SoundZones.CeilingDbA, Unit.DecibelA))
            ) with
            {
                Row = ZoneRow.SoundCeiling,
                Citations = ["osha-1910-95"],
            };
        }

        double ceiling =
            person.Part == PersonPart.Children ? SoundZones.ChildPeakCeilingDbC : SoundZones.PeakCeilingDbC;
        if (person.Peak is { } peak && peak.Planning >= ceiling)
        {
            yield return About(
                group,
                person,
                "exposure.peak-ceiling-exceeded",
                severity,
                FindingArgument.Of("value", peak),
                FindingArgument.Of("limit", Quantity.Plain(ceiling, Unit.DecibelC))
            ) with
            {
                Row = ZoneRow.SoundCeiling,
                Citations = ["who-community-noise-1999"],
            };
        }
    }

    internal static Finding About(
        PersonGroup group,
        PersonExposure person,
        string code,
        Severity severity,
        params ValueList<FindingArgument> more
    ) =>
        new(code, severity)
        {
            ElementId = group.Id,
            Place = person.WorstPlace,
            Arguments = [People(person.Part), .. more],
        };

    private static string Code(Duty duty) =>
        duty switch
        {
            Duty.InformAndOffer => "exposure.duty-inform-and-offer",
            Duty.HearingProgramme => "exposure.duty-hearing-programme",
            Duty.WearAndMark => "exposure.duty-wear-and-mark",
            Duty.KeepAudienceOut => "exposure.audience-limit-exceeded",
            _ => "exposure.duty-not-to-exceed",
        };

    private static int Weight(Duty duty) =>
        duty switch
        {
            Duty.InformAndOffer => 0,
            Duty.HearingProgramme => 1,
            Duty.WearAndMark => 2,
            _ => 3,
        };

    private static FindingArgument RuleTitle(string id) =>
        FindingArgument.Of("ruleSet", RuleSetLibrary.Find(id)?.Title ?? id);

    private static string Source(string id) => RuleSetLibrary.Find(id)?.Source.Citation ?? id;
}
