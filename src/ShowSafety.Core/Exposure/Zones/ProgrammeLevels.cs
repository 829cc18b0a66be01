using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.Zones;

/// <summary>
/// Levels of every combination of states anywhere on the plan, at the higher of a child's and a standing adult's ear.
/// </summary>
public sealed class ProgrammeLevels
{
    // Answered where a level can't be told; the zone is then thrown away, so the number never leaves this room.
    private const double UnknownDb = Decibels.SilenceDb;

    private static readonly double[] EarHeights = [ListeningPlaces.ChildEarMetres, ListeningPlaces.AdultEarMetres[1]];

    private readonly ValueList<StateCombination> _combinations;
    private readonly ISoundLevels _sound;
    private readonly LevelsByCombination _planning;
    private readonly Func<PlanPoint, double, double>[] _peaks;
    private volatile bool _hasUnknown;

    /// <summary>Makes the levels of some combinations.</summary>
    /// <param name="combinations">The combinations.</param>
    /// <param name="sound">The sound.</param>
    public ProgrammeLevels(ValueList<StateCombination> combinations, ISoundLevels sound)
    {
        _combinations = combinations;
        _sound = sound;
        _planning = sound.PlanningLevels([.. combinations.Select(c => c.IsContradictory ? null : c.StateByEngine)]);
        _peaks = [.. combinations.Select(c => sound.PlanningPeakDbC(c.StateByEngine))];
    }

    /// <summary>Whether a level asked for so far could not be told.</summary>
    public bool HasUnknown => _hasUnknown;

    /// <summary>The highest planning level of any combination in dB(A).</summary>
    public double LoudestDbA(PlanPoint place) => MetricAt(place, levels => levels.Max());

    /// <summary>The largest value of a metric of planning levels by combination.</summary>
    public double MetricAt(PlanPoint place, Func<double[], double> metric)
    {
        var levels = new double[_combinations.Count];
        double largest = UnknownDb;
        foreach (double ear in EarHeights)
        {
            _planning(place, ear, levels, []);
            MarkUnknown(levels);
            largest = Math.Max(largest, metric(levels));
        }

        return largest;
    }

    /// <summary>
    /// The planning level in dB(A) under the best of some rated protectors, in the combination where that is worst.
    /// </summary>
    public double UnderBestProtectorDbA(PlanPoint place, HearingProtector[] rated)
    {
        var levels = new double[_combinations.Count];
        var levelsDbC = new double[_combinations.Count];
        double largest = UnknownDb;
        foreach (double ear in EarHeights)
        {
            _planning(place, ear, levels, levelsDbC);
            MarkUnknown(levels);
            MarkUnknown(levelsDbC);
            double best = double.PositiveInfinity;
            foreach (HearingProtector protector in rated)
            {
                best = Math.Min(best, Worst(protector, levels, levelsDbC));
            }

            largest = Math.Max(largest, best);
        }

        return largest;
    }

    /// <summary>The highest planning peak of any combination in dB(C).</summary>
    public double PeakDbC(PlanPoint place)
    {
        double highest = UnknownDb;
        foreach (Func<PlanPoint, double, double> peak in _peaks)
        {
            foreach (double ear in EarHeights)
            {
                double level = peak(place, ear);
                _hasUnknown |= !double.IsFinite(level);
                highest = double.IsFinite(level) ? Math.Max(highest, level) : highest;
            }
        }

        return highest;
    }

    /// <summary>Whether the peak of every combination is known at a place.</summary>
    public bool HasPeaks(PlanPoint place) =>
        _combinations.All(c =>
            !c.IsContradictory && _sound.PeakDbCAt(place, EarHeights[0], c.StateByEngine) is not null
        );

    /// <summary>Whether the level of every combination is known at a place.</summary>
    public bool HasLevels(PlanPoint place)
    {
        _ = LoudestDbA(place);
        return !_hasUnknown;
    }

    private static double Worst(HearingProtector protector, double[] dbA, double[] dbC)
    {
        double worst = UnknownDb;
        for (int i = 0; i < dbA.Length; i++)
        {
            worst = Math.Max(worst, WornProtector.LevelDbA(protector, dbA[i], dbC[i]) ?? dbA[i]);
        }

        return worst;
    }

    private void MarkUnknown(double[] levels)
    {
        for (int i = 0; i < levels.Length; i++)
        {
            if (!double.IsFinite(levels[i]))
            {
                _hasUnknown = true;
                levels[i] = UnknownDb;
            }
        }
    }
}
