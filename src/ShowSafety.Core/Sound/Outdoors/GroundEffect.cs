using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// Ground attenuation A_gr of ISO 9613-2:1996, general method (clause 7.3.1, Table 3), for ground factors G from
/// 0, hard, to 1, porous. Flat or evenly sloping ground; downwind or mild inversion.
/// </summary>
public static class GroundEffect
{
    /// <summary>An end region is as long as this many times the height of its end, clause 7.3.1.</summary>
    internal const double RegionHeights = 30;

    /// <summary>Height at which an end region takes most off at 125 Hz, in metres.</summary>
    internal const double HumpMetres = 5;

    /// <summary>A_gr in dB of an octave band: A_s + A_r + A_m; negative where the ground adds sound.</summary>
    /// <param name="band">Octave band, 0 (63 Hz) to 7 (8 kHz).</param>
    /// <param name="groundFactor">G, 0 to 1.</param>
    /// <param name="horizontalMetres">Distance along the ground, 0 or more.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="receiverHeightMetres">Height of the receiver, 0 or more.</param>
    public static double AttenuationDb(
        int band,
        double groundFactor,
        double horizontalMetres,
        double sourceHeightMetres,
        double receiverHeightMetres
    )
    {
        return AttenuationDb(
            band,
            GroundFactors.Even(groundFactor),
            horizontalMetres,
            sourceHeightMetres,
            receiverHeightMetres
        );
    }

    /// <summary>A_gr in dB of an octave band where the ground changes along the path.</summary>
    /// <param name="band">Octave band, 0 (63 Hz) to 7 (8 kHz).</param>
    /// <param name="factors">G of the three regions.</param>
    /// <param name="horizontalMetres">Distance along the ground, 0 or more.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="receiverHeightMetres">Height of the receiver, 0 or more.</param>
    public static double AttenuationDb(
        int band,
        GroundFactors factors,
        double horizontalMetres,
        double sourceHeightMetres,
        double receiverHeightMetres
    )
    {
        double middle = -3 * MiddleShare(horizontalMetres, sourceHeightMetres, receiverHeightMetres);
        return EndRegionDb(band, factors.Source, horizontalMetres, sourceHeightMetres)
            + EndRegionDb(band, factors.Receiver, horizontalMetres, receiverHeightMetres)
            // 63 Hz: no G in the middle region, Table 3.
            + (band == 0 ? middle : middle * (1 - factors.Middle));
    }

    /// <summary>A_gr of all octave bands in dB.</summary>
    public static BandValues BandsDb(double groundFactor, double horizontalMetres, double source, double receiver) =>
        BandValues.Build(band => AttenuationDb(band, groundFactor, horizontalMetres, source, receiver));

    /// <summary>q: how much of the path lies in neither end region, 0 to 1.</summary>
    internal static double MiddleShare(double horizontal, double source, double receiver)
    {
        double ends = RegionHeights * (source + receiver);
        return horizontal <= ends ? 0 : 1 - (ends / horizontal);
    }

    /// <summary>A_s or A_r in dB; for ground that is not hard it grows with the distance, and with the factor.</summary>
    internal static double EndRegionDb(int band, double groundFactor, double horizontal, double height) =>
        EndRegionDb(band, groundFactor, horizontal, height, height);

    /// <summary>
    /// The same with a height of its own for the loss that is largest at <see cref="HumpMetres"/> and for the losses that
    /// fall with height: a bound over heights takes each where it is largest or smallest.
    /// </summary>
    internal static double EndRegionDb(
        int band,
        double groundFactor,
        double horizontal,
        double humpHeight,
        double fallHeight
    )
    {
        double growth = 1 - Math.Exp(-horizontal / 50);
        double square = fallHeight * fallHeight;
        return band switch
        {
            0 => -1.5,
            1 => -1.5 + (groundFactor * At125Hertz(horizontal, humpHeight, square, growth)),
            2 => -1.5 + (groundFactor * (1.5 + (8.6 * Math.Exp(-0.09 * square) * growth))),
            3 => -1.5 + (groundFactor * (1.5 + (14.0 * Math.Exp(-0.46 * square) * growth))),
            4 => -1.5 + (groundFactor * (1.5 + (5.0 * Math.Exp(-0.9 * square) * growth))),
            _ => -1.5 * (1 - groundFactor),
        };
    }

    private static double At125Hertz(double horizontal, double humpHeight, double fallSquare, double growth)
    {
        double off = humpHeight - HumpMetres;
        return 1.5
            + (3.0 * Math.Exp(-0.12 * off * off) * growth)
            + (5.7 * Math.Exp(-0.09 * fallSquare) * (1 - Math.Exp(-2.8e-6 * horizontal * horizontal)));
    }
}
