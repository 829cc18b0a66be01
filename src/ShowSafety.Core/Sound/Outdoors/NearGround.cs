namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// Ground attenuation A_gr' that holds near the source too. The general method of ISO 9613-2:1996 gives hard ground its
/// full gain of 3 dB at any distance; near the source the floor's image is farther away than the source and gives less,
/// D_Ω of equation (11). A_gr' = A_gr + (3 dB - D_Ω)·(hard share): over hard ground exactly direct sound and floor image,
/// far away the general method. Conformity cases take <see cref="GroundEffect"/>, the plain form.
/// </summary>
public static class NearGround
{
    /// <summary>What Table 3 gives hard ground near the source in dB: 1.5 in each end region.</summary>
    public const double HardGainDb = 3;

    /// <summary>A_gr' in dB of an octave band; negative where the ground adds sound.</summary>
    /// <param name="band">Octave band, 0 (63 Hz) to 7 (8 kHz).</param>
    /// <param name="factors">G of the three regions.</param>
    /// <param name="horizontalMetres">Distance along the ground, 0 or more.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="receiverHeightMetres">Height of the receiver, 0 or more.</param>
    /// <param name="airPerMetre">Power attenuation coefficient of the air in 1/m, for the image's longer way; 0 leaves it out.</param>
    public static double AttenuationDb(
        int band,
        GroundFactors factors,
        double horizontalMetres,
        double sourceHeightMetres,
        double receiverHeightMetres,
        double airPerMetre
    ) =>
        GroundEffect.AttenuationDb(band, factors, horizontalMetres, sourceHeightMetres, receiverHeightMetres)
        + (
            HardShare(band, factors)
            * (HardGainDb - ImageDb(horizontalMetres, sourceHeightMetres, receiverHeightMetres, airPerMetre))
        );

    /// <summary>
    /// D_Ω in dB: what the image in a hard floor adds to the direct sound, 0 to 3.01, its own longer way through the air
    /// included.
    /// </summary>
    /// <param name="horizontalMetres">Distance along the ground, 0 or more.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="receiverHeightMetres">Height of the receiver, 0 or more.</param>
    /// <param name="airPerMetre">Power attenuation coefficient of the air in 1/m.</param>
    public static double ImageDb(
        double horizontalMetres,
        double sourceHeightMetres,
        double receiverHeightMetres,
        double airPerMetre
    )
    {
        double direct = OutdoorPath.SlantMetres(horizontalMetres, sourceHeightMetres - receiverHeightMetres);
        double image = OutdoorPath.SlantMetres(horizontalMetres, sourceHeightMetres + receiverHeightMetres);
        double ratio = direct / image;
        return 10 * Math.Log10(1 + (ratio * ratio * Math.Exp(-airPerMetre * (image - direct))));
    }

    // How much of the gain of hard ground Table 3 gives. At 63 Hz it gives all of it whatever the ground, so all of it
    // shrinks near the source.
    internal static double HardShare(int band, GroundFactors factors) =>
        band == 0 ? 1 : 1 - ((factors.Source + factors.Receiver) / 2);
}
