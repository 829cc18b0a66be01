namespace ShowSafety.Core.IndoorAir;

/// <summary>Molar masses and conversions between mass and volume concentrations.</summary>
public static class Gases
{
    /// <summary>Molar mass of carbon monoxide, g/mol.</summary>
    public const double CarbonMonoxide = 28.01;

    /// <summary>Molar mass of carbon dioxide, g/mol.</summary>
    public const double CarbonDioxide = 44.01;

    /// <summary>Molar mass of nitrogen dioxide, g/mol.</summary>
    public const double NitrogenDioxide = 46.01;

    /// <summary>Molar mass of nitric oxide, g/mol.</summary>
    public const double NitricOxide = 30.01;

    /// <summary>Molar volume at 20 °C and 1 atm, L/mol: the convention of EH40.</summary>
    public const double LitresPerMole = 24.05526;

    /// <summary>mg/m³ from ppm: ppm · M/24.05526.</summary>
    public static double MilligramsPerCubicMetre(double ppm, double gramsPerMole) => ppm * gramsPerMole / LitresPerMole;

    /// <summary>ppm from mg/m³.</summary>
    public static double Ppm(double milligramsPerCubicMetre, double gramsPerMole) =>
        milligramsPerCubicMetre * LitresPerMole / gramsPerMole;

    /// <summary>Combustion efficiency from emission indices in g/kg: 1 − EI_CO 10.1/(1000 LHV) − EI_HC/1000.</summary>
    public static double CombustionEfficiency(
        double carbonMonoxide,
        double hydrocarbons,
        double heatingValueMegajoulesPerKilogram
    ) => 1 - (carbonMonoxide * 10.1 / (1000 * heatingValueMegajoulesPerKilogram)) - (hydrocarbons / 1000);

    /// <summary>Largest emission index of CO in g/kg that a combustion efficiency allows: 1000 (1 − η) LHV/10.1.</summary>
    public static double LargestCarbonMonoxideIndex(double efficiency, double heatingValueMegajoulesPerKilogram) =>
        1000 * (1 - efficiency) * heatingValueMegajoulesPerKilogram / 10.1;

    /// <summary>Dose of carbon monoxide, 1 at incapacitation: Σ C Δt/35 000 with C in ppm, t in min (ISO 13571).</summary>
    public static double CarbonMonoxideDose(double ppmMinutes) => ppmMinutes / 35000;
}
