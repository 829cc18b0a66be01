using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure;

/// <summary>How the averaging windows of a rule lie on the clock.</summary>
public enum WindowKind
{
    /// <summary>The window slides: its worst position counts.</summary>
    Sliding,

    /// <summary>The windows follow the clock: they start at whole multiples of their length from midnight.</summary>
    Clock,
}

/// <summary>
/// Positions of averaging windows on a piecewise-constant time line. The average over a sliding window is piecewise
/// linear in its position, so its largest value is taken where one of its ends meets a change of level: those are the
/// only positions tried, and the worst one is exact. Time no stretch covers is left to the background.
/// </summary>
public static class LevelWindows
{
    /// <summary>
    /// Starts in seconds of every window that can be the worst one.
    /// </summary>
    /// <param name="stretches">Stretches in any order, seconds from midnight.</param>
    /// <param name="windowSeconds">Length of the window, above zero.</param>
    /// <param name="kind">How windows lie on the clock.</param>
    public static ValueList<double> Starts(
        IReadOnlyCollection<TimeStretch> stretches,
        double windowSeconds,
        WindowKind kind
    )
    {
        if (!(windowSeconds > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(windowSeconds), windowSeconds, "A window lasts some time.");
        }

        IEnumerable<double> starts = kind switch
        {
            WindowKind.Sliding => stretches.SelectMany(s =>
                new[] { s.FromSeconds, s.ToSeconds, s.FromSeconds - windowSeconds, s.ToSeconds - windowSeconds }
            ),
            _ => stretches.SelectMany(s => ClockStarts(s, windowSeconds)),
        };
        return [.. starts.Distinct().Order()];
    }

    /// <summary>The worst window's L_Aeq in dB(A) for stretches at constant levels.</summary>
    /// <param name="stretches">Stretches that do not overlap, with the level of each.</param>
    /// <param name="windowMinutes">Length of the window in minutes.</param>
    /// <param name="kind">How windows lie on the clock.</param>
    /// <param name="backgroundDbA">Level of all other time in dB(A).</param>
    public static double WorstDbA(
        IReadOnlyCollection<(TimeStretch Stretch, double LevelDbA)> stretches,
        double windowMinutes,
        WindowKind kind,
        double backgroundDbA
    )
    {
        double windowSeconds = 60 * windowMinutes;
        double worst = Decibels.ToEnergy(backgroundDbA);
        foreach (double start in Starts([.. stretches.Select(s => s.Stretch)], windowSeconds, kind))
        {
            double covered = 0;
            double energy = 0;
            foreach ((TimeStretch stretch, double levelDbA) in stretches)
            {
                double seconds = stretch.SecondsWithin(start, start + windowSeconds);
                covered += seconds;
                energy += seconds * Decibels.ToEnergy(levelDbA);
            }

            energy += Math.Max(0, windowSeconds - covered) * Decibels.ToEnergy(backgroundDbA);
            worst = Math.Max(worst, energy / windowSeconds);
        }

        return Decibels.FromEnergy(worst);
    }

    private static IEnumerable<double> ClockStarts(TimeStretch stretch, double windowSeconds)
    {
        double first = Math.Floor(stretch.FromSeconds / windowSeconds);
        double last = Math.Floor(stretch.ToSeconds / windowSeconds);
        for (double index = first; index <= last; index++)
        {
            yield return index * windowSeconds;
        }
    }
}

/// <summary>A stretch of one day's time, half open: from inclusive, to exclusive.</summary>
/// <param name="FromSeconds">Seconds from midnight.</param>
/// <param name="ToSeconds">Seconds from midnight, above <paramref name="FromSeconds"/>; over 86 400 after midnight.</param>
public readonly record struct TimeStretch(double FromSeconds, double ToSeconds)
{
    /// <summary>Length in hours.</summary>
    public double Hours => (ToSeconds - FromSeconds) / 3600;

    /// <summary>How many of its seconds lie within an interval; zero when none.</summary>
    public double SecondsWithin(double fromSeconds, double toSeconds) =>
        Math.Max(0, Math.Min(ToSeconds, toSeconds) - Math.Max(FromSeconds, fromSeconds));
}
