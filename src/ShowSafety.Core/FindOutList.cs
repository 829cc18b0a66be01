using System.Collections.Frozen;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core;

/// <summary>
/// Makes the find-out list of a plan: what is missing, from the findings that say "cannot tell", and what was assumed,
/// priced by assessing the plan once more with a value that finding out may well give.
/// </summary>
public static class FindOutList
{
    // A line moves by rounding to the tape's decimetre alone; less than this is no gain.
    private const double SmallestGainMetres = 0.2;

    private static readonly FrozenDictionary<string, FieldDescription> Fields = FieldCatalogue
        .Reachable(FieldCatalogue.Plan)
        .SelectMany(r => r.Fields)
        .DistinctBy(f => f.FullName)
        .ToFrozenDictionary(f => f.FullName);

    /// <summary>The list, the costliest first.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="assessment">Its assessment.</param>
    /// <param name="memory">What was worked out before, or null: most of a plan is the same with one fact known.</param>
    /// <param name="cancel">Ends the pricing early.</param>
    public static ValueList<FindOutItem> Of(
        Plan plan,
        Assessment assessment,
        AssessorMemory? memory = null,
        CancellationToken cancel = default
    ) => Ordered(plan, assessment, assumption => Gain(plan, assessment, assumption, memory, cancel));

    /// <summary>The list without what not knowing costs in metres of crowd line.</summary>
    public static ValueList<FindOutItem> Unpriced(Plan plan, Assessment assessment) =>
        Ordered(plan, assessment, _ => null);

    private static ValueList<FindOutItem> Ordered(Plan plan, Assessment assessment, Func<Assumption, Quantity?> gain) =>
        [
            .. Missing(plan, assessment)
                .Concat(Assumed(assessment, gain))
                .OrderByDescending(i => i.Cost ?? Severity.Note)
                .ThenByDescending(i => i.LineMetres?.Best ?? 0)
                .ThenBy(i => i.Field, StringComparer.Ordinal)
                .ThenBy(i => i.ElementId, StringComparer.Ordinal),
        ];

    private static IEnumerable<FindOutItem> Missing(Plan plan, Assessment assessment)
    {
        HashSet<string> people = [.. plan.People.Select(p => p.Id)];
        return assessment
            .Findings.Where(f => f.Field is not null)
            .GroupBy(f => f.Field!)
            .SelectMany(field => Items(field.Key, field.GroupBy(f => Owner(f, people))));
    }

    /// <summary>
    /// The element a fact belongs to. A finding about people may rest on a fact about an engine or a protector, which
    /// is to be found out once and not once for everybody it reaches.
    /// </summary>
    private static string? Owner(Finding finding, HashSet<string> people) =>
        finding.ElementId is { } id
        && people.Contains(id)
        && !finding.Field!.StartsWith(nameof(PersonGroup), StringComparison.Ordinal)
            ? null
            : finding.ElementId;

    private static IEnumerable<FindOutItem> Items(string field, IEnumerable<IGrouping<string?, Finding>> owners)
    {
        IGrouping<string?, Finding>[] all = [.. owners];
        FieldDescription description = Fields[field];
        return all.Where(owner => owner.Key is not null || all.Length == 1)
            .Select(owner => new FindOutItem(
                field,
                owner.Key,
                description.Meaning,
                description.FindOut,
                owner.Max(f => f.Severity),
                null
            ));
    }

    private static IEnumerable<FindOutItem> Assumed(Assessment assessment, Func<Assumption, Quantity?> gain) =>
        assessment
            .Assumptions.Where(a => a.Pedigree == Pedigree.Assumed)
            .Select(a => new FindOutItem(a.Field, a.ElementId, a.Meaning, a.FindOut, null, gain(a)));

    private static Quantity? Gain(
        Plan plan,
        Assessment assessment,
        Assumption assumption,
        AssessorMemory? memory,
        CancellationToken cancel
    )
    {
        if (Fields[assumption.Field].Hopeful is not { } hopeful || Distance(assessment) is not { } now)
        {
            return null;
        }

        Plan known = PlanEdit.WithStated(plan, assumption.Pointer, hopeful);
        return Distance(Assessor.WithoutCosts(known, memory, cancel)) is { } then
            ? Quantity.Plain(now - then > SmallestGainMetres ? now - then : 0, Unit.Metre)
            : null;
    }

    private static double? Distance(Assessment assessment) =>
        assessment.Layout.Figures.Where(f => f.Key == "layout.line-distance").Min(f => (double?)f.Value.Best);
}
