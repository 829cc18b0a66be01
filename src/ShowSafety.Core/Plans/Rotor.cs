using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>A turbine or compressor wheel.</summary>
public sealed record Rotor
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Turbine or compressor.</summary>
    [Field("turbine or compressor", Required = true)]
    public RotorKind Kind { get; init; }

    /// <summary>Distance of the wheel's middle plane from the nozzle's exit, towards the intake.</summary>
    [Field(
        "distance of the wheel's middle plane from the nozzle's exit, towards the intake",
        Unit = Unit.Metre,
        Min = 0,
        Max = 3,
        FindOut = FindOut.Maker
    )]
    public Stated? AxialPositionMetres { get; init; }

    /// <summary>Radius at the blade tips.</summary>
    [Field("radius at the blade tips", Unit = Unit.Metre, Min = 0.005, Max = 0.5, FindOut = FindOut.Maker)]
    public Stated? TipRadiusMetres { get; init; }

    /// <summary>Radius of the rim the blades stand on.</summary>
    [Field("radius of the rim the blades stand on", Unit = Unit.Metre, Min = 0.002, Max = 0.5, FindOut = FindOut.Maker)]
    public Stated? RimRadiusMetres { get; init; }

    /// <summary>Radius of the bore.</summary>
    [Field(
        "radius of the bore",
        Unit = Unit.Metre,
        Min = 0,
        Max = 0.2,
        Cautious = 0,
        Hopeful = 0.004,
        FindOut = FindOut.Maker
    )]
    public Stated? BoreRadiusMetres { get; init; }

    /// <summary>Mass with blades.</summary>
    [Field("mass of the wheel with its blades", Unit = Unit.Kilogram, Min = 0.001, Max = 50, FindOut = FindOut.Scale)]
    public Stated? BladedMassKilograms { get; init; }

    /// <summary>Number of blades.</summary>
    [Field("number of blades", Min = 3, Max = 200, FindOut = FindOut.Maker)]
    public int? BladeCount { get; init; }

    /// <summary>Mean thickness of the disc along the shaft.</summary>
    [Field(
        "mean thickness of the disc along the shaft",
        Unit = Unit.Metre,
        Min = 0.0005,
        Max = 0.3,
        FindOut = FindOut.Maker
    )]
    public Stated? DiscThicknessMetres { get; init; }

    /// <summary>What it is made of.</summary>
    [Field("what it is made of", FindOut = FindOut.Maker)]
    public RotorMaterial? Material { get; init; }

    /// <summary>Highest speed it is rated for.</summary>
    [Field(
        "highest speed it is rated for",
        Unit = Unit.RevolutionPerMinute,
        Min = 1000,
        Max = 400000,
        FindOut = FindOut.Maker
    )]
    public Stated? MaximumSpeedRevolutionsPerMinute { get; init; }

    /// <summary>Speed at which the over-speed trip cuts the fuel.</summary>
    [Field(
        "speed at which the over-speed trip cuts the fuel",
        Unit = Unit.RevolutionPerMinute,
        Min = 1000,
        Max = 500000,
        FindOut = FindOut.Meter
    )]
    public Stated? TripSpeedRevolutionsPerMinute { get; init; }

    /// <summary>
    /// Whether the sheet is a bounding rotor that stands in for an unknown one: a wheel no larger than the casing,
    /// 440 m/s at the tip, density of the material.
    /// </summary>
    [Field("whether this is a bounding rotor that stands in for an unknown one")]
    public bool? Bounding { get; init; }
}

/// <summary>Turbine or compressor.</summary>
public enum RotorKind
{
    /// <summary>Turbine wheel.</summary>
    Turbine,

    /// <summary>Compressor wheel.</summary>
    Compressor,
}

/// <summary>Materials of rotors.</summary>
public enum RotorMaterial
{
    /// <summary>Nickel alloy, about 8,190 kg/m³.</summary>
    NickelAlloy,

    /// <summary>Steel, about 7,850 kg/m³.</summary>
    Steel,

    /// <summary>Titanium alloy, about 4,430 kg/m³.</summary>
    Titanium,

    /// <summary>Aluminium alloy, about 2,700 kg/m³.</summary>
    Aluminium,
}
