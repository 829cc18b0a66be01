using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// The way over open ground a plan's readings are taken back by. It has to be the way its levels are predicted by, so
/// that a reading is met again at its own microphone: whoever changes one changes it here, for both.
/// </summary>
public static class OpenGround
{
    /// <summary>
    /// Power level minus level at the receiver in dB in each octave band. Over hard ground direct sound and floor image;
    /// over any other the general method of ISO 9613-2:1996 with G = 1 and no gain, since areas are predicted over hard
    /// ground.
    /// </summary>
    /// <param name="factors">G of the three regions.</param>
    /// <param name="horizontalMetres">Distance along the ground, 0 or more.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="receiverHeightMetres">Height of the receiver, 0 or more.</param>
    /// <param name="airPerMetre">Power attenuation coefficients of the air in 1/m.</param>
    public static BandValues LossDb(
        GroundFactors factors,
        double horizontalMetres,
        double sourceHeightMetres,
        double receiverHeightMetres,
        BandValues airPerMetre
    ) =>
        BandValues.Build(band =>
            -Decibels.FromEnergy(
                factors == GroundFactors.Even(0)
                    ? OutdoorPath.HardGroundFactor(
                        horizontalMetres,
                        sourceHeightMetres,
                        receiverHeightMetres,
                        airPerMetre[band]
                    )
                    : OutdoorPath.PorousGroundFactor(
                        band,
                        horizontalMetres,
                        sourceHeightMetres,
                        receiverHeightMetres,
                        airPerMetre[band]
                    )
            )
        );
}
