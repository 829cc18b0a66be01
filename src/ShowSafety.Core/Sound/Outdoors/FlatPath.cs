using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// The way of sound over flat ground without obstacles, in the terms of ISO 9613-2:1996: A_div + A_atm + A_gr', each per
/// octave band. The one way that both reduces a reading and predicts a level, so that a reading is met again at its own
/// microphone.
/// </summary>
/// <param name="SpreadDb">A_div = 10 lg(4π d²) in dB, which the standard rounds to 20 lg d + 11.</param>
/// <param name="AirDb">A_atm in dB over the straight distance.</param>
/// <param name="GroundDb">A_gr' in dB, <see cref="NearGround"/>.</param>
public sealed record FlatPath(double SpreadDb, BandValues AirDb, BandValues GroundDb)
{
    private static readonly double DecibelsPerNeper = 10 * Math.Log10(Math.E);

    /// <summary>All together in dB: power level minus level at the receiver.</summary>
    public BandValues LossDb => AirDb + GroundDb + SpreadDb;

    /// <summary>The way between two heights.</summary>
    /// <param name="factors">G of the three regions.</param>
    /// <param name="horizontalMetres">Distance along the ground, 0 or more.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="receiverHeightMetres">Height of the receiver, 0 or more.</param>
    /// <param name="airPerMetre">Power attenuation coefficients of the air in 1/m.</param>
    public static FlatPath Of(
        GroundFactors factors,
        double horizontalMetres,
        double sourceHeightMetres,
        double receiverHeightMetres,
        BandValues airPerMetre
    )
    {
        double slant = OutdoorPath.SlantMetres(horizontalMetres, sourceHeightMetres - receiverHeightMetres);
        return new(
            SoundPower.SphereDb(slant),
            airPerMetre.Map(m => m * slant * DecibelsPerNeper),
            BandValues.Build(band =>
                NearGround.AttenuationDb(
                    band,
                    factors,
                    horizontalMetres,
                    sourceHeightMetres,
                    receiverHeightMetres,
                    airPerMetre[band]
                )
            )
        );
    }
}
