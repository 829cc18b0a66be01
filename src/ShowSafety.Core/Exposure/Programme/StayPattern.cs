using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.Programme;

/// <summary>
/// How long somebody hears which combination of states, day by day and in any averaging window: every exposure
/// quantity at a place is a function of this and of one level per combination.
/// </summary>
public sealed class StayPattern
{
    private readonly ValueList<ValueList<RunningStretch>> _days;
    private readonly int _combinations;

    /// <summary>Makes the pattern of somebody who hears the given stretches.</summary>
    /// <param name="days">Stretches of each day.</param>
    /// <param name="combinations">Number of combinations the stretches point into.</param>
    public StayPattern(ValueList<ValueList<RunningStretch>> days, int combinations)
    {
        _days = days;
        _combinations = combinations;
        HoursByDay = [.. days.Select(Hours)];
        Heard = [.. Enumerable.Range(0, combinations).Where(c => HoursByDay.Any(hours => hours[c] > 0))];
    }

    /// <summary>Hours of each combination, for each day.</summary>
    public ValueList<ValueList<double>> HoursByDay { get; }

    /// <summary>Indices of the combinations heard at all, rising.</summary>
    public ValueList<int> Heard { get; }

    /// <summary>The pattern of somebody who is there for the whole programme.</summary>
    public static StayPattern Whole(Timeline timeline) =>
        new([.. timeline.Days.Select(day => day.Stretches)], timeline.Combinations.Count);

    /// <summary>
    /// The pattern of somebody who is there at certain times every day; without any usable time, the whole programme.
    /// </summary>
    public static StayPattern During(Timeline timeline, IEnumerable<Presence> presence)
    {
        TimeStretch[] there = Merged(presence.Where(p => p.To > p.From).Select(Stretch));
        return there.Length == 0
            ? Whole(timeline)
            : new([.. timeline.Days.Select(day => Clipped(day, there))], timeline.Combinations.Count);
    }

    /// <summary>
    /// Shares of time of each combination in every window that can be the worst one; what is left to 1 is background.
    /// Windows of different days are separate: a window past midnight hears the background of the next day.
    /// </summary>
    /// <param name="windowMinutes">Length of the window in minutes, above zero.</param>
    /// <param name="kind">How windows lie on the clock.</param>
    public ValueList<ValueList<double>> WindowShares(double windowMinutes, WindowKind kind)
    {
        double seconds = 60 * windowMinutes;
        return
        [
            .. _days
                .SelectMany(day =>
                    LevelWindows
                        .Starts([.. day.Select(s => s.Time)], seconds, kind)
                        .Select(start => Shares(day, start, seconds))
                )
                .Distinct(),
        ];
    }

    private static TimeStretch Stretch(Presence presence) =>
        new(presence.From.ToTimeSpan().TotalSeconds, presence.To.ToTimeSpan().TotalSeconds);

    // Overlapping presences must not count a stretch twice.
    private static TimeStretch[] Merged(IEnumerable<TimeStretch> stretches)
    {
        var merged = new List<TimeStretch>();
        foreach (TimeStretch next in stretches.OrderBy(s => s.FromSeconds))
        {
            if (merged.Count > 0 && next.FromSeconds <= merged[^1].ToSeconds)
            {
                merged[^1] = new(merged[^1].FromSeconds, Math.Max(merged[^1].ToSeconds, next.ToSeconds));
            }
            else
            {
                merged.Add(next);
            }
        }

        return [.. merged];
    }

    private static ValueList<RunningStretch> Clipped(ProgrammeDay day, TimeStretch[] there) =>
        [
            .. from stretch in day.Stretches
            from window in there
            let time = new TimeStretch(
                Math.Max(stretch.Time.FromSeconds, window.FromSeconds),
                Math.Min(stretch.Time.ToSeconds, window.ToSeconds)
            )
            where time.ToSeconds > time.FromSeconds
            select new RunningStretch(time, stretch.Combination),
        ];

    private ValueList<double> Hours(ValueList<RunningStretch> day)
    {
        var hours = new double[_combinations];
        foreach (RunningStretch stretch in day)
        {
            hours[stretch.Combination] += stretch.Time.Hours;
        }

        return [.. hours];
    }

    private ValueList<double> Shares(ValueList<RunningStretch> day, double start, double seconds)
    {
        var shares = new double[_combinations];
        foreach (RunningStretch stretch in day)
        {
            shares[stretch.Combination] += stretch.Time.SecondsWithin(start, start + seconds) / seconds;
        }

        return [.. shares];
    }
}
