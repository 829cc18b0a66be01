using System.Collections.Concurrent;
using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.Zones;

/// <summary>
/// Levels of every combination of states anywhere on the plan, at the higher of a child's and a standing adult's ear,
/// remembered by place because several zones ask for the same places.
/// </summary>
public sealed class ProgrammeLevels
{
    // Answered where a level can't be told; the zone is then thrown away, so the number never leaves this room.
    private const double UnknownDb = Decibels.SilenceDb;

    private static readonly double[] EarHeights = [ListeningPlaces.ChildEarMetres, ListeningPlaces.AdultEarMetres[1]];

    private readonly ConcurrentDictionary<PlanPoint, HeardLevels[]> _known = new();
    private readonly ValueList<StateCombination> _combinations;
    private readonly ISoundLevels _sound;
    private readonly Func<PlanPoint, double, double>[] _planning;
    private readonly int[] _all;
    private volatile bool _hasUnknown;

    /// <summary>Makes the levels of some combinations.</summary>
    /// <param name="combinations">The combinations.</param>
    /// <param name="sound">The sound.</param>
    public ProgrammeLevels(ValueList<StateCombination> combinations, ISoundLevels sound)
    {
        _combinations = combinations;
        _sound = sound;
        _planning =
        [
            .. combinations.Select(c => c.IsContradictory ? (_, _) => double.NaN : sound.PlanningDbA(c.StateByEngine)),
        ];
        _all = [.. Enumerable.Range(0, combinations.Count)];
    }

    /// <summary>Whether a level asked for so far could not be told.</summary>
    public bool HasUnknown => _hasUnknown;

    /// <summary>The highest planning level of any combination in dB(A).</summary>
    public double LoudestDbA(PlanPoint place)
    {
        double loudest = UnknownDb;
        foreach (Func<PlanPoint, double, double> planning in _planning)
        {
            foreach (double ear in EarHeights)
            {
                loudest = Math.Max(loudest, Known(planning(place, ear)));
            }
        }

        return loudest;
    }

    /// <summary>The largest value of a metric of planning levels by combination.</summary>
    public double MetricAt(PlanPoint place, Func<IReadOnlyList<double>, double> metric)
    {
        double largest = UnknownDb;
        foreach (double ear in EarHeights)
        {
            double[] levels = Array.ConvertAll(_planning, planning => Known(planning(place, ear)));
            largest = Math.Max(largest, metric(levels));
        }

        return largest;
    }

    /// <summary>
    /// The planning level in dB(A) under the best of some rated protectors, in the combination where that is worst.
    /// </summary>
    public double UnderBestProtectorDbA(PlanPoint place, IReadOnlyCollection<HearingProtector> rated) =>
        At(place)
            .Select(ear =>
                rated.Select(p => ear.UnderProtector(p)?.Planning.Max() ?? ear.PlanningDbA[ear.Loudest]).Min()
            )
            .DefaultIfEmpty(UnknownDb)
            .Max();

    /// <summary>The highest planning peak of any combination in dB(C).</summary>
    public double PeakDbC(PlanPoint place)
    {
        double highest = UnknownDb;
        foreach (StateCombination combination in _combinations)
        {
            foreach (double height in EarHeights)
            {
                Quantity? peak = _sound.PeakDbCAt(place, height, combination.StateByEngine);
                _hasUnknown |= peak is null;
                highest = Math.Max(highest, peak?.Planning ?? UnknownDb);
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
        foreach (double ear in EarHeights)
        {
            _ = Array.ConvertAll(_planning, planning => Known(planning(place, ear)));
        }

        return !_hasUnknown;
    }

    private double Known(double levelDbA)
    {
        bool known = double.IsFinite(levelDbA);
        _hasUnknown |= !known;
        return known ? levelDbA : UnknownDb;
    }

    private HeardLevels[] At(PlanPoint place) => _known.GetOrAdd(place, Ask);

    private HeardLevels[] Ask(PlanPoint place)
    {
        HeardLevels[] ears =
        [
            .. EarHeights.Select(h => HeardLevels.At(place, h, _combinations, _all, _sound)).OfType<HeardLevels>(),
        ];
        _hasUnknown |= ears.Length < EarHeights.Length;
        return ears;
    }
}
