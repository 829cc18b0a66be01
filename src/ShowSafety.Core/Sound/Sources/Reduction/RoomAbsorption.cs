using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Enclosures;

namespace ShowSafety.Core.Sound.Sources.Reduction;

/// <summary>Absorption area of the room a reading was taken in, ISO 3744:2010: 0.16 V/T or ᾱ S, and the air's 4 m V.</summary>
public static class RoomAbsorption
{
    /// <summary>
    /// A in m² in each octave band: one number for the surfaces, since a room is described by one, and the air's share,
    /// with the largest volume the surface can enclose where no volume is stated. The larger of the two ways where both
    /// can be told: more absorption takes less off a reading. Null where neither can.
    /// </summary>
    /// <param name="room">The room.</param>
    /// <param name="airPerMetre">Power attenuation coefficients of the air in 1/m.</param>
    public static BandValues? SquareMetres(MeasurementRoom room, BandValues airPerMetre)
    {
        double? volume = Above(room.VolumeCubicMetres);
        double? surface = Above(room.SurfaceSquareMetres);
        double? byTime =
            volume is { } v && Above(room.ReverberationSeconds) is { } seconds
                ? RoomAcoustics.AbsorptionFromTimeSquareMetres(v, seconds)
                : null;
        double? bySurface = surface is { } s && Above(room.MeanAbsorption) is { } mean ? mean * s : null;
        if (byTime is null && bySurface is null)
        {
            return null;
        }

        double walls = Math.Max(byTime ?? 0, bySurface ?? 0);
        double air = 4 * (volume ?? SphereCubicMetres(surface!.Value));
        return airPerMetre.Map(m => walls + (air * m));
    }

    private static double SphereCubicMetres(double surfaceSquareMetres) =>
        Math.Pow(surfaceSquareMetres, 1.5) / (6 * Math.Sqrt(Math.PI));

    private static double? Above(double? value) => value is { } v && v > 0 && double.IsFinite(v) ? v : null;
}
