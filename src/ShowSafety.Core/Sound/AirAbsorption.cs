using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>Air as sound meets it. For the plan's inputs use <see cref="Plans.Air"/>.</summary>
/// <param name="TemperatureCelsius">Air temperature, -20 to 50 °C.</param>
/// <param name="HumidityPercent">Relative humidity, 10 to 100 %.</param>
/// <param name="PressureKilopascals">Air pressure at the place, 60 to 110 kPa.</param>
public readonly record struct AirState(double TemperatureCelsius, double HumidityPercent, double PressureKilopascals)
{
    /// <summary>Air pressure the tables of ISO 9613-1:1993 are made for, in kPa.</summary>
    public const double StandardPressureKilopascals = 101.325;
}

/// <summary>
/// Absorption of sound by air after ISO 9613-1:1993, clauses 6.2 to 6.4. Valid from -20 to 50 °C, 10 to 100 %, 50 Hz
/// to 10 kHz, pressures under 200 kPa; accuracy ±10 % (clause 7.1).
/// </summary>
public static class AirAbsorption
{
    private const double ReferenceKelvin = 293.15;
    private const double TriplePointKelvin = 273.16;

    /// <summary>Attenuation in decibels per kilometre at a frequency in hertz.</summary>
    public static double DecibelsPerKilometre(double hertz, AirState air)
    {
        double kelvin = air.TemperatureCelsius + 273.15;
        double ratio = kelvin / ReferenceKelvin;
        double pressure = air.PressureKilopascals / AirState.StandardPressureKilopascals;
        double humidity = MolarConcentrationPercent(kelvin, air.HumidityPercent, pressure);
        double oxygen = pressure * (24 + (4.04e4 * humidity * (0.02 + humidity) / (0.391 + humidity)));
        double nitrogen =
            pressure / Math.Sqrt(ratio) * (9 + (280 * humidity * Math.Exp(-4.170 * (Math.Pow(ratio, -1.0 / 3) - 1))));
        double f2 = hertz * hertz;
        double classical = 1.84e-11 / pressure * Math.Sqrt(ratio);
        double relaxation =
            Math.Pow(ratio, -2.5)
            * (
                (0.01275 * Math.Exp(-2239.1 / kelvin) / (oxygen + (f2 / oxygen)))
                + (0.1068 * Math.Exp(-3352.0 / kelvin) / (nitrogen + (f2 / nitrogen)))
            );
        return 8.686 * f2 * (classical + relaxation) * 1000;
    }

    /// <summary>Attenuation of the octave bands in decibels per kilometre, at exact midbands.</summary>
    public static BandValues BandsDecibelsPerKilometre(AirState air) =>
        BandValues.Build(band => DecibelsPerKilometre(OctaveBand.MidbandHertz(band), air));

    /// <summary>
    /// Power attenuation coefficient m in 1/m from an attenuation in dB/km: what a room's air absorbs is 4mV.
    /// </summary>
    public static double PowerCoefficientPerMetre(double decibelsPerKilometre) =>
        decibelsPerKilometre / 1000 / (10 * Math.Log10(Math.E));

    private static double MolarConcentrationPercent(double kelvin, double humidityPercent, double pressure) =>
        humidityPercent * Math.Pow(10, (-6.8346 * Math.Pow(TriplePointKelvin / kelvin, 1.261)) + 4.6151) / pressure;
}
