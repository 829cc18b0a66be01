using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors.Screens;

/// <summary>
/// Diffraction D_z of ISO 9613-2:1996, clause 7.4, equations (12) to (18), in octave bands. Wavelength 340 m/s over the
/// nominal midband frequency, as the standard has it.
/// </summary>
public static class ScreenDiffraction
{
    /// <summary>C_2: ground reflections are in the ground term, not images of their own.</summary>
    public const double GroundIncluded = 20;

    /// <summary>Largest D_z over the top of one edge, in dB.</summary>
    public const double MostSingleDb = 20;

    /// <summary>Largest D_z over the top of two edges, in dB.</summary>
    public const double MostDoubleDb = 25;

    private const double SoundSpeedMetresPerSecond = 340;

    /// <summary>Wavelength in metres of an octave band, 0 (63 Hz) to 7 (8 kHz).</summary>
    public static double WavelengthMetres(int band) => SoundSpeedMetresPerSecond / OctaveBand.NominalHertz(band);

    /// <summary>D_z over a top edge, with the correction for the weather and capped at 20 or 25 dB.</summary>
    /// <param name="band">Octave band, 0 (63 Hz) to 7 (8 kHz).</param>
    /// <param name="path">The way over the edge.</param>
    public static double OverTopDb(int band, DetourPath path) =>
        Math.Min(DiffractionDb(band, path, Meteorology(path)), path.BetweenMetres > 0 ? MostDoubleDb : MostSingleDb);

    /// <summary>D_z round an upright edge: no correction for the weather, no cap.</summary>
    /// <param name="band">Octave band, 0 (63 Hz) to 7 (8 kHz).</param>
    /// <param name="path">The way round the edge.</param>
    public static double RoundEndDb(int band, DetourPath path) => DiffractionDb(band, path, 1);

    /// <summary>
    /// A_bar over the top in the form of ISO/TR 17534-3:2015 clause 5.2, max(0, D_z - max(A_gr, 0)): over hard ground the
    /// form printed in ISO 9613-2 would take the ground's gain off twice.
    /// </summary>
    /// <param name="diffractionDb">D_z, 0 or more.</param>
    /// <param name="groundDb">A_gr of the same path without the screen.</param>
    public static double AttenuationDb(double diffractionDb, double groundDb) =>
        Math.Max(0, diffractionDb - Math.Max(groundDb, 0));

    /// <summary>K_met of equation (18); 1 where the source sees over the edge.</summary>
    public static double Meteorology(DetourPath path)
    {
        double extra = path.ExtraMetres;
        return extra > 0
            ? Math.Exp(-Math.Sqrt(path.FirstLegMetres * path.LastLegMetres * path.DirectMetres / (2 * extra)) / 2000)
            : 1;
    }

    // C_3 of equation (15); 1 for a single edge.
    private static double SecondEdge(double wavelength, double between)
    {
        if (between <= 0)
        {
            return 1;
        }

        double ratio = 5 * wavelength / between;
        double square = ratio * ratio;
        // A second edge right behind the first is the first: the limit of the formula, without the overflow.
        return double.IsInfinity(square) ? 1 : (1 + square) / ((1.0 / 3) + square);
    }

    private static double DiffractionDb(int band, DetourPath path, double meteorology)
    {
        double wavelength = WavelengthMetres(band);
        double inside =
            3
            + (
                GroundIncluded
                / wavelength
                * SecondEdge(wavelength, path.BetweenMetres)
                * path.ExtraMetres
                * meteorology
            );
        // Under z_min = -2 λ/(C_2 C_3) the argument falls below 1 and the edge does nothing.
        return inside > 1 ? 10 * Math.Log10(inside) : 0;
    }
}
