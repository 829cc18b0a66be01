namespace ShowSafety.Core.Supplies;

/// <summary>Separations, extinguishers and leaks of liquefied petroleum gas.</summary>
public static class LiquefiedGas
{
    /// <summary>Lower flammable limit of propane in air, share of volume (IEC 60079-20-1; from memory).</summary>
    public const double PropaneLowerLimit = 0.017;

    /// <summary>Lower flammable limit of butane in air, share of volume (IEC 60079-20-1; from memory).</summary>
    public const double ButaneLowerLimit = 0.014;

    /// <summary>Molar mass of propane C3H8 in kg/mol.</summary>
    public const double PropaneKilogramsPerMole = 0.0440956;

    /// <summary>Distance of cylinders from openings and drains in m.</summary>
    public const double OpeningMetres = 2;

    /// <summary>Distance of cylinders from combustible stock in m.</summary>
    public const double CombustibleMetres = 3;

    private const double GasConstantJoulesPerMoleKelvin = 8.314462618;
    private const double SmallStockKilograms = 400;

    /// <summary>
    /// Distance of a stock of cylinders from buildings, tents, boundaries and ignition sources: 1 m up to 400 kg, 3 m
    /// above (a gas supplier's published rules).
    /// </summary>
    /// <param name="kilograms">Mass of gas in all cylinders in kg, zero or more.</param>
    /// <returns>Distance in m.</returns>
    public static double SeparationMetres(double kilograms) => kilograms <= SmallStockKilograms ? 1 : 3;

    /// <summary>
    /// Powder extinguishers of 9 kg beside a stock of cylinders: one under 400 kg, two from there, and one more for
    /// each started 10,000 kg above 5,000 kg (a cylinder store supplier's published rules).
    /// </summary>
    /// <param name="kilograms">Mass of gas in all cylinders in kg, zero or more.</param>
    public static int PowderExtinguishers(double kilograms) =>
        kilograms <= 0 ? 0
        : kilograms < SmallStockKilograms ? 1
        : 2 + (int)Math.Ceiling(Math.Max(0, kilograms - 5000) / 10000);

    /// <summary>Volume of a mass of gas, V = m R T/(M p): an ideal gas.</summary>
    /// <param name="kilograms">Mass m in kg, zero or more.</param>
    /// <param name="kilogramsPerMole">Molar mass M in kg/mol, more than zero.</param>
    /// <param name="temperatureCelsius">Temperature in °C, above −273.15.</param>
    /// <param name="pressureKilopascals">Pressure p in kPa, more than zero.</param>
    /// <returns>Volume in m³.</returns>
    public static double GasCubicMetres(
        double kilograms,
        double kilogramsPerMole,
        double temperatureCelsius,
        double pressureKilopascals
    ) =>
        kilograms
        * GasConstantJoulesPerMoleKelvin
        * (temperatureCelsius + 273.15)
        / (kilogramsPerMole * pressureKilopascals * 1000);

    /// <summary>Largest volume of air and gas that can be lit: the gas evenly mixed down to the lower limit.</summary>
    /// <param name="gasCubicMetres">Volume of the gas in m³, zero or more.</param>
    /// <param name="lowerLimit">Lower flammable limit, share of volume, more than zero.</param>
    /// <returns>Volume in m³.</returns>
    public static double MixtureCubicMetres(double gasCubicMetres, double lowerLimit) => gasCubicMetres / lowerLimit;
}
