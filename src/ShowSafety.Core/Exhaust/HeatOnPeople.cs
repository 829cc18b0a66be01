namespace ShowSafety.Core.Exhaust;

/// <summary>
/// How long people bear hot air and radiation. These laws describe escape from a fire and are never used to allow
/// anybody into a jet: a fast hot jet heats skin faster than still air.
/// </summary>
public static class HeatOnPeople
{
    /// <summary>Radiation in kW/m² under which no dose is counted (NCHRP Synthesis 415, p. 18).</summary>
    public const double RadiantFloorKilowattsPerSquareMetre = 2.5;

    /// <summary>1 Btu/(h ft²) in W/m².</summary>
    public const double BtuPerHourSquareFootWatts = 3.154591;

    /// <summary>Minutes unclothed or lightly clothed in air of T °C: 5.0e7 T^−3.4 (ISO 13571, memory).</summary>
    public static double LightlyClothedMinutes(double airCelsius) => 5.0e7 * Math.Pow(airCelsius, -3.4);

    /// <summary>Minutes fully clothed in air of T °C: 4.1e8 T^−3.61 (ISO 13571, memory).</summary>
    public static double FullyClothedMinutes(double airCelsius) => 4.1e8 * Math.Pow(airCelsius, -3.61);

    /// <summary>
    /// Minutes in air of T °C by the annex table of NFPA 130 (memory): 1.125e7 T^−3.4, fitted to its nine values. The
    /// cautious one of the three laws.
    /// </summary>
    public static double CautiousMinutes(double airCelsius) => 1.125e7 * Math.Pow(airCelsius, -3.4);

    /// <summary>Minutes to a second-degree burn at q kW/m²: 6.9 q^−1.56 (ISO 13571); infinite under the floor.</summary>
    public static double BurnMinutes(double kilowattsPerSquareMetre) =>
        kilowattsPerSquareMetre <= RadiantFloorKilowattsPerSquareMetre
            ? double.PositiveInfinity
            : 6.9 * Math.Pow(kilowattsPerSquareMetre, -1.56);

    /// <summary>Minutes to pain at q kW/m²: 4.2 q^−1.9 (ISO 13571, memory).</summary>
    public static double PainMinutes(double kilowattsPerSquareMetre) => 4.2 * Math.Pow(kilowattsPerSquareMetre, -1.9);

    /// <summary>Share of a dose taken in a time of radiation and hot air: Δt (1/t_rad + 1/t_conv).</summary>
    public static double DoseShare(double minutes, double kilowattsPerSquareMetre, double airCelsius) =>
        minutes * ((1 / BurnMinutes(kilowattsPerSquareMetre)) + (1 / CautiousMinutes(airCelsius)));

    /// <summary>
    /// Seconds to a thermal dose of D (kW/m²)^(4/3) s at q kW/m²: D/q^(4/3). Doses of HSL 2007: pain 92, first degree
    /// 105, second degree 290, third degree 1000.
    /// </summary>
    public static double DoseSeconds(double dose, double kilowattsPerSquareMetre) =>
        dose / Math.Pow(kilowattsPerSquareMetre, 4.0 / 3);

    /// <summary>kW/m² from Btu/(h ft²).</summary>
    public static double KilowattsPerSquareMetre(double btuPerHourSquareFoot) =>
        btuPerHourSquareFoot * BtuPerHourSquareFootWatts / 1000;

    /// <summary>Pressure of a jet blast on a surface, Pa: 0.04733 V², V in km/h (FAA AC 150/5300-13, ch. 8).</summary>
    public static double BlastPressurePascals(double kilometresPerHour) =>
        0.04733 * kilometresPerHour * kilometresPerHour;

    /// <summary>The same in the source's other units, lb/ft²: 0.00256 V², V in mile/h.</summary>
    public static double BlastPressurePoundsPerSquareFoot(double milesPerHour) => 0.00256 * milesPerHour * milesPerHour;
}
