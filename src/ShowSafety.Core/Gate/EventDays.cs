using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Gate;

/// <summary>First and last day on which an engine is shown; both null where the plan names no day.</summary>
/// <param name="First">First day, or null.</param>
/// <param name="Last">Last day, or null.</param>
internal readonly record struct EventDays(DateOnly? First, DateOnly? Last)
{
    /// <summary>The days of the event and of its runs, whichever reach farther.</summary>
    public static EventDays Of(Plan plan)
    {
        List<DateOnly> days =
        [
            .. plan.Event?.Days ?? [],
            .. (plan.Programme?.Runs ?? []).Select(r => r.Day).OfType<DateOnly>(),
        ];
        return days.Count == 0 ? new(null, null) : new(days.Min(), days.Max());
    }

    /// <summary>Whether a date comes too late to count on the first day; false where no day is known.</summary>
    public bool BeginBefore(DateOnly date) => First is { } first && date > first;
}
