using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

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
