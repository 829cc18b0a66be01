namespace ShowSafety.Core.Debris;

/// <summary>Drag of tumbling, sharp-edged pieces, and the air they fly through.</summary>
public static class Drag
{
    /// <summary>
    /// Drag coefficient of an irregular tumbling piece below the speed of sound: best estimate, after Hoerner's values
    /// for plates and cubes (from memory).
    /// </summary>
    public const double Tumbling = 1.0;

    /// <summary>
    /// Drag coefficient to plan with: the least of Hoerner's values for sharp-edged bodies, a cube edge on (from
    /// memory). The rise near the speed of sound is left out: less drag, longer flight.
    /// </summary>
    public const double PlanningLow = 0.80;

    /// <summary>Gas constant of dry air in J/(kg·K): 287.05 (ISO 2533:1975, from memory).</summary>
    public const double GasConstant = 287.05287;

    private static readonly (double Mach, double Coefficient)[] ByMach =
    [
        (0, 0.95),
        (0.5, 0.95),
        (0.75, 0.98),
        (1.0, 1.16),
        (1.25, 1.24),
        (1.5, 1.21),
        (2, 1.14),
        (3, 1.10),
    ];

    /// <summary>
    /// Drag coefficient of a bluff tumbling piece against Mach number, straight lines between table values; the last
    /// value above Mach 3. The table is from memory with little confidence: it shows the rise near the speed of
    /// sound and decides nothing in a plan.
    /// </summary>
    /// <param name="mach">Mach number, 0 or more.</param>
    public static double CoefficientAtMach(double mach)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(mach);
        for (int i = 1; i < ByMach.Length; i++)
        {
            (double left, double low) = ByMach[i - 1];
            (double right, double high) = ByMach[i];
            if (mach <= right)
            {
                return low + ((high - low) * (mach - left) / (right - left));
            }
        }

        return ByMach[^1].Coefficient;
    }

    /// <summary>k = ρ C_d A / (2 m) in 1/m, the share of speed lost per metre.</summary>
    /// <param name="airDensityKilogramsPerCubicMetre">ρ in kg/m³, 0 or more.</param>
    /// <param name="dragAreaSquareMetres">C_d A in m², 0 or more.</param>
    /// <param name="massKilograms">m in kg, above 0.</param>
    public static double PerMetre(
        double airDensityKilogramsPerCubicMetre,
        double dragAreaSquareMetres,
        double massKilograms
    ) => airDensityKilogramsPerCubicMetre * dragAreaSquareMetres / (2 * massKilograms);

    /// <summary>Density of dry air in kg/m³: ρ = p/(R T).</summary>
    /// <param name="temperatureCelsius">Temperature in °C, above −273.15.</param>
    /// <param name="pressureKilopascals">Pressure at the place in kPa, above 0.</param>
    public static double AirDensity(double temperatureCelsius, double pressureKilopascals) =>
        pressureKilopascals * 1000 / (GasConstant * (temperatureCelsius + 273.15));
}
