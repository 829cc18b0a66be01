using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Enclosures;
using ShowSafety.Core.Sound.Outdoors.Bounds;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Several sets of running engines asked for the least or the most their levels can be over a patch: the way from each
/// engine is worked out once for all its states, and each state once for all the sets it is in. Each path counts at its
/// nearest (or farthest) place and its loudest (or quietest) direction of the patch, so the sum is an outer bound.
/// </summary>
internal sealed class PatchScenes
{
    // Up to here the sums lie on the stack.
    private const int FewStates = 32;

    // Outwards, far above the rounding of the sums and far under anything that matters.
    private const double RoundingShare = 1e-9;

    private readonly RunningEngine[][] _statesByEngine;
    private readonly int _stateCount;
    private readonly int[][] _scenes;
    private readonly double[] _uncertaintyDb;
    private readonly EnclosureSound? _enclosure;

    /// <summary>Takes the running engines of each set.</summary>
    public PatchScenes(IReadOnlyList<RunningEngine[]> scenes, EnclosureSound? enclosure)
    {
        // States of one engine share its ways.
        _statesByEngine = [.. scenes.SelectMany(s => s).Distinct().GroupBy(r => r.Ways, (_, r) => r.ToArray())];
        RunningEngine[] states = [.. _statesByEngine.SelectMany(s => s)];
        _stateCount = states.Length;
        _scenes = [.. scenes.Select(scene => Array.ConvertAll(scene, r => Array.IndexOf(states, r)))];
        _uncertaintyDb = [.. scenes.Select(s => s.Select(r => r.ExpandedUncertaintyDb).DefaultIfEmpty(0).Max())];
        _enclosure = enclosure;
    }

    /// <summary>Writes the bounds of the planning levels; the C-weighted ones only where there is room for them.</summary>
    public void Levels(in Patch patch, EarRange ears, Bound bound, Span<double> dbA, Span<double> dbC)
    {
        Span<double> sums = _stateCount <= FewStates ? stackalloc double[2 * FewStates] : new double[2 * _stateCount];
        Span<double> a = sums[.._stateCount];
        Span<double> c = sums.Slice(_stateCount, dbC.IsEmpty ? 0 : _stateCount);
        a.Clear();
        c.Clear();
        Energies(patch, ears, bound, a, c);
        double outwards = bound == Bound.Highest ? 1 + RoundingShare : 1 - RoundingShare;
        for (int scene = 0; scene < _scenes.Length; scene++)
        {
            dbA[scene] = Level(_scenes[scene], a, outwards) + _uncertaintyDb[scene];
            if (!dbC.IsEmpty)
            {
                dbC[scene] = Level(_scenes[scene], c, outwards) + _uncertaintyDb[scene];
            }
        }
    }

    private static double Level(int[] states, ReadOnlySpan<double> energies, double outwards)
    {
        double sum = 0;
        foreach (int state in states)
        {
            sum += energies[state];
        }

        return Decibels.FromEnergy(sum * outwards);
    }

    private void Energies(in Patch patch, EarRange ears, Bound bound, Span<double> a, Span<double> c)
    {
        Span<double> factors = stackalloc double[OctaveBand.Count];
        Span<double> power = stackalloc double[OctaveBand.Count];
        int first = 0;
        foreach (RunningEngine[] states in _statesByEngine)
        {
            OpenAirBound ways = states[0].Ways.Bound;
            for (int way = 0; way < ways.Ways; way++)
            {
                if (ways.Factors(way, patch, ears, bound, factors) is not var (least, most))
                {
                    continue;
                }

                for (int i = 0; i < states.Length; i++)
                {
                    states[i].Power.Range.Energies(least, most, bound, power);
                    Add(power, factors, first + i, a, c);
                }
            }

            AddDiffuse(states, patch, bound, first, a, c);
            first += states.Length;
        }
    }

    private void AddDiffuse(
        RunningEngine[] states,
        in Patch patch,
        Bound bound,
        int first,
        Span<double> a,
        Span<double> c
    )
    {
        if (_enclosure is null || states[0].SphereEnergies is null)
        {
            return;
        }

        Span<double> factors = stackalloc double[OctaveBand.Count];
        _enclosure.Factors(patch, bound, factors);
        for (int i = 0; i < states.Length; i++)
        {
            Add(states[i].SphereEnergies, factors, first + i, a, c);
        }
    }

    private static void Add(
        ReadOnlySpan<double> power,
        ReadOnlySpan<double> factors,
        int state,
        Span<double> a,
        Span<double> c
    )
    {
        a[state] += FrequencyWeighting.WeightedEnergy(power, factors, FrequencyWeighting.AFactors);
        if (!c.IsEmpty)
        {
            c[state] += FrequencyWeighting.WeightedEnergy(power, factors, FrequencyWeighting.CFactors);
        }
    }
}
