using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>The air the jet blows into: the hottest the plan holds for, at the stated pressure.</summary>
/// <param name="TemperatureCelsius">Temperature, °C.</param>
/// <param name="PressureKilopascals">Pressure, kPa.</param>
/// <param name="Pedigree">Weaker of both pedigrees.</param>
public sealed record AmbientAir(double TemperatureCelsius, double PressureKilopascals, Pedigree Pedigree)
{
    /// <summary>Density, kg/m³.</summary>
    public double Density => ThrustLaw.AirDensity(TemperatureCelsius, PressureKilopascals);

    /// <summary>The air of a plan, with the catalogue's cautious values where the plan is silent.</summary>
    public static AmbientAir Of(Site site)
    {
        Stated temperature = (site.Weather?.HighestTemperatureCelsius).Or<WeatherBand>(
            nameof(WeatherBand.HighestTemperatureCelsius)
        );
        Stated pressure = (site.Air?.PressureKilopascals).Or<Air>(nameof(Air.PressureKilopascals));
        return new(temperature.Value, pressure.Value, Pedigrees.Weakest(temperature, pressure));
    }
}

/// <summary>The weaker of several pedigrees.</summary>
internal static class Pedigrees
{
    /// <summary>The weakest pedigree among the values that are stated; calculated when none is.</summary>
    public static Pedigree Weakest(params ReadOnlySpan<Stated?> stated)
    {
        Pedigree? weakest = null;
        foreach (Stated? value in stated)
        {
            if (value is { Pedigree: not Pedigree.Calculated })
            {
                weakest = Weaker(weakest, value.Pedigree);
            }
        }

        return weakest ?? Pedigree.Calculated;
    }

    /// <summary>The weaker of two; calculated counts as nothing said.</summary>
    public static Pedigree Weaker(Pedigree? first, Pedigree second) =>
        first is null or Pedigree.Calculated ? second
        : second is Pedigree.Calculated ? first.Value
        : (Pedigree)Math.Max((int)first.Value, (int)second);
}
