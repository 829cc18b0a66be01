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
