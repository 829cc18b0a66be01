using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound;

/// <summary>One engine as the source of a peak.</summary>
/// <param name="Place">Place on the plan.</param>
/// <param name="HeightMetres">Height of the source.</param>
/// <param name="Energy">Peak source level as an energy.</param>
internal readonly record struct PeakSource(PlanPoint Place, double HeightMetres, double Energy);

/// <summary>The peaks of a set of running engines, asked for at any place.</summary>
/// <param name="sources">The engines.</param>
/// <param name="expandedUncertaintyDb">U, the largest of the engines'.</param>
internal sealed class PeakScene(PeakSource[] sources, double expandedUncertaintyDb)
{
    /// <summary>U in dB.</summary>
    public double ExpandedUncertaintyDb => expandedUncertaintyDb;

    /// <summary>The peaks of some running engines, or null when any was not measured: cannot tell.</summary>
    /// <param name="stateByEngine">Throttle state id by engine id.</param>
    /// <param name="engines">The engines by id.</param>
    /// <param name="model">Uncertainty of the model for an engine of an id.</param>
    public static PeakScene? Of(
        IReadOnlyDictionary<string, string> stateByEngine,
        IReadOnlyDictionary<string, EngineSound> engines,
        Func<string, UncertaintyPart> model
    )
    {
        var peaks = new List<PeakSource>(stateByEngine.Count);
        double uncertainty = 0;
        foreach ((string engineId, string stateId) in stateByEngine)
        {
            if (
                !engines.TryGetValue(engineId, out EngineSound? engine)
                || engine.State(stateId) is not { PeakSourceDbC: { } peak } state
            )
            {
                return null;
            }

            peaks.Add(new(engine.Place, engine.HeightMetres, Decibels.ToEnergy(peak)));
            uncertainty = Math.Max(
                uncertainty,
                LevelUncertainty.ExpandedDb([.. state.PeakUncertainty, model(engineId)])
            );
        }

        return new([.. peaks], uncertainty);
    }

    /// <summary>Best estimate at a place in dB(C): the peaks of all engines at the same moment; not a number nowhere.</summary>
    public double BestDbC(PlanPoint place, double earHeightMetres)
    {
        double energy = 0;
        foreach (PeakSource source in sources)
        {
            double flat = source.Place.DistanceMetres(place);
            double ear = Math.Max(0, earHeightMetres);
            energy += Energy(source, flat, source.HeightMetres - ear, source.HeightMetres + ear);
        }

        return double.IsNaN(energy) ? double.NaN : Decibels.FromEnergy(energy);
    }

    /// <summary>The highest planning value in dB(C) at any place of a patch.</summary>
    public double HighestDbC(in Patch patch, EarRange ears)
    {
        double energy = 0;
        foreach (PeakSource source in sources)
        {
            double flat = patch.DistancesMetres(source.Place).Least;
            double off = ears.OffMetres(source.HeightMetres).Least;
            energy += Energy(source, flat, off, source.HeightMetres + ears.LowestMetres);
        }

        return Decibels.FromEnergy(energy) + expandedUncertaintyDb;
    }

    private static double Energy(PeakSource source, double flat, double off, double imageOff)
    {
        double direct = OutdoorPath.SlantMetres(flat, off);
        double image = OutdoorPath.SlantMetres(flat, imageOff);

        // The hard ground factor without air.
        return source.Energy / (4 * Math.PI) * ((1 / (direct * direct)) + (1 / (image * image)));
    }
}
