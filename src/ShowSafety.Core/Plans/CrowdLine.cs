using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The line the public stands behind.</summary>
public sealed record CrowdLine
{
    /// <summary>The line.</summary>
    [Field(
        "the line, from one end to the other",
        Required = true,
        Points = PointsShape.Line,
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000,
        MinCount = 2,
        MaxCount = 200
    )]
    public ValueList<PlanPoint> Line { get; init; } = [];

    /// <summary>Length of one barrier panel.</summary>
    [Field("length of one barrier panel", Unit = Unit.Metre, Min = 0.3, Max = 10, FindOut = FindOut.Tape)]
    public Stated? PanelLengthMetres { get; init; }

    /// <summary>Height of the barrier.</summary>
    [Field("height of the barrier", Unit = Unit.Metre, Min = 0, Max = 5, FindOut = FindOut.Tape)]
    public Stated? HeightMetres { get; init; }

    /// <summary>What fills the panels.</summary>
    [Field("what fills the panels")]
    public BarrierInfill? Infill { get; init; }
}

/// <summary>What fills barrier panels.</summary>
public enum BarrierInfill
{
    /// <summary>A rope or tape: no barrier.</summary>
    Rope,

    /// <summary>Rails or bars one can reach through.</summary>
    Rails,

    /// <summary>Mesh.</summary>
    Mesh,

    /// <summary>Closed sheets.</summary>
    Solid,
}

/// <summary>Viewing places and stewards' posts.</summary>
public sealed record Viewing
{
    /// <summary>Places kept for wheelchair users.</summary>
    [Field("places kept for wheelchair users")]
    public ValueList<MarkedPlace> WheelchairPlaces { get; init; } = [];

    /// <summary>Stewards' posts.</summary>
    [Field("stewards' posts")]
    public ValueList<MarkedPlace> StewardPosts { get; init; } = [];
}

/// <summary>A named place.</summary>
public sealed record MarkedPlace
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Name.</summary>
    [Field("name", MaxLength = 120)]
    public string? Name { get; init; }

    /// <summary>Place.</summary>
    [Field("place", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint Place { get; init; }
}
