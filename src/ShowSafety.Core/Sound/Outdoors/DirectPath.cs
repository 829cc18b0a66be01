using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>The direction in which sound leaves an emitter for an ear: the same for every throttle state.</summary>
internal static class DirectPath
{
    /// <summary>Angle from the exhaust axis to the ear in degrees, 0 to 180.</summary>
    public static double AngleDegrees(
        Emitter emitter,
        double sourceHeightMetres,
        PlanPoint place,
        double earHeightMetres
    )
    {
        double dx = place.XMetres - emitter.Place.XMetres;
        double dy = place.YMetres - emitter.Place.YMetres;
        double slant = OutdoorPath.SlantMetres(Math.Sqrt((dx * dx) + (dy * dy)), sourceHeightMetres - earHeightMetres);
        return Degrees(((dx * emitter.AxisX) + (dy * emitter.AxisY)) / slant);
    }

    /// <summary>The range of angles from the exhaust axis to ears in a patch in degrees, 0 to 180.</summary>
    /// <param name="emitter">The emitter.</param>
    /// <param name="sourceHeightMetres">Its height.</param>
    /// <param name="patch">The patch.</param>
    /// <param name="metres">Distances along the ground from the emitter to the patch.</param>
    /// <param name="ears">Heights of the ears.</param>
    public static (double Least, double Most) AnglesDegrees(
        Emitter emitter,
        double sourceHeightMetres,
        in Patch patch,
        (double Near, double Far) metres,
        EarRange ears
    )
    {
        (double least, double most) = patch.IsSeenFrom(emitter.Place, emitter.AxisX, emitter.AxisY)
            ? patch.OwnCosines
            : patch.Cosines(emitter.Place, emitter.AxisX, emitter.AxisY);
        // Seen from a source at another height the angle is drawn towards 90 degrees, the more the nearer the ear.
        (double leastOff, double mostOff) = ears.OffMetres(sourceHeightMetres);
        double nearShare = metres.Near / OutdoorPath.SlantMetres(metres.Near, mostOff);
        double farShare = metres.Far / OutdoorPath.SlantMetres(metres.Far, leastOff);
        return (Degrees(most * (most > 0 ? farShare : nearShare)), Degrees(least * (least > 0 ? nearShare : farShare)));
    }

    private static double Degrees(double cosine) => Heading.ToDegrees(Math.Acos(Math.Clamp(cosine, -1, 1)));
}
