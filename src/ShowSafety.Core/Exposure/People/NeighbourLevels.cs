using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.People;

/// <summary>
/// What neighbours hear of the engines as equivalent levels: over the worst hour, and over each time the plan says they
/// are there, on the worst day. Free field; at a façade the level is 3 dB higher, ISO 1996-2:2017 (from memory). Local
/// limits and corrections for tones are the authority's.
/// </summary>
internal static class NeighbourLevels
{
    /// <summary>A façade throws sound back in step: level at it over the free field in dB.</summary>
    public const double FacadeDb = 3;

    private const double HourMinutes = 60;

    /// <summary>Levels of a group of neighbours; empty for others, where levels can't be told, and for
    /// times without a run.</summary>
    public static ValueList<NeighbourLevel> Of(PersonContext context, PersonGroup group)
    {
        var whole = StayPattern.Whole(context.Timeline);
        if (
            group.Role != PersonRole.Neighbour
            || whole.Heard.Count == 0
            || PersonAssessor.Ears(context, group, PersonPart.Adults, whole) is not { } ears
        )
        {
            return [];
        }

        IEnumerable<NeighbourLevel> stretches = group
            .Presence.Where(p => p.To > p.From)
            .Select(p => new NeighbourLevel(group.Id, Named(p), Worst(ears, l => Stretch(context.Timeline, p, l))));
        return
        [
            .. stretches
                .Prepend(new(group.Id, "60 min", Worst(ears, levels => Window(whole, levels))))
                .Where(level => level.FreeFieldDbA.Best > Decibels.SilenceDb),
        ];
    }

    private static Quantity Worst(ValueList<HeardLevels> ears, Func<ValueList<double>, double> metric)
    {
        HeardLevels worst = ears.MaxBy(ear => metric(ear.PlanningDbA))!;
        return Quantity.CautiousHigh(metric(worst.BestDbA), metric(worst.PlanningDbA), Unit.DecibelA) with
        {
            Citations = ["iso-1996-2"],
            Sum = "worst-window",
        };
    }

    private static double Window(StayPattern whole, ValueList<double> levels) =>
        whole
            .WindowShares(HourMinutes, WindowKind.Sliding)
            .Select(shares => Decibels.FromEnergy(Weighted(shares, levels)))
            .DefaultIfEmpty(Decibels.SilenceDb)
            .Max();

    private static double Stretch(Timeline timeline, Presence there, ValueList<double> levels)
    {
        double hours = (there.To - there.From).TotalHours;
        return StayPattern
            .During(timeline, [there])
            .HoursByDay.Select(heard => Decibels.FromEnergy(Weighted(heard, levels) / hours))
            .DefaultIfEmpty(Decibels.SilenceDb)
            .Max();
    }

    private static double Weighted(ValueList<double> weights, ValueList<double> levels) =>
        weights.Select((weight, i) => weight * Decibels.ToEnergy(levels[i])).Sum();

    private static string Named(Presence there) => $"{there.From:HH\\:mm}-{there.To:HH\\:mm}";
}

/// <summary>An equivalent level at neighbours.</summary>
/// <param name="GroupId">Id of the group.</param>
/// <param name="Period">The period: the worst 60 minutes, or a time of day.</param>
/// <param name="FreeFieldDbA">L_Aeq in dB(A) in the free field.</param>
internal sealed record NeighbourLevel(string GroupId, string Period, Quantity FreeFieldDbA)
{
    /// <summary>As a figure.</summary>
    public Figure Figure => new("exposure.neighbour-level", GroupId, FreeFieldDbA) { PartId = Period };

    /// <summary>As a finding, with the level at a façade.</summary>
    public Finding Finding =>
        new("exposure.neighbour-heard", Severity.Note)
        {
            ElementId = GroupId,
            Citations = FreeFieldDbA.Citations,
            Arguments =
            [
                FindingArgument.Of("period", Period),
                FindingArgument.Of("free", FreeFieldDbA),
                FindingArgument.Of(
                    "facade",
                    Quantity.CautiousHigh(
                        FreeFieldDbA.Best + NeighbourLevels.FacadeDb,
                        FreeFieldDbA.Planning + NeighbourLevels.FacadeDb,
                        Unit.DecibelA
                    )
                ),
            ],
        };
}
