using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>How a liquid fuel burns as a pool (NUREG-1805, 2004, table 3-2; from memory).</summary>
/// <param name="BurningRateKilogramsPerSquareMetreSecond">Mass burning rate of a large pool, kg/(m²·s).</param>
/// <param name="HeatOfCombustionMegajoulesPerKilogram">Effective heat of combustion, MJ/kg.</param>
/// <param name="AbsorptionPerMetre">Empirical constant kβ that makes small pools burn slower, 1/m.</param>
public readonly record struct PoolFuel(
    double BurningRateKilogramsPerSquareMetreSecond,
    double HeatOfCombustionMegajoulesPerKilogram,
    double AbsorptionPerMetre
)
{
    /// <summary>Kerosene.</summary>
    public static PoolFuel Kerosene { get; } = new(0.039, 43.2, 3.5);

    /// <summary>Jet fuel JP-5, a kerosene that burns faster: the planning value for kerosene of an unknown grade.</summary>
    public static PoolFuel JetFuel { get; } = new(0.054, 43.0, 1.6);

    /// <summary>Petrol.</summary>
    public static PoolFuel Petrol { get; } = new(0.055, 43.7, 2.1);

    /// <summary>
    /// Rows of the table that describe a fuel, the usual one first, or nothing for a fuel that makes no pool in the
    /// open. Diesel has no row of its own and takes those of kerosene, which burn faster than heavier oils do.
    /// </summary>
    public static ValueList<PoolFuel> RowsFor(FuelKind fuel) =>
        fuel switch
        {
            FuelKind.Kerosene or FuelKind.Diesel => [Kerosene, JetFuel],
            FuelKind.Petrol => [Petrol],
            _ => [],
        };
}
