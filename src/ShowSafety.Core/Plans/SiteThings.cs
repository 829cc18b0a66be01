using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>A wall, a building or a sound screen.</summary>
public sealed record Structure
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Name people know it by.</summary>
    [Field("name people know it by", MaxLength = 120)]
    public string? Name { get; init; }

    /// <summary>What it is.</summary>
    [Field("what it is", Required = true)]
    public StructureKind Kind { get; init; }

    /// <summary>Its line on the plan; a building's ring is its outline.</summary>
    [Field(
        "its line on the plan",
        Required = true,
        Points = PointsShape.Line,
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000,
        MinCount = 2,
        MaxCount = 100
    )]
    public ValueList<PlanPoint> Line { get; init; } = [];

    /// <summary>Height above ground.</summary>
    [Field("height above ground", Unit = Unit.Metre, Min = 0.1, Max = 200, FindOut = FindOut.Tape)]
    public Stated? HeightMetres { get; init; }

    /// <summary>Mass per area of its surface.</summary>
    [Field("mass per area", Unit = Unit.KilogramPerSquareMetre, Min = 0.05, Max = 2000, FindOut = FindOut.Maker)]
    public Stated? MassKilogramsPerSquareMetre { get; init; }
}

/// <summary>What a structure is.</summary>
public enum StructureKind
{
    /// <summary>A wall.</summary>
    Wall,

    /// <summary>A building.</summary>
    Building,

    /// <summary>A screen put up against sound.</summary>
    SoundScreen,

    /// <summary>A deflector put up against the exhaust.</summary>
    BlastDeflector,
}

/// <summary>A way out for people.</summary>
public sealed record SiteExit
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Name on the sign.</summary>
    [Field("name on the sign", MaxLength = 120)]
    public string? Name { get; init; }

    /// <summary>Middle of the exit.</summary>
    [Field("middle of the exit", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint Place { get; init; }

    /// <summary>Clear width.</summary>
    [Field("clear width", Unit = Unit.Metre, Min = 0.5, Max = 50, FindOut = FindOut.Tape)]
    public Stated? WidthMetres { get; init; }
}

/// <summary>A thing that burns, blows away or softens.</summary>
public sealed record Burnable
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Name people know it by.</summary>
    [Field("name people know it by", MaxLength = 120)]
    public string? Name { get; init; }

    /// <summary>What it is made of.</summary>
    [Field("what it is made of", Required = true)]
    public BurnableKind Kind { get; init; }

    /// <summary>Outline on the plan.</summary>
    [Field(
        "outline on the plan",
        Required = true,
        Points = PointsShape.Ring,
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000,
        MinCount = 3,
        MaxCount = 100
    )]
    public ValueList<PlanPoint> Outline { get; init; } = [];
}

/// <summary>What a thing that burns, blows or softens is made of.</summary>
public enum BurnableKind
{
    /// <summary>Coated tent fabric.</summary>
    TentFabric,

    /// <summary>Wood.</summary>
    Wood,

    /// <summary>Dry grass, hedge, straw.</summary>
    DryVegetation,

    /// <summary>Paper, leaflets, cardboard.</summary>
    Paper,

    /// <summary>Loose light things the jet can carry.</summary>
    LooseItems,

    /// <summary>A vehicle with fuel.</summary>
    Vehicle,
}

/// <summary>Another exhibitor's stand.</summary>
public sealed record OtherStand
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Name.</summary>
    [Field("name of the stand", MaxLength = 120)]
    public string? Name { get; init; }

    /// <summary>Outline.</summary>
    [Field(
        "outline of the stand",
        Required = true,
        Points = PointsShape.Ring,
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000,
        MinCount = 3,
        MaxCount = 100
    )]
    public ValueList<PlanPoint> Outline { get; init; } = [];
}
