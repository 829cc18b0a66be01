using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.Zones;

/// <summary>
/// The most that levels of the combinations of states can be over a patch of ground, at any ear of <see cref="Ears.Range"/>:
/// beside a high bench the highest ear is the nearest.
/// </summary>
public sealed class ProgrammeLevels
{
    private readonly int _count;
    private readonly LevelsOverPatch? _planning;
    private readonly Func<Patch, EarRange, double>?[] _peaks;

    /// <summary>Makes the levels of some combinations.</summary>
    /// <param name="combinations">The combinations.</param>
    /// <param name="sound">The sound.</param>
    public ProgrammeLevels(ValueList<StateCombination> combinations, ISoundLevels sound)
    {
        _count = combinations.Count;
        bool contradictory = combinations.Any(c => c.IsContradictory);
        _planning = contradictory ? null : sound.PlanningLevels([.. combinations.Select(c => c.StateByEngine)]);
        _peaks = [.. combinations.Select(c => c.IsContradictory ? null : sound.HighestPeakDbC(c.StateByEngine))];
    }

    /// <summary>Whether the level of every combination can be told.</summary>
    public bool HasLevels => _planning is not null;

    /// <summary>Whether the peak of every combination can be told.</summary>
    public bool HasPeaks => !_peaks.Contains(null);

    /// <summary>The most that the planning level of any combination can be, in dB(A).</summary>
    public double LoudestDbA(Patch patch) => MetricAt(patch, levels => levels.Max());

    /// <summary>The most that a metric of planning levels by combination can be, which grows with every level.</summary>
    public double MetricAt(Patch patch, Func<double[], double> metric)
    {
        var levels = new double[_count];
        _planning!(patch, Ears.Range, Bound.Highest, levels, []);
        return metric(levels);
    }

    /// <summary>
    /// The most that the planning level in dB(A) under the best of some rated protectors can be, in the combination
    /// where that is worst.
    /// </summary>
    internal double UnderBestProtectorDbA(Patch patch, WornBound[] rated)
    {
        Span<double> all = new double[4 * _count];
        Span<double> leastDbA = all[.._count];
        Span<double> leastDbC = all.Slice(_count, _count);
        Span<double> mostDbA = all.Slice(2 * _count, _count);
        Span<double> mostDbC = all[(3 * _count)..];
        _planning!(patch, Ears.Range, Bound.Highest, mostDbA, mostDbC);
        if (rated.All(protector => protector.IsSteady))
        {
            leastDbA = mostDbA;
            leastDbC = mostDbC;
        }
        else
        {
            _planning!(patch, Ears.Range, Bound.Lowest, leastDbA, leastDbC);
        }

        double best = double.PositiveInfinity;
        foreach (WornBound protector in rated)
        {
            double worst = Decibels.SilenceDb;
            for (int i = 0; i < _count; i++)
            {
                worst = Math.Max(worst, protector.HighestDbA((leastDbA[i], mostDbA[i]), (leastDbC[i], mostDbC[i])));
            }

            best = Math.Min(best, worst);
        }

        return best;
    }

    /// <summary>The most that the planning peak of any combination can be, in dB(C).</summary>
    public double PeakDbC(Patch patch)
    {
        double highest = Decibels.SilenceDb;
        foreach (Func<Patch, EarRange, double>? peak in _peaks)
        {
            highest = Math.Max(highest, peak!(patch, Ears.Range));
        }

        return highest;
    }
}
