using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound;

/// <summary>What a plan says of the air, as sound needs it.</summary>
internal static class SiteAir
{
    /// <summary>
    /// The air of a site, cautious where it isn't stated. Outside the range of ISO 9613-1 the nearest end of the range is
    /// taken.
    /// </summary>
    public static AirState Of(Site site)
    {
        Air air = site.Air ?? new();
        return new(
            Within(air.TemperatureCelsius.Or<Air>(nameof(Air.TemperatureCelsius)).Value, -20, 50, 10),
            Within(air.HumidityPercent.Or<Air>(nameof(Air.HumidityPercent)).Value, 10, 100, 70),
            Within(
                air.PressureKilopascals.Or<Air>(nameof(Air.PressureKilopascals)).Value,
                60,
                110,
                AirState.StandardPressureKilopascals
            )
        );
    }

    private static double Within(double value, double least, double most, double otherwise) =>
        double.IsFinite(value) ? Math.Clamp(value, least, most) : otherwise;
}
