using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Enclosures;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound;

/// <summary>One engine running in one state, with all that is the same for every place worked out.</summary>
/// <param name="Id">Id of the engine.</param>
/// <param name="Ways">The ways of its sound.</param>
/// <param name="Power">Power by direction.</param>
/// <param name="SphereEnergies">Whole power as energies, or null for an engine that feeds no diffuse field.</param>
/// <param name="ExpandedUncertaintyDb">U of source and model.</param>
internal sealed record RunningEngine(
    string Id,
    EngineWays Ways,
    DirectionalPower Power,
    double[]? SphereEnergies,
    double ExpandedUncertaintyDb
);

/// <summary>A set of running engines, asked for the level at any place.</summary>
internal sealed class SoundScene(RunningEngine[] running, EnclosureSound? enclosure)
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
            engine.Ways.AddTo(energies, place, height, engine.Power);
            if (engine.SphereEnergies is { } whole)
            {
                enclosure?.AddTo(energies, place, whole);
            }
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
