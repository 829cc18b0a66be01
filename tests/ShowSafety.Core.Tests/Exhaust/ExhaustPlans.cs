using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Exhaust;

/// <summary>Plans for the tests of exhaust and indoor air: an invented engine of 150 N that blows to +y.</summary>
internal static class ExhaustPlans
{
    public static Stated Value(double value, Pedigree pedigree = Pedigree.Measured) =>
        new() { Value = value, Pedigree = pedigree };

    public static ThrottleState Full { get; } =
        new()
        {
            Id = "full",
            ShaftSpeedRevolutionsPerMinute = Value(110000),
            ThrustNewtons = Value(150),
            AirMassFlowKilogramsPerSecond = Value(0.368),
            ExhaustSpeedMetresPerSecond = Value(400),
            ExhaustTotalTemperatureCelsius = Value(650),
            FuelFlowKilogramsPerSecond = Value(0.0068),
            CarbonMonoxideGramsPerKilogram = Value(40),
            NitrogenOxidesGramsPerKilogram = Value(2),
        };

    public static ThrottleState Idle { get; } =
        new()
        {
            Id = "idle",
            ShaftSpeedRevolutionsPerMinute = Value(35000),
            ThrustNewtons = Value(7),
            AirMassFlowKilogramsPerSecond = Value(0.079),
            ExhaustSpeedMetresPerSecond = Value(87),
            ExhaustTotalTemperatureCelsius = Value(500),
            FuelFlowKilogramsPerSecond = Value(0.0014),
            CarbonMonoxideGramsPerKilogram = Value(100),
            NitrogenOxidesGramsPerKilogram = Value(1.5),
        };

    public static EngineSheet Sheet { get; } =
        new()
        {
            States = [Idle, Full],
            NozzleDiameterMetres = Value(0.055),
            IntakeDiameterMetres = Value(0.06),
            LengthMetres = Value(0.3),
            Fuel = FuelKind.Kerosene,
            LowerHeatingValueMegajoulesPerKilogram = Value(43.1),
        };

    public static Engine Turbine { get; } =
        new()
        {
            Id = "turbine",
            ShaftHeightMetres = Value(0.9),
            Sheet = Sheet,
        };

    public static Site Field { get; } =
        new()
        {
            Outline = [new(-50, -50), new(50, -50), new(50, 50), new(-50, 50)],
            Weather = new() { HighestTemperatureCelsius = Value(25) },
        };

    public static Plan Outdoors { get; } =
        new()
        {
            Title = "field",
            Site = Field,
            Engines = [Turbine],
        };

    public static Run Run(string id, int hour, int minute, params ThrottleStep[] steps) =>
        new()
        {
            Id = id,
            EngineId = Turbine.Id,
            StartsAt = new(hour, minute),
            Steps = [.. steps],
        };

    public static Enclosure Tent { get; } =
        new()
        {
            Id = "tent",
            Kind = EnclosureKind.Tent,
            Footprint = [new(-5, -5), new(5, -5), new(5, 15), new(-5, 15)],
            EavesHeightMetres = Value(2.5),
            FreshAirCubicMetresPerSecond = Value(2),
        };

    public static Plan Inside { get; } =
        Outdoors with
        {
            Site = Field with { Enclosure = Tent },
            Programme = new()
            {
                Runs =
                [
                    Run(
                        "one",
                        11,
                        0,
                        new() { StateId = "idle", Seconds = 60 },
                        new() { StateId = "full", Seconds = 120 }
                    ),
                ],
            },
        };

    public static Plan WithStates(params ThrottleState[] states) =>
        Outdoors with
        {
            Engines = [Turbine with { Sheet = Sheet with { States = [.. states] } }],
        };
}
