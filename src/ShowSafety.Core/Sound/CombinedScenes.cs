using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Enclosures;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Several sets of running engines asked for their levels at the same place: the way from each engine is worked out
/// once for all its states, and each state once for all the sets it is in.
/// </summary>
internal sealed class CombinedScenes
{
    // Up to here the sums lie on the stack.
    private const int FewStates = 32;

    private readonly RunningEngine[][] _statesByEngine;
    private readonly PowerTable[] _tables;
    private readonly int _stateCount;
    private readonly int[]?[] _scenes;
    private readonly double[] _uncertaintyDb;
    private readonly EnclosureSound? _enclosure;
    private readonly double[] _airPerMetre;

    /// <summary>Takes the running engines of each set, null for a set that can't be told.</summary>
    public CombinedScenes(IReadOnlyList<RunningEngine[]?> scenes, EnclosureSound? enclosure, double[] airPerMetre)
    {
        // States of one engine share its emitters.
        _statesByEngine =
        [
            .. scenes
                .OfType<RunningEngine[]>()
                .SelectMany(s => s)
                .Distinct()
                .GroupBy(r => r.Emitters, (_, r) => r.ToArray()),
        ];
        RunningEngine[] states = [.. _statesByEngine.SelectMany(s => s)];
        _tables = [.. states.Select(s => s.Table)];
        _stateCount = states.Length;
        _scenes = [.. scenes.Select(scene => scene?.Select(r => Array.IndexOf(states, r)).ToArray())];
        _uncertaintyDb =
        [
            .. scenes.Select(s => (s ?? []).Select(r => r.ExpandedUncertaintyDb).DefaultIfEmpty(0).Max()),
        ];
        _enclosure = enclosure;
        _airPerMetre = airPerMetre;
    }

    /// <summary>Writes the planning levels of each set; the C-weighted ones only where there is room for them.</summary>
    public void Levels(PlanPoint place, double earHeightMetres, Span<double> dbA, Span<double> dbC)
    {
        Span<double> sums = _stateCount <= FewStates ? stackalloc double[2 * FewStates] : new double[2 * _stateCount];
        Span<double> a = sums[.._stateCount];
        Span<double> c = sums.Slice(_stateCount, dbC.IsEmpty ? 0 : _stateCount);
        a.Clear();
        c.Clear();
        Energies(place, double.IsFinite(earHeightMetres) ? Math.Max(0, earHeightMetres) : 0, a, c);
        bool isPlace = double.IsFinite(place.XMetres) && double.IsFinite(place.YMetres);
        for (int scene = 0; scene < _scenes.Length; scene++)
        {
            int[]? states = isPlace ? _scenes[scene] : null;
            dbA[scene] = Level(states, a, _uncertaintyDb[scene]);
            if (!dbC.IsEmpty)
            {
                dbC[scene] = Level(states, c, _uncertaintyDb[scene]);
            }
        }
    }

    private static double Level(int[]? states, ReadOnlySpan<double> energies, double uncertaintyDb)
    {
        double sum = 0;
        foreach (int state in states ?? [])
        {
            sum += energies[state];
        }

        return states is null || double.IsNaN(sum) ? double.NaN : Decibels.FromEnergy(sum) + uncertaintyDb;
    }

    private void Energies(PlanPoint place, double ear, Span<double> a, Span<double> c)
    {
        Span<double> factors = stackalloc double[OctaveBand.Count];
        Span<double> power = stackalloc double[OctaveBand.Count];
        int first = 0;
        foreach (RunningEngine[] states in _statesByEngine)
        {
            foreach (Emitter emitter in states[0].Emitters)
            {
                if (emitter.Reaches(place))
                {
                    double height = states[0].HeightMetres;
                    double angle = DirectPath.Factors(emitter, height, place, ear, _airPerMetre, factors);
                    for (int i = 0; i < states.Length; i++)
                    {
                        _tables[first + i].Energies(angle, power);
                        Add(power, factors, first + i, a, c);
                    }
                }
            }

            AddDiffuse(states, place, first, a, c);
            first += states.Length;
        }
    }

    private void AddDiffuse(RunningEngine[] states, PlanPoint place, int first, Span<double> a, Span<double> c)
    {
        if (_enclosure is null || states[0].SphereEnergies is null)
        {
            return;
        }

        Span<double> factors = stackalloc double[OctaveBand.Count];
        _enclosure.Factors(place, factors);
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
