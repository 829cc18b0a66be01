using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>A state of the throttle: idle, half, full.</summary>
public sealed record ThrottleState
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Name people know it by.</summary>
    [Field("name people know it by", MaxLength = 60)]
    public string? Name { get; init; }

    /// <summary>Shaft speed.</summary>
    [Field("shaft speed", Unit = Unit.RevolutionPerMinute, Min = 1000, Max = 400000, FindOut = FindOut.Meter)]
    public Stated? ShaftSpeedRevolutionsPerMinute { get; init; }

    /// <summary>Thrust.</summary>
    [Field("thrust", Unit = Unit.Newton, Min = 0.1, Max = 3000, FindOut = FindOut.Scale)]
    public Stated? ThrustNewtons { get; init; }

    /// <summary>Air mass flow.</summary>
    [Field("air mass flow", Unit = Unit.KilogramPerSecond, Min = 0.001, Max = 10, FindOut = FindOut.Maker)]
    public Stated? AirMassFlowKilogramsPerSecond { get; init; }

    /// <summary>Exhaust speed at the nozzle.</summary>
    [Field("exhaust speed at the nozzle", Unit = Unit.MetrePerSecond, Min = 5, Max = 700, FindOut = FindOut.Maker)]
    public Stated? ExhaustSpeedMetresPerSecond { get; init; }

    /// <summary>Total temperature of the exhaust.</summary>
    [Field("total temperature of the exhaust", Unit = Unit.Celsius, Min = 50, Max = 1200, FindOut = FindOut.Meter)]
    public Stated? ExhaustTotalTemperatureCelsius { get; init; }

    /// <summary>Fuel mass flow.</summary>
    [Field("fuel mass flow", Unit = Unit.KilogramPerSecond, Min = 0.00001, Max = 0.3, FindOut = FindOut.Scale)]
    public Stated? FuelFlowKilogramsPerSecond { get; init; }

    /// <summary>Emission index of carbon monoxide.</summary>
    [Field(
        "emission index of carbon monoxide",
        Unit = Unit.GramPerKilogram,
        Min = 0,
        Max = 2000,
        FindOut = FindOut.Meter
    )]
    public Stated? CarbonMonoxideGramsPerKilogram { get; init; }

    /// <summary>Emission index of nitrogen oxides, counted as nitrogen dioxide.</summary>
    [Field(
        "emission index of nitrogen oxides, counted as nitrogen dioxide",
        Unit = Unit.GramPerKilogram,
        Min = 0,
        Max = 100,
        FindOut = FindOut.Meter
    )]
    public Stated? NitrogenOxidesGramsPerKilogram { get; init; }

    /// <summary>Share of the nitrogen oxides that leaves as nitrogen dioxide.</summary>
    [Field(
        "share of the nitrogen oxides that leaves as nitrogen dioxide",
        Min = 0,
        Max = 1,
        Cautious = 1,
        Hopeful = 0.3,
        FindOut = FindOut.Meter
    )]
    public Stated? NitrogenDioxideShare { get; init; }

    /// <summary>Emission index of unburnt hydrocarbons.</summary>
    [Field(
        "emission index of unburnt hydrocarbons",
        Unit = Unit.GramPerKilogram,
        Min = 0,
        Max = 1000,
        FindOut = FindOut.Meter
    )]
    public Stated? HydrocarbonsGramsPerKilogram { get; init; }
}
