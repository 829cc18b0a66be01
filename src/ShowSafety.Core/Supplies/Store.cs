using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>A place where something that burns is kept: a fuel container or a cylinder of fuel gas.</summary>
/// <param name="Id">Id of the element.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="IsGas">Whether it is liquefied gas.</param>
/// <param name="SeparationMetres">Distance that must be free of ignition sources.</param>
/// <param name="Pedigree">Pedigree of the amount the distance follows from.</param>
internal sealed record Store(string Id, PlanPoint Place, bool IsGas, double SeparationMetres, Pedigree Pedigree)
{
    /// <summary>Ids of the citations the separation rests on.</summary>
    public ValueList<string> Citations =>
        IsGas ? [SiteSources.SuppliesGasSeparation] : [SiteSources.SuppliesFuelSeparation];

    /// <summary>All stores of a plan, fuel first.</summary>
    public static ValueList<Store> Of(Plan plan)
    {
        SupplyList supplies = plan.Supplies ?? new SupplyList();
        Stated? gas = GasKilograms(supplies);
        return
        [
            .. supplies.Fuel.Select(OfFuel),
            .. supplies.Gas.Where(IsFuelGas).Select(cylinder => OfGas(cylinder.Id, cylinder.Place, gas)),
        ];
    }

    /// <summary>Whether a cylinder holds a gas that burns.</summary>
    public static bool IsFuelGas(GasCylinder cylinder) => cylinder.Gas is GasKind.Propane or GasKind.Butane;

    /// <summary>Mass of fuel gas in all cylinders together, or null where one of them is unknown.</summary>
    public static Stated? GasKilograms(SupplyList supplies)
    {
        var contents = supplies.Gas.Where(IsFuelGas).Select(c => c.Kilograms).ToList();
        return contents.Any(c => c.NotNegative() is null)
            ? null
            : new() { Value = contents.Sum(c => c!.Value), Pedigree = StatedNumbers.Weakest(contents) };
    }

    private static Store OfFuel(FuelStore fuel) =>
        fuel.Fuel == FuelKind.LiquefiedGas ? OfGas(fuel.Id, fuel.Place, gas: null)
        : fuel.Litres.NotNegative() is { } litres
            ? new(fuel.Id, fuel.Place, false, LiquidFuel.SeparationMetres(litres), fuel.Litres!.Pedigree)
        : new(fuel.Id, fuel.Place, false, LiquidFuel.LargestSeparationMetres, Pedigree.Assumed);

    private static Store OfGas(string id, PlanPoint place, Stated? gas) =>
        new(
            id,
            place,
            true,
            LiquefiedGas.SeparationMetres(gas?.Value ?? double.MaxValue),
            gas?.Pedigree ?? Pedigree.Assumed
        );
}
