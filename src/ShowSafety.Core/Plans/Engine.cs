using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>An engine on its bench.</summary>
public sealed record Engine
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Name people know it by.</summary>
    [Field("name people know it by", MaxLength = 120)]
    public string? Name { get; init; }

    /// <summary>Middle of the exhaust nozzle's exit plane, seen from above.</summary>
    [Field("middle of the nozzle's exit, seen from above", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint Place { get; init; }

    /// <summary>Heading the exhaust blows to, degrees clockwise from +y.</summary>
    [Field(
        "heading the exhaust blows to, clockwise from up the sheet",
        Required = true,
        Unit = Unit.Degree,
        Min = 0,
        Max = 360
    )]
    public double ExhaustHeadingDegrees { get; init; }

    /// <summary>Height of the shaft above the ground.</summary>
    [Field("height of the shaft above the ground", Unit = Unit.Metre, Min = 0.05, Max = 5, FindOut = FindOut.Tape)]
    public Stated? ShaftHeightMetres { get; init; }

    /// <summary>The bench it stands on.</summary>
    [Field("the bench it stands on")]
    public Bench? Bench { get; init; }

    /// <summary>What is known about the engine.</summary>
    [Field("what is known about the engine")]
    public EngineSheet? Sheet { get; init; }
}

/// <summary>The bench an engine stands on: a rectangle under the engine, turned with it.</summary>
public sealed record Bench
{
    /// <summary>Length along the shaft.</summary>
    [Field("length along the shaft", Unit = Unit.Metre, Min = 0.1, Max = 10, FindOut = FindOut.Tape)]
    public Stated? LengthMetres { get; init; }

    /// <summary>Width across the shaft.</summary>
    [Field("width across the shaft", Unit = Unit.Metre, Min = 0.1, Max = 10, FindOut = FindOut.Tape)]
    public Stated? WidthMetres { get; init; }

    /// <summary>Mass of bench and engine, with ballast, without people leaning on it.</summary>
    [Field(
        "mass of bench and engine with ballast",
        Unit = Unit.Kilogram,
        Min = 0.5,
        Max = 5000,
        FindOut = FindOut.Scale
    )]
    public Stated? MassKilograms { get; init; }

    /// <summary>Horizontal distance from the centre of mass to the edge the thrust would tip it over.</summary>
    [Field(
        "distance from the centre of mass to the edge the thrust would tip it over",
        Unit = Unit.Metre,
        Min = 0.02,
        Max = 5,
        FindOut = FindOut.Tape
    )]
    public Stated? TippingArmMetres { get; init; }

    /// <summary>Friction coefficient between feet and ground.</summary>
    [Field(
        "friction coefficient between feet and ground",
        Min = 0,
        Max = 1.5,
        Cautious = 0.2,
        Hopeful = 0.5,
        FindOut = FindOut.Scale
    )]
    public Stated? Friction { get; init; }

    /// <summary>Whether the bench is bolted, staked or strapped to the ground.</summary>
    [Field("how the bench is held to the ground")]
    public Anchoring? Anchoring { get; init; }

    /// <summary>Horizontal force the anchoring was tested or rated to.</summary>
    [Field(
        "horizontal force the anchoring was tested or rated to",
        Unit = Unit.Newton,
        Min = 0,
        Max = 100000,
        FindOut = FindOut.Scale
    )]
    public Stated? AnchoringRatedNewtons { get; init; }

    /// <summary>Moment against tipping the anchoring was tested or rated to.</summary>
    [Field(
        "moment against tipping the anchoring was tested or rated to",
        Unit = Unit.NewtonMetre,
        Min = 0,
        Max = 100000,
        FindOut = FindOut.Scale
    )]
    public Stated? AnchoringRatedNewtonMetres { get; init; }
}

/// <summary>How a bench is held.</summary>
public enum Anchoring
{
    /// <summary>It stands by its weight alone.</summary>
    FreeStanding,

    /// <summary>Bolted to the floor.</summary>
    Bolted,

    /// <summary>Staked into the ground.</summary>
    Staked,

    /// <summary>Strapped or chained to something heavy.</summary>
    Strapped,
}

/// <summary>What is known about an engine.</summary>
public sealed record EngineSheet
{
    /// <summary>Sound measurements.</summary>
    [Field("sound measurements", MaxCount = 60, FindOut = FindOut.SoundMeter)]
    public ValueList<SoundMeasurement> Measurements { get; init; } = [];

    /// <summary>Throttle states.</summary>
    [Field("throttle states", MaxCount = 12, FindOut = FindOut.Maker)]
    public ValueList<ThrottleState> States { get; init; } = [];

    /// <summary>Rotors: turbine and compressor wheels.</summary>
    [Field("rotors: turbine and compressor wheels", MaxCount = 8, FindOut = FindOut.Maker)]
    public ValueList<Rotor> Rotors { get; init; } = [];

    /// <summary>Declared directivity of the sound.</summary>
    [Field("declared directivity of the sound")]
    public Directivity? Directivity { get; init; }

    /// <summary>Outer diameter of the casing.</summary>
    [Field("outer diameter of the casing", Unit = Unit.Metre, Min = 0.02, Max = 1, FindOut = FindOut.Tape)]
    public Stated? CasingDiameterMetres { get; init; }

    /// <summary>Diameter of the exhaust nozzle.</summary>
    [Field("diameter of the exhaust nozzle", Unit = Unit.Metre, Min = 0.005, Max = 0.5, FindOut = FindOut.Tape)]
    public Stated? NozzleDiameterMetres { get; init; }

    /// <summary>Diameter of the intake opening.</summary>
    [Field("diameter of the intake opening", Unit = Unit.Metre, Min = 0.005, Max = 0.8, FindOut = FindOut.Tape)]
    public Stated? IntakeDiameterMetres { get; init; }

    /// <summary>Distance from the nozzle's exit to the intake face, along the shaft.</summary>
    [Field(
        "distance from the nozzle's exit to the intake face",
        Unit = Unit.Metre,
        Min = 0.05,
        Max = 3,
        FindOut = FindOut.Tape
    )]
    public Stated? LengthMetres { get; init; }

    /// <summary>Fuel burnt while running.</summary>
    [Field("fuel burnt while running")]
    public FuelKind? Fuel { get; init; }

    /// <summary>Lower heating value of the fuel.</summary>
    [Field(
        "lower heating value of the fuel",
        Unit = Unit.MegajoulePerKilogram,
        Min = 10,
        Max = 130,
        Cautious = 43.5,
        Hopeful = 43.1,
        FindOut = FindOut.Maker
    )]
    public Stated? LowerHeatingValueMegajoulesPerKilogram { get; init; }
}

/// <summary>Declared directivity of the sound of an engine.</summary>
public enum Directivity
{
    /// <summary>From the measurements, and the published jet table where they are silent.</summary>
    FromMeasurements,

    /// <summary>Declared the same in all directions by the user; a finding says so.</summary>
    DeclaredOmnidirectional,
}

/// <summary>Fuels.</summary>
public enum FuelKind
{
    /// <summary>Kerosene of any grade.</summary>
    Kerosene,

    /// <summary>Diesel.</summary>
    Diesel,

    /// <summary>Propane or butane gas.</summary>
    LiquefiedGas,

    /// <summary>Petrol.</summary>
    Petrol,
}

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
