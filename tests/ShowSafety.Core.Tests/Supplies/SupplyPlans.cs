using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Supplies;

namespace ShowSafety.Core.Tests.Supplies;

/// <summary>Invented plans with fuel, gas and extinguishers; the engine's nozzle is at the origin.</summary>
internal static class SupplyPlans
{
    public static Stated Measured(double value) => new() { Value = value, Pedigree = Pedigree.Measured };

    public static Engine Turbine { get; } =
        new()
        {
            Id = "one",
            Sheet = new()
            {
                Fuel = FuelKind.Kerosene,
                LengthMetres = Measured(0.4),
                CasingDiameterMetres = Measured(0.12),
            },
        };

    /// <summary>Nothing to find.</summary>
    public static Plan Complete { get; } =
        new()
        {
            Site = new() { Outline = [new(-50, -50), new(50, -50), new(50, 50), new(-50, 50)] },
            Engines = [Turbine],
            Supplies = new()
            {
                Fuel =
                [
                    new()
                    {
                        Id = "can",
                        Fuel = FuelKind.Kerosene,
                        Place = new(10, 0),
                        Litres = Measured(20),
                    },
                ],
                Extinguishers =
                [
                    new()
                    {
                        Id = "co2",
                        Kind = ExtinguisherKind.CarbonDioxide,
                        Place = new(3, 0),
                        Kilograms = Measured(5),
                        Rating = "70B",
                    },
                    new()
                    {
                        Id = "foam",
                        Kind = ExtinguisherKind.Foam,
                        Place = new(20, 0),
                        Rating = "13A 144B",
                    },
                ],
                SpillLitres = Measured(2),
                SpillTraySquareMetres = Measured(0.5),
            },
        };

    public static Plan With(Func<SupplyList, SupplyList> change) =>
        Complete with
        {
            Supplies = change(Complete.Supplies!),
        };

    public static Plan WithGas(PlanPoint place, double? kilograms = 0.4) =>
        With(s =>
            s with
            {
                Gas =
                [
                    new()
                    {
                        Id = "gas",
                        Gas = GasKind.Propane,
                        Place = place,
                        Kilograms = kilograms is { } k ? Measured(k) : null,
                    },
                ],
                Extinguishers =
                [
                    .. s.Extinguishers,
                    new()
                    {
                        Id = "powder",
                        Kind = ExtinguisherKind.Powder,
                        Kilograms = Measured(9),
                    },
                ],
            }
        );

    public static Plan InHall(Plan plan) =>
        plan with
        {
            Site = plan.Site with
            {
                Enclosure = new() { Id = "hall", Footprint = [new(-5, -5), new(5, -5), new(5, 5), new(-5, 5)] },
            },
        };

    public static IReadOnlyList<string> Codes(Plan plan) =>
        [.. SuppliesAssessor.Assess(plan).Findings.Select(f => f.Code)];
}
