using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>Cylinders of fuel gas: the mixture a leak can make, where they stand, powder beside them.</summary>
internal static class GasCheck
{
    private const double PowderKilograms = 9;

    public static IEnumerable<Figure> Figures(Plan plan)
    {
        double celsius =
            plan.Site.Weather?.HighestTemperatureCelsius.Positive()
            ?? CautiousValues.Of<WeatherBand>(nameof(WeatherBand.HighestTemperatureCelsius));
        double kilopascals =
            plan.Site.Air?.PressureKilopascals.Positive() ?? CautiousValues.Of<Air>(nameof(Air.PressureKilopascals));
        foreach (GasCylinder cylinder in Cylinders(plan))
        {
            if (cylinder.Kilograms.NotNegative() is { } kilograms)
            {
                yield return new(
                    "supplies.gas-mixture",
                    cylinder.Id,
                    Mixture(cylinder, kilograms, celsius, kilopascals)
                );
            }
        }
    }

    public static IEnumerable<Finding> Findings(Plan plan) =>
        Cylinders(plan).SelectMany(c => OfCylinder(plan, c)).Concat(Powder(plan));

    private static IEnumerable<GasCylinder> Cylinders(Plan plan) => (plan.Supplies?.Gas ?? []).Where(Store.IsFuelGas);

    // Butane stands for its mixtures with propane too: the lower limit of one, the larger gas volume of the other.
    private static Quantity Mixture(GasCylinder cylinder, double kilograms, double celsius, double kilopascals)
    {
        double limit = cylinder.Gas == GasKind.Propane ? LiquefiedGas.PropaneLowerLimit : LiquefiedGas.ButaneLowerLimit;
        double gas = LiquefiedGas.GasCubicMetres(kilograms, LiquefiedGas.PropaneKilogramsPerMole, celsius, kilopascals);
        double mixture = LiquefiedGas.MixtureCubicMetres(gas, limit);
        return Quantity.CautiousHigh(mixture, mixture, Unit.CubicMetre) with
        {
            Pedigree = cylinder.Kilograms!.Pedigree,
            Sum = "gas-mixture",
            Citations = [SiteSources.SuppliesLowerLimit],
        };
    }

    private static IEnumerable<Finding> OfCylinder(Plan plan, GasCylinder cylinder)
    {
        if (cylinder.Kilograms.NotNegative() is null)
        {
            yield return CannotTell.Without(
                typeof(GasCylinder),
                "supplies.gas-amount-missing",
                Severity.Act,
                nameof(GasCylinder.Kilograms),
                cylinder.Id,
                ZoneRow.FuelAndGas
            );
        }

        if (Indoors.Holds(plan, cylinder.Place))
        {
            yield return new("supplies.gas-indoors", Severity.Stop)
            {
                ElementId = cylinder.Id,
                Place = cylinder.Place,
                Row = ZoneRow.FuelAndGas,
                Citations = [SiteSources.SuppliesGasOpenAir],
            };
        }
    }

    private static IEnumerable<Finding> Powder(Plan plan)
    {
        SupplyList supplies = plan.Supplies ?? new SupplyList();
        if (!supplies.Gas.Any(Store.IsFuelGas))
        {
            yield break;
        }

        int there = supplies.Extinguishers.Count(e =>
            e.Kind == ExtinguisherKind.Powder && e.Kilograms.NotNegative() >= PowderKilograms
        );
        // An unknown content counts as the smallest stock: its own finding asks for the amount.
        int wanted = Math.Max(1, LiquefiedGas.PowderExtinguishers(Store.GasKilograms(supplies)?.Value ?? 0));
        if (there < wanted)
        {
            yield return new("supplies.gas-powder-few", Severity.Note)
            {
                Row = ZoneRow.FuelAndGas,
                Arguments = [FindingArgument.Of("wanted", wanted), FindingArgument.Of("there", there)],
                Citations = [SiteSources.SuppliesGasExtinguishers],
            };
        }
    }
}
