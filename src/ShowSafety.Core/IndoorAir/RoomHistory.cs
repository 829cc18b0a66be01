using ShowSafety.Core.Measures;

namespace ShowSafety.Core.IndoorAir;

/// <summary>A source that is constant for a time.</summary>
/// <param name="FromSeconds">From, seconds after the first light-up.</param>
/// <param name="ToSeconds">To, seconds after the first light-up.</param>
/// <param name="Source">Source in the unit of the balance.</param>
public sealed record SourceStretch(double FromSeconds, double ToSeconds, double Source);

/// <summary>
/// A value of the room's air over a day, solved exactly from stretch to stretch. Before the first light-up the room
/// holds outside air. Sources that overlap are added.
/// </summary>
public sealed class RoomHistory
{
    private readonly RoomBalance _balance;
    private readonly double[] _breaks;
    private readonly double[] _sources;
    private readonly double[] _values;
    private readonly double[] _integrals;

    /// <summary>Solves the room for the sources of a day.</summary>
    public RoomHistory(RoomBalance balance, IReadOnlyCollection<SourceStretch> stretches)
    {
        _balance = balance;
        _breaks = [.. stretches.SelectMany(s => new[] { s.FromSeconds, s.ToSeconds }).Append(0).Distinct().Order()];
        _sources =
        [
            .. _breaks.Select(b => stretches.Where(s => s.FromSeconds <= b && b < s.ToSeconds).Sum(s => s.Source)),
        ];
        _values = new double[_breaks.Length];
        _integrals = new double[_breaks.Length];
        _values[0] = balance.Outside;
        for (int i = 1; i < _breaks.Length; i++)
        {
            double seconds = _breaks[i] - _breaks[i - 1];
            _values[i] = balance.After(seconds, _sources[i - 1], _values[i - 1]);
            _integrals[i] = _integrals[i - 1] + balance.Integral(seconds, _sources[i - 1], _values[i - 1]);
        }
    }

    /// <summary>Times at which a source changes, seconds after the first light-up.</summary>
    public ValueList<double> Breaks => [.. _breaks];

    /// <summary>Last change of a source, seconds.</summary>
    public double EndSeconds => _breaks[^1];

    /// <summary>Value at a time; outside air before the first light-up.</summary>
    public double At(double seconds)
    {
        int i = Index(seconds);
        return i < 0 ? _balance.Outside : _balance.After(seconds - _breaks[i], _sources[i], _values[i]);
    }

    /// <summary>Integral of the value from the first break to a time; outside air before it.</summary>
    public double IntegralTo(double seconds)
    {
        int i = Index(seconds);
        return i < 0
            ? _balance.Outside * (seconds - _breaks[0])
            : _integrals[i] + _balance.Integral(seconds - _breaks[i], _sources[i], _values[i]);
    }

    /// <summary>Mean over the window that ends at a time; the value itself for a window of 0.</summary>
    public double Mean(double windowSeconds, double endSeconds) =>
        windowSeconds <= 0
            ? At(endSeconds)
            : (IntegralTo(endSeconds) - IntegralTo(endSeconds - windowSeconds)) / windowSeconds;

    /// <summary>Largest mean over any window, and the end of that window in seconds.</summary>
    public (double Mean, double EndSeconds) LargestMean(double windowSeconds) =>
        Turning(windowSeconds).Select(t => (Mean(windowSeconds, t), t)).MaxBy(m => m.Item1);

    /// <summary>First time at which the mean over the window that ends then is over a limit; null for never.</summary>
    public double? FirstOver(double windowSeconds, double limit)
    {
        double[] times = [.. Turning(windowSeconds)];
        int over = Array.FindIndex(times, t => Mean(windowSeconds, t) > limit);
        return over < 0 ? null
            : over == 0 ? times[0]
            : Bisect(t => Mean(windowSeconds, t) > limit, times[over - 1], times[over]);
    }

    /// <summary>First time from the last change on at which the value is at or under a limit for good; null for never.</summary>
    public double? ClearAt(double limit) => EndSeconds + _balance.SecondsToClear(limit, _values[^1]);

    // Between two changes of either end of the window the mean's slope, C(t) − C(t − W), is one exponential plus a
    // constant and changes sign once at most: the extremes lie at the changes and at those zeros.
    private IEnumerable<double> Turning(double windowSeconds)
    {
        double[] changes = [.. _breaks.Concat(_breaks.Select(b => b + windowSeconds)).Distinct().Order()];
        for (int i = 0; i < changes.Length; i++)
        {
            if (i > 0 && windowSeconds > 0 && Rising(changes[i - 1]) != Rising(changes[i]))
            {
                bool rising = Rising(changes[i - 1]);
                yield return Bisect(t => Rising(t) != rising, changes[i - 1], changes[i]);
            }

            yield return changes[i];
        }

        bool Rising(double t) => At(t) > At(t - windowSeconds);
    }

    private static double Bisect(Func<double, bool> isPast, double from, double to)
    {
        for (int i = 0; i < 60; i++)
        {
            double middle = (from + to) / 2;
            (from, to) = isPast(middle) ? (from, middle) : (middle, to);
        }

        return to;
    }

    private int Index(double seconds)
    {
        int found = Array.BinarySearch(_breaks, seconds);
        return found >= 0 ? found : ~found - 1;
    }
}
