using System.Runtime.Intrinsics;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// Direct sound and floor image from an emitter to an ear for all bands at once: what is the same for every throttle
/// state, so that it is worked out once for all of them.
/// </summary>
internal static class DirectPath
{
    /// <summary>Writes mean square pressure per sound power in each band.</summary>
    /// <returns>Angle from the exhaust axis to the ear in degrees, 0 to 180.</returns>
    public static double Factors(
        Emitter emitter,
        double sourceHeightMetres,
        PlanPoint place,
        double earHeightMetres,
        ReadOnlySpan<double> airPerMetre,
        Span<double> factors
    )
    {
        double dx = place.XMetres - emitter.Place.XMetres;
        double dy = place.YMetres - emitter.Place.YMetres;
        double flat = Math.Sqrt((dx * dx) + (dy * dy));
        double direct = OutdoorPath.SlantMetres(flat, sourceHeightMetres - earHeightMetres);
        double image = OutdoorPath.SlantMetres(flat, sourceHeightMetres + earHeightMetres);
        Write(direct, image, airPerMetre, factors);
        return Degrees(((dx * emitter.AxisX) + (dy * emitter.AxisY)) / direct);
    }

    /// <summary>
    /// Writes the least or the most of it over a patch: on its longest or shortest way, since sound on its way only
    /// grows weaker.
    /// </summary>
    /// <returns>The range of angles from the exhaust axis to ears in the patch in degrees, 0 to 180.</returns>
    public static (double Least, double Most) Factors(
        Emitter emitter,
        double sourceHeightMetres,
        in Patch patch,
        EarRange ears,
        Bound bound,
        ReadOnlySpan<double> airPerMetre,
        Span<double> factors
    )
    {
        (double near, double far) = patch.DistancesMetres(emitter.Place);
        (double leastOff, double mostOff) = ears.OffMetres(sourceHeightMetres);
        double nearest = OutdoorPath.SlantMetres(near, leastOff);
        double farthest = OutdoorPath.SlantMetres(far, mostOff);
        if (bound == Bound.Highest)
        {
            double image = OutdoorPath.SlantMetres(near, sourceHeightMetres + ears.LowestMetres);
            Write(nearest, image, airPerMetre, factors);
        }
        else
        {
            double image = OutdoorPath.SlantMetres(far, sourceHeightMetres + ears.HighestMetres);
            Write(farthest, image, airPerMetre, factors);
        }

        // Seen from a source at another height the angle is drawn towards 90 degrees, the more the nearer the ear.
        bool isOwn = emitter.Side is null && patch.IsSeenFrom(emitter.Place, emitter.AxisX, emitter.AxisY);
        (double least, double most) = isOwn
            ? patch.OwnCosines
            : patch.Cosines(emitter.Place, emitter.AxisX, emitter.AxisY);
        double nearShare = near / OutdoorPath.SlantMetres(near, mostOff);
        double farShare = far / OutdoorPath.SlantMetres(far, leastOff);
        return (Degrees(most * (most > 0 ? farShare : nearShare)), Degrees(least * (least > 0 ? nearShare : farShare)));
    }

    private static void Write(double direct, double image, ReadOnlySpan<double> airPerMetre, Span<double> factors)
    {
        double directSpread = OutdoorPath.FreeFactor(direct, 0);
        double imageSpread = OutdoorPath.FreeFactor(image, 0);
        for (int band = 0; band < OctaveBand.Count; band += Vector256<double>.Count)
        {
            Vector256<double> air = Vector256.Create(airPerMetre[band..]);
            Vector256<double> sum =
                (Vector256.Exp(air * -direct) * directSpread) + (Vector256.Exp(air * -image) * imageSpread);
            sum.CopyTo(factors[band..]);
        }
    }

    private static double Degrees(double cosine) => Heading.ToDegrees(Math.Acos(Math.Clamp(cosine, -1, 1)));
}
