using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors;

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
