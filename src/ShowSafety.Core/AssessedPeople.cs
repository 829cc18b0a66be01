using NetTopologySuite.Geometries;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core;

/// <summary>What is said about the adults or the children of a group, in sentences.</summary>
/// <param name="GroupId">Id of the group.</param>
/// <param name="Part">Adults or children.</param>
/// <param name="Name">Name people know the group by.</param>
/// <param name="Role">What they do there.</param>
/// <param name="Sentence">How loud it is for them, and how much in a day.</param>
/// <param name="Wear">What to wear by the rules chosen, or that nothing is asked, or that it can't be told.</param>
/// <param name="Stay">How long they may stay, or that it can't be told.</param>
/// <param name="Limits">What each rule set that applies makes of it, in the order chosen.</param>
public sealed record AssessedPerson(
    string GroupId,
    PersonPart Part,
    string Name,
    PersonRole Role,
    string Sentence,
    string Wear,
    string Stay,
    ValueList<AssessedLimit> Limits
)
{
    /// <summary>The place of the highest exposure, or null when it can't be told or nothing is heard.</summary>
    public PlanPoint? Place { get; init; }
}

/// <summary>What a rule set makes of somebody's exposure.</summary>
/// <param name="RuleSetId">Id of the rule set.</param>
/// <param name="Title">Title of the rule set.</param>
/// <param name="IsComparison">Whether it does not cover them and is shown as a comparison.</param>
/// <param name="Verdict">The gravest verdict of its clauses.</param>
/// <param name="Sentence">Values against limits and what is asked for.</param>
public sealed record AssessedLimit(string RuleSetId, string Title, bool IsComparison, Verdict Verdict, string Sentence);

/// <summary>Puts the exposures of a plan's people into sentences.</summary>
public static class AssessedPeople
{
    /// <summary>One entry for the adults and one for the children of each group, in the plan's order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="assessment">Its assessment.</param>
    public static ValueList<AssessedPerson> Of(Plan plan, Assessment assessment)
    {
        var words = new Phrasebook(assessment.Names);
        Zone[] keepingOut = [.. assessment.Zones.Where(z => z.Effect == ZoneEffect.Excludes)];
        return [.. assessment.Exposure.People.Select(person => Said(plan, words, keepingOut, person))];
    }

    private static AssessedPerson Said(Plan plan, Phrasebook words, Zone[] keepingOut, PersonExposure person)
    {
        PersonGroup group = plan.People.First(g => g.Id == person.GroupId);
        string name = words.Name(group.Id)!;
        Geometry where =
            group.Area.Count >= 3 ? SiteGeometry.Polygon(group.Area)
            : group.Place is { } place ? SiteGeometry.Point(place)
            : SiteGeometry.Empty;
        Zone[] kept =
        [
            .. keepingOut.Where(z => AssessedListeners.Binds(z, group.Role, person.Part) && z.Area.Intersects(where)),
        ];
        string part = person.Part == PersonPart.Adults ? "adults" : "children";
        ListenerFacts facts = AssessedListeners.Facts(plan, words, group, person, $"{name} ({part})", kept);
        return new(
            group.Id,
            person.Part,
            name,
            group.Role,
            ListenerSentences.Loud(facts),
            ListenerSentences.Wear(facts),
            ListenerSentences.Stay(facts),
            [.. facts.Rules.Select(rule => Limit(rule, person))]
        )
        {
            Place = person.WorstPlace,
        };
    }

    private static AssessedLimit Limit(RuleFacts rule, PersonExposure person)
    {
        Verdict[] verdicts = [.. person.Rules.Where(r => r.RuleSetId == rule.Id).Select(r => r.Verdict)];
        Verdict gravest =
            verdicts.Contains(Verdict.Exceeds) ? Verdict.Exceeds
            : verdicts.Contains(Verdict.CannotTell) ? Verdict.CannotTell
            : Verdict.Meets;
        return new(rule.Id, rule.Title, rule.IsComparison, gravest, ListenerSentences.Of(rule));
    }
}
