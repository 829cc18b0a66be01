using System.Runtime.Intrinsics;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// <see cref="FlatPath"/> for all bands at once and for many places: what it takes of distance and heights, so that the
/// same sum gives a level at a place and what a level can be at least or at most over distances and heights.
/// </summary>
/// <param name="SlantMetres">Straight distance, for spreading and air.</param>
/// <param name="EndsMetres">Distance along the ground, for what the ground of the end regions takes off.</param>
/// <param name="MiddleShare">q, the share of the middle region, 0 to 1.</param>
/// <param name="ImageShare">Sound of the floor image over direct sound, air left out, 0 to 1.</param>
/// <param name="ImageLaterMetres">How much longer the way of the image is.</param>
/// <param name="SourceHeightMetres">Height of the source.</param>
/// <param name="HumpHeightMetres">Height of the ear, for the loss that is largest 5 m up (125 Hz).</param>
/// <param name="FallHeightMetres">Height of the ear, for the losses that fall with height.</param>
internal readonly record struct FlatWay(
    double SlantMetres,
    double EndsMetres,
    double MiddleShare,
    double ImageShare,
    double ImageLaterMetres,
    double SourceHeightMetres,
    double HumpHeightMetres,
    double FallHeightMetres
)
{
    // Nearer than this, ways are lengthened to a least one and the image no longer gains with distance.
    private const double NearMetres = 0.2;

    private static readonly double NepersPerDecibel = Math.Log(10) / 10;

    /// <summary>The way to an ear at a place.</summary>
    /// <param name="flatMetres">Distance along the ground, 0 or more.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="earHeightMetres">Height of the ear, 0 or more.</param>
    public static FlatWay To(double flatMetres, double sourceHeightMetres, double earHeightMetres)
    {
        double direct = OutdoorPath.SlantMetres(flatMetres, sourceHeightMetres - earHeightMetres);
        double image = OutdoorPath.SlantMetres(flatMetres, sourceHeightMetres + earHeightMetres);
        return new(
            direct,
            flatMetres,
            GroundEffect.MiddleShare(flatMetres, sourceHeightMetres, earHeightMetres),
            Square(direct / image),
            image - direct,
            sourceHeightMetres,
            earHeightMetres,
            earHeightMetres
        );
    }

    /// <summary>
    /// The way that lets most, or least, sound through to any ear of a range between two distances. Each term goes one
    /// way with distance and with the height of the ear, or turns once, so each is taken where it is largest or smallest.
    /// </summary>
    public static FlatWay Outermost(
        Bound bound,
        (double Near, double Far) metres,
        double sourceHeightMetres,
        EarRange ears
    )
    {
        (double leastOff, double mostOff) = ears.OffMetres(sourceHeightMetres);
        (double low, double high) = (ears.LowestMetres, ears.HighestMetres);
        bool isMost = bound == Bound.Highest;
        // Ends damp least near, the middle and the image gain most far.
        (double end, double gain, double off) = isMost
            ? (metres.Near, metres.Far, leastOff)
            : (metres.Far, metres.Near, mostOff);
        bool lowIsNearerToHump = Math.Abs(low - GroundEffect.HumpMetres) < Math.Abs(high - GroundEffect.HumpMetres);
        double nearestToHump = Math.Clamp(GroundEffect.HumpMetres, low, high);
        return new(
            OutdoorPath.SlantMetres(end, off),
            end,
            GroundEffect.MiddleShare(gain, sourceHeightMetres, isMost ? low : high),
            ImageShareOf(isMost, gain, sourceHeightMetres, ears),
            gain < NearMetres ? 0 : ImageLater(gain, sourceHeightMetres, isMost ? low : high),
            sourceHeightMetres,
            isMost ? (lowIsNearerToHump ? high : low) : nearestToHump,
            isMost ? high : low
        );
    }

    /// <summary>Writes mean square pressure per sound power in each band.</summary>
    /// <param name="ground">G of the three regions.</param>
    /// <param name="airPerMetre">Power attenuation coefficients of the air in 1/m.</param>
    /// <param name="factors">What is written.</param>
    public void Write(GroundFactors ground, ReadOnlySpan<double> airPerMetre, Span<double> factors)
    {
        if (ground.Source == 0 && ground.Receiver == 0)
        {
            WriteHard(ground.Middle, airPerMetre, factors);
            return;
        }

        double spread = OutdoorPath.FreeFactor(SlantMetres, 0);
        for (int band = 0; band < factors.Length; band++)
        {
            double air = airPerMetre[band];
            double hard = NearGround.HardShare(band, ground);
            double image = 1 + (ImageShare * Math.Exp(-air * ImageLaterMetres));
            double gainDb = MiddleDb(band, ground.Middle) - EndsDb(band, ground) - (hard * NearGround.HardGainDb);
            factors[band] =
                spread * Math.Exp((NepersPerDecibel * gainDb) - (air * SlantMetres)) * Math.Pow(image, hard);
        }
    }

    // Over hard ground the end regions give what the image takes the place of: direct sound and image are all.
    private void WriteHard(double middleFactor, ReadOnlySpan<double> airPerMetre, Span<double> factors)
    {
        double direct = OutdoorPath.FreeFactor(SlantMetres, 0);
        double image = direct * ImageShare;
        for (int band = 0; band < factors.Length; band += Vector256<double>.Count)
        {
            Vector256<double> air = Vector256.Create(airPerMetre[band..]);
            Vector256<double> sum =
                (Vector256.Exp(air * -SlantMetres) * direct)
                + (Vector256.Exp(air * -(SlantMetres + ImageLaterMetres)) * image);
            sum.CopyTo(factors[band..]);
        }

        for (int band = 0; MiddleShare > 0 && band < factors.Length; band++)
        {
            factors[band] *= Math.Exp(NepersPerDecibel * MiddleDb(band, middleFactor));
        }
    }

    // 63 Hz: no G in the middle region, Table 3.
    private double MiddleDb(int band, double factor) => 3 * MiddleShare * (band == 0 ? 1 : 1 - factor);

    private double EndsDb(int band, GroundFactors ground) =>
        GroundEffect.EndRegionDb(band, ground.Source, EndsMetres, SourceHeightMetres)
        + GroundEffect.EndRegionDb(band, ground.Receiver, EndsMetres, HumpHeightMetres, FallHeightMetres);

    // The image's share is smallest for the ear at the slant distance of the source and grows to both sides of it.
    private static double ImageShareOf(bool isMost, double flat, double source, EarRange ears)
    {
        if (flat < NearMetres)
        {
            return isMost ? 1 : 0;
        }

        double lowest = ImageShareAt(flat, source, ears.LowestMetres);
        double highest = ImageShareAt(flat, source, ears.HighestMetres);
        double turn = Math.Sqrt((flat * flat) + (source * source));
        return isMost ? Math.Max(lowest, highest)
            : turn > ears.LowestMetres && turn < ears.HighestMetres ? ImageShareAt(flat, source, turn)
            : Math.Min(lowest, highest);
    }

    private static double ImageShareAt(double flat, double source, double ear) =>
        Square(OutdoorPath.SlantMetres(flat, source - ear) / OutdoorPath.SlantMetres(flat, source + ear));

    private static double ImageLater(double flat, double source, double ear) =>
        OutdoorPath.SlantMetres(flat, source + ear) - OutdoorPath.SlantMetres(flat, source - ear);

    private static double Square(double value) => value * value;
}
