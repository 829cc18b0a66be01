using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Enclosures;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound;

/// <summary>One engine running in one state, with all that is the same for every place worked out.</summary>
/// <param name="Emitters">The engine and its images in walls.</param>
/// <param name="HeightMetres">Height of the source.</param>
/// <param name="Power">Power by direction.</param>
/// <param name="SphereEnergies">Whole power as energies, or null for an engine that feeds no diffuse field.</param>
/// <param name="ExpandedUncertaintyDb">U of source and model.</param>
internal sealed record RunningEngine(
    Emitter[] Emitters,
    double HeightMetres,
    DirectionalPower Power,
    double[]? SphereEnergies,
    double ExpandedUncertaintyDb
);

/// <summary>A set of running engines, asked for the level at any place.</summary>
internal sealed class SoundScene(RunningEngine[] running, EnclosureSound? enclosure, double[] airPerMetre)
{
    /// <summary>U of the scene in dB: the largest of the engines', 0 when none runs.</summary>
    public double ExpandedUncertaintyDb { get; } = running.Select(r => r.ExpandedUncertaintyDb).DefaultIfEmpty(0).Max();

    /// <summary>The level at a place.</summary>
    public PointLevel LevelAt(PlanPoint place, double earHeightMetres)
    {
        Span<double> energies = stackalloc double[OctaveBand.Count];
        Energies(place, earHeightMetres, energies);
        double[] bands = new double[OctaveBand.Count];
        for (int band = 0; band < bands.Length; band++)
        {
            bands[band] = Decibels.FromEnergy(energies[band]);
        }

        return new(
            BandValues.Of(bands),
            Weighted(energies, FrequencyWeighting.AFactors),
            Weighted(energies, FrequencyWeighting.CFactors),
            ExpandedUncertaintyDb
        );
    }

    /// <summary>Best estimate at a place in dB(A), without building a <see cref="PointLevel"/>.</summary>
    public double LevelDbA(PlanPoint place, double earHeightMetres)
    {
        Span<double> energies = stackalloc double[OctaveBand.Count];
        Energies(place, earHeightMetres, energies);
        return Weighted(energies, FrequencyWeighting.AFactors);
    }

    private void Energies(PlanPoint place, double ear, Span<double> energies)
    {
        energies.Clear();
        double height = double.IsFinite(ear) ? Math.Max(0, ear) : 0;
        foreach (RunningEngine engine in running)
        {
            foreach (Emitter emitter in engine.Emitters)
            {
                if (emitter.Reaches(place))
                {
                    AddDirect(engine, emitter, place, height, energies);
                }
            }

            if (engine.SphereEnergies is { } whole)
            {
                enclosure?.AddTo(energies, place, whole);
            }
        }
    }

    private void AddDirect(RunningEngine engine, Emitter emitter, PlanPoint place, double ear, Span<double> energies)
    {
        Span<double> factors = stackalloc double[OctaveBand.Count];
        Span<double> power = stackalloc double[OctaveBand.Count];
        double angle = DirectPath.Factors(emitter, engine.HeightMetres, place, ear, airPerMetre, factors);
        engine.Power.Energies(angle, power);
        for (int band = 0; band < energies.Length; band++)
        {
            energies[band] += power[band] * factors[band];
        }
    }

    private static double Weighted(ReadOnlySpan<double> energies, double[] factors)
    {
        double sum = 0;
        for (int band = 0; band < energies.Length; band++)
        {
            sum += energies[band] * factors[band];
        }

        return Decibels.FromEnergy(sum);
    }
}
