using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors.Bounds;

/// <summary>
/// The least or the most of <see cref="FlatPath"/> over a range of distances and ground factors. Each term of it goes one
/// way with distance and with the factor, so each is taken where it lets most, or least, sound through.
/// </summary>
internal static class FlatBound
{
    // Nearer than this, paths are lengthened to a least one and the image no longer gains with distance.
    private const double NearMetres = 0.2;

    /// <summary>Writes mean square pressure per sound power in each band.</summary>
    /// <param name="bound">Least or most.</param>
    /// <param name="nearMetres">The smaller distance along the ground.</param>
    /// <param name="farMetres">The larger one.</param>
    /// <param name="ground">Range of the ground factors.</param>
    /// <param name="sourceHeightMetres">Height of the source.</param>
    /// <param name="earHeightMetres">Height of the ear.</param>
    /// <param name="airPerMetre">Power attenuation coefficients of the air in 1/m.</param>
    /// <param name="factors">What is written.</param>
    public static void Factors(
        Bound bound,
        double nearMetres,
        double farMetres,
        GroundRange ground,
        double sourceHeightMetres,
        double earHeightMetres,
        BandValues airPerMetre,
        Span<double> factors
    )
    {
        // Most sound: end regions where they damp least, near; the middle's gain and the image where they give most, far.
        (double end, double gain, double factor) =
            bound == Bound.Highest ? (nearMetres, farMetres, ground.Least) : (farMetres, nearMetres, ground.Most);
        double slant = OutdoorPath.SlantMetres(end, sourceHeightMetres - earHeightMetres);
        double middle = -3 * GroundEffect.MiddleShare(gain, sourceHeightMetres, earHeightMetres);
        for (int band = 0; band < factors.Length; band++)
        {
            double air = airPerMetre[band];
            double hard = band == 0 ? 1 : 1 - factor;
            double attenuation =
                GroundEffect.EndRegionDb(band, factor, end, sourceHeightMetres)
                + GroundEffect.EndRegionDb(band, factor, end, earHeightMetres)
                + (
                    hard
                    * (middle + NearGround.HardGainDb - Image(bound, gain, sourceHeightMetres, earHeightMetres, air))
                );
            factors[band] = OutdoorPath.FreeFactor(slant, air) * Decibels.ToEnergy(-attenuation);
        }
    }

    private static double Image(Bound bound, double flat, double source, double ear, double air) =>
        flat >= NearMetres ? NearGround.ImageDb(flat, source, ear, air)
        : bound == Bound.Highest ? 10 * Math.Log10(2)
        : 0;
}
