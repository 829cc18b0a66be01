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
        double directSpread = OutdoorPath.FreeFactor(direct, 0);
        double imageSpread = OutdoorPath.FreeFactor(image, 0);
        for (int band = 0; band < OctaveBand.Count; band += Vector256<double>.Count)
        {
            Vector256<double> air = Vector256.Create(airPerMetre[band..]);
            Vector256<double> sum =
                (Vector256.Exp(air * -direct) * directSpread) + (Vector256.Exp(air * -image) * imageSpread);
            sum.CopyTo(factors[band..]);
        }

        double cosine = ((dx * emitter.AxisX) + (dy * emitter.AxisY)) / direct;
        return Heading.ToDegrees(Math.Acos(Math.Clamp(cosine, -1, 1)));
    }
}
