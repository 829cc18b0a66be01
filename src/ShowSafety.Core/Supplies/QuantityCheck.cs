using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>Fuel containers: whether they are on the plan, how much they hold, where they stand.</summary>
internal static class QuantityCheck
{
    public static IEnumerable<Finding> Findings(Plan plan)
    {
        ValueList<FuelStore> stores = plan.Supplies?.Fuel ?? [];
        if (plan.Engines.Count > 0 && stores.Count == 0)
        {
            yield return CannotTell.Without(
                typeof(SupplyList),
                "supplies.fuel-not-on-plan",
                Severity.Act,
                nameof(SupplyList.Fuel),
                row: ZoneRow.FuelAndGas
            );
        }

        foreach (Finding finding in stores.SelectMany(store => OfStore(plan, store)).Concat(Petrol(stores)))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> OfStore(Plan plan, FuelStore store)
    {
        if (store.Litres.NotNegative() is null)
        {
            yield return CannotTell.Without(
                typeof(FuelStore),
                "supplies.fuel-amount-missing",
                Severity.Act,
                nameof(FuelStore.Litres),
                store.Id,
                ZoneRow.FuelAndGas
            );
        }

        if (Indoors.Holds(plan, store.Place))
        {
            bool gas = store.Fuel == FuelKind.LiquefiedGas;
            yield return new(gas ? "supplies.gas-indoors" : "supplies.fuel-indoors", gas ? Severity.Stop : Severity.Act)
            {
                ElementId = store.Id,
                Place = store.Place,
                Row = ZoneRow.FuelAndGas,
                Citations = [gas ? SiteSources.SuppliesGasOpenAir : SiteSources.SuppliesFuelSeparation],
            };
        }
    }

    private static IEnumerable<Finding> Petrol(ValueList<FuelStore> stores)
    {
        double litres = stores.Where(s => s.Fuel == FuelKind.Petrol).Sum(s => s.Litres.NotNegative() ?? 0);
        if (litres > LiquidFuel.PetrolNoticeLitres)
        {
            string code =
                litres > LiquidFuel.PetrolLicenceLitres ? "supplies.petrol-licence" : "supplies.petrol-notice";
            yield return new(code, Severity.Act)
            {
                Row = ZoneRow.FuelAndGas,
                Arguments = [FindingArgument.Of("amount", Quantity.CautiousHigh(litres, litres, Unit.Litre))],
                Citations = [SiteSources.SuppliesPetrol],
            };
        }
    }
}
