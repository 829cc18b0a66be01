using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>Air and launch height the pieces fly from: best estimate, and thin air and the day's wind to plan with.</summary>
/// <param name="BestDensity">Air density at the stated temperature in kg/m³.</param>
/// <param name="PlanningDensity">Air density on the hottest day of the plan in kg/m³: less drag.</param>
/// <param name="WindMetresPerSecond">Highest wind at head height in m/s.</param>
/// <param name="HeightMetres">Height of the shaft in m.</param>
/// <param name="Pedigree">Weakest pedigree of the four.</param>
internal readonly record struct FlightAir(
    double BestDensity,
    double PlanningDensity,
    double WindMetresPerSecond,
    double HeightMetres,
    Pedigree Pedigree
)
{
    /// <summary>Launch height in m where none is stated: the greatest a plan accepts.</summary>
    public const double GreatestShaftHeightMetres = 5;

    public static FlightAir Of(Site site, Engine engine)
    {
        Stated celsius = Or<Air>(site.Air?.TemperatureCelsius, nameof(Air.TemperatureCelsius), -60, 80);
        Stated pressure = Or<Air>(site.Air?.PressureKilopascals, nameof(Air.PressureKilopascals), 30, 120);
        Stated hottest = Or<WeatherBand>(
            site.Weather?.HighestTemperatureCelsius,
            nameof(WeatherBand.HighestTemperatureCelsius),
            -60,
            80
        );
        Stated wind = Or<WeatherBand>(
            site.Weather?.HighestWindMetresPerSecond,
            nameof(WeatherBand.HighestWindMetresPerSecond),
            0,
            60
        );
        Stated height =
            Readable.Within(engine.ShaftHeightMetres, 0, 20)
            ?? new() { Value = GreatestShaftHeightMetres, Pedigree = Pedigree.Assumed };
        return new(
            Drag.AirDensity(celsius.Value, pressure.Value),
            Drag.AirDensity(Math.Max(celsius.Value, hottest.Value), pressure.Value),
            wind.Value,
            height.Value,
            Readable.Weakest(celsius, pressure, hottest, wind, height)
        );
    }

    private static Stated Or<T>(Stated? stated, string member, double min, double max) =>
        Readable.Within(stated, min, max).Or<T>(member);
}
