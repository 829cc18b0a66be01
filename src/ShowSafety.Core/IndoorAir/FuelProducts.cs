using ShowSafety.Core.Plans;

namespace ShowSafety.Core.IndoorAir;

/// <summary>Products of complete combustion per kilogram of fuel.</summary>
/// <param name="CarbonDioxide">Carbon dioxide, kg/kg.</param>
/// <param name="Water">Water, kg/kg.</param>
/// <param name="Oxygen">Oxygen used, kg/kg.</param>
/// <param name="Air">Air for it, kg/kg.</param>
public sealed record CombustionProducts(double CarbonDioxide, double Water, double Oxygen, double Air)
{
    /// <summary>Stoichiometric fuel over air by mass.</summary>
    public double FuelAirRatio => 1 / Air;
}

/// <summary>Complete combustion of C_c H_h, an exact mole balance.</summary>
public static class FuelProducts
{
    /// <summary>Moles of dry air per mole of oxygen as textbooks count them.</summary>
    public const double AirPerOxygen = 4.76;

    /// <summary>Carbon atoms of the average kerosene molecule: Xu, Wang et al. 2015.</summary>
    public const double KeroseneCarbon = 11.4;

    /// <summary>Hydrogen atoms of the average kerosene molecule: Xu, Wang et al. 2015.</summary>
    public const double KeroseneHydrogen = 21.7;

    /// <summary>Molar mass of dry air, g/mol.</summary>
    public const double AirGramsPerMole = 28.97;

    private const double Carbon = 12.011;
    private const double Hydrogen = 1.008;
    private const double Oxygen = 15.999;

    /// <summary>Products per kilogram of a fuel of c carbon and h hydrogen atoms.</summary>
    public static CombustionProducts Of(double carbonAtoms, double hydrogenAtoms)
    {
        double fuel = (carbonAtoms * Carbon) + (hydrogenAtoms * Hydrogen);
        double oxygenMoles = carbonAtoms + (hydrogenAtoms / 4);
        return new(
            carbonAtoms * (Carbon + (2 * Oxygen)) / fuel,
            hydrogenAtoms / 2 * ((2 * Hydrogen) + Oxygen) / fuel,
            oxygenMoles * 2 * Oxygen / fuel,
            oxygenMoles * AirPerOxygen * AirGramsPerMole / fuel
        );
    }

    /// <summary>
    /// Products of a fuel of the plan. Kerosene from its published formula; the others by the hydrogen per carbon of
    /// their class (common practice): diesel 1.8, petrol 1.85, gas as butane. Unknown fuel: the one with most CO2.
    /// </summary>
    public static CombustionProducts Of(FuelKind? fuel) =>
        fuel switch
        {
            FuelKind.Kerosene => Of(KeroseneCarbon, KeroseneHydrogen),
            FuelKind.Petrol => Of(1, 1.85),
            FuelKind.LiquefiedGas => Of(4, 10),
            _ => Of(1, 1.8),
        };
}
