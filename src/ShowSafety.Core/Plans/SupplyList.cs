using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Fuel, gas, batteries and extinguishers.</summary>
public sealed record SupplyList
{
    /// <summary>Fuel containers.</summary>
    [Field("fuel containers")]
    public ValueList<FuelStore> Fuel { get; init; } = [];

    /// <summary>Gas cylinders.</summary>
    [Field("gas cylinders")]
    public ValueList<GasCylinder> Gas { get; init; } = [];

    /// <summary>Batteries.</summary>
    [Field("batteries")]
    public ValueList<MarkedPlace> Batteries { get; init; } = [];

    /// <summary>Fire extinguishers.</summary>
    [Field("fire extinguishers")]
    public ValueList<Extinguisher> Extinguishers { get; init; } = [];

    /// <summary>Largest amount of fuel that can spill at the engine.</summary>
    [Field(
        "largest amount of fuel that can spill at the engine",
        Unit = Unit.Litre,
        Min = 0,
        Max = 1000,
        FindOut = FindOut.Tape
    )]
    public Stated? SpillLitres { get; init; }

    /// <summary>Area of the tray under engine and tank that holds the whole spill.</summary>
    [Field(
        "area of the tray under engine and tank that holds the whole spill; absent: the fuel spreads",
        Unit = Unit.SquareMetre,
        Min = 0.01,
        Max = 100,
        FindOut = FindOut.Tape
    )]
    public Stated? SpillTraySquareMetres { get; init; }
}

/// <summary>A container of fuel.</summary>
public sealed record FuelStore
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Fuel.</summary>
    [Field("fuel", Required = true)]
    public FuelKind Fuel { get; init; }

    /// <summary>Place.</summary>
    [Field("place", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint Place { get; init; }

    /// <summary>Amount.</summary>
    [Field("amount", Unit = Unit.Litre, Min = 0, Max = 5000, FindOut = FindOut.Tape)]
    public Stated? Litres { get; init; }
}

/// <summary>A gas cylinder.</summary>
public sealed record GasCylinder
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Gas.</summary>
    [Field("gas", Required = true)]
    public GasKind Gas { get; init; }

    /// <summary>Place.</summary>
    [Field("place", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint Place { get; init; }

    /// <summary>Content.</summary>
    [Field("content", Unit = Unit.Kilogram, Min = 0, Max = 1000, FindOut = FindOut.Scale)]
    public Stated? Kilograms { get; init; }
}

/// <summary>Gases.</summary>
public enum GasKind
{
    /// <summary>Propane.</summary>
    Propane,

    /// <summary>Butane or a propane-butane mixture.</summary>
    Butane,

    /// <summary>Compressed air.</summary>
    CompressedAir,

    /// <summary>Carbon dioxide.</summary>
    CarbonDioxide,
}

/// <summary>A fire extinguisher.</summary>
public sealed record Extinguisher
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>What it holds.</summary>
    [Field("what it holds", Required = true)]
    public ExtinguisherKind Kind { get; init; }

    /// <summary>Place.</summary>
    [Field("place", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint Place { get; init; }

    /// <summary>Content.</summary>
    [Field("content", Unit = Unit.Kilogram, Min = 0.1, Max = 100, FindOut = FindOut.Maker)]
    public Stated? Kilograms { get; init; }

    /// <summary>Rating on the label, such as 34B or 13A 113B.</summary>
    [Field("rating on the label, such as 34B", MaxLength = 20, FindOut = FindOut.Maker)]
    public string? Rating { get; init; }
}

/// <summary>What an extinguisher holds.</summary>
public enum ExtinguisherKind
{
    /// <summary>Carbon dioxide.</summary>
    CarbonDioxide,

    /// <summary>Foam.</summary>
    Foam,

    /// <summary>Water.</summary>
    Water,

    /// <summary>Powder.</summary>
    Powder,
}
