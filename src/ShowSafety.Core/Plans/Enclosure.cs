using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The hall or tent the engine runs in.</summary>
public sealed record Enclosure
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Hall or tent.</summary>
    [Field("hall or tent", Required = true)]
    public EnclosureKind Kind { get; init; }

    /// <summary>Footprint; side 0 runs from the first point to the second.</summary>
    [Field(
        "footprint; side 0 runs from the first point to the second",
        Required = true,
        Points = PointsShape.Ring,
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000,
        MinCount = 3,
        MaxCount = 40
    )]
    public ValueList<PlanPoint> Footprint { get; init; } = [];

    /// <summary>Height of the walls.</summary>
    [Field("height of the walls at the eaves", Unit = Unit.Metre, Min = 1.5, Max = 60, FindOut = FindOut.Tape)]
    public Stated? EavesHeightMetres { get; init; }

    /// <summary>Height of the ridge; absent for a flat roof.</summary>
    [Field("height of the ridge; absent for a flat roof", Unit = Unit.Metre, Min = 1.5, Max = 80)]
    public Stated? RidgeHeightMetres { get; init; }

    /// <summary>Material of the floor.</summary>
    [Field("material of the floor, an id of the materials table", MaxLength = 40, FindOut = FindOut.Venue)]
    public string? FloorMaterial { get; init; }

    /// <summary>Material of the roof or ceiling.</summary>
    [Field("material of the roof or ceiling, an id of the materials table", MaxLength = 40, FindOut = FindOut.Venue)]
    public string? RoofMaterial { get; init; }

    /// <summary>Material of the walls where no side says otherwise.</summary>
    [Field("material of the walls, an id of the materials table", MaxLength = 40, FindOut = FindOut.Venue)]
    public string? WallMaterial { get; init; }

    /// <summary>Sides that differ from the rest: open, partly open or of another material.</summary>
    [Field("sides that differ from the rest: open, partly open, of another material", MaxCount = 40)]
    public ValueList<EnclosureSide> Sides { get; init; } = [];

    /// <summary>Mass per area of a tent's fabric.</summary>
    [Field(
        "mass per area of a tent's fabric",
        Unit = Unit.KilogramPerSquareMetre,
        Min = 0.05,
        Max = 5,
        FindOut = FindOut.Maker
    )]
    public Stated? FabricKilogramsPerSquareMetre { get; init; }

    /// <summary>Volume of furniture and vehicles inside.</summary>
    [Field(
        "volume of furniture and other bodies inside",
        Unit = Unit.CubicMetre,
        Min = 0,
        Max = 100000,
        Cautious = 0,
        Hopeful = 0,
        FindOut = FindOut.Tape
    )]
    public Stated? FurnitureCubicMetres { get; init; }

    /// <summary>Fewest people inside while an engine runs: they absorb sound.</summary>
    [Field(
        "fewest people inside while an engine runs",
        Unit = Unit.Person,
        Min = 0,
        Max = 20000,
        Cautious = 0,
        Hopeful = 20,
        FindOut = FindOut.Decide
    )]
    public Stated? FewestPeople { get; init; }

    /// <summary>Outside air supplied or let in, counted on.</summary>
    [Field(
        "outside air supplied or let in that can be counted on",
        Unit = Unit.CubicMetrePerSecond,
        Min = 0,
        Max = 1000,
        FindOut = FindOut.Venue
    )]
    public Stated? FreshAirCubicMetresPerSecond { get; init; }

    /// <summary>Heat carried away through the shell.</summary>
    [Field(
        "heat carried away through the shell",
        Unit = Unit.WattPerKelvin,
        Min = 0,
        Max = 100000,
        Cautious = 0,
        Hopeful = 500,
        FindOut = FindOut.Venue
    )]
    public Stated? HeatLossWattsPerKelvin { get; init; }

    /// <summary>Whether the wind can be relied on to blow through; never taken as ventilation here.</summary>
    [Field("sprinklers or heat detectors in the roof")]
    public bool? HeatDetectors { get; init; }
}

/// <summary>Hall or tent.</summary>
public enum EnclosureKind
{
    /// <summary>A building.</summary>
    Hall,

    /// <summary>A tent, marquee or canopy of fabric.</summary>
    Tent,
}

/// <summary>A side of an enclosure that differs from the rest.</summary>
public sealed record EnclosureSide
{
    /// <summary>Index of the side.</summary>
    [Field(
        "index of the side of the footprint, 0 from the first point to the second",
        Required = true,
        Min = 0,
        Max = 39
    )]
    public int Side { get; init; }

    /// <summary>Share of the side that is open to the outside while an engine runs, 0 to 1.</summary>
    [Field(
        "share of the side that is open while an engine runs",
        Min = 0,
        Max = 1,
        Cautious = 0,
        Hopeful = 0,
        FindOut = FindOut.Decide
    )]
    public Stated? OpenShare { get; init; }

    /// <summary>Material of the part that is not open.</summary>
    [Field("material of the part that is not open, an id of the materials table", MaxLength = 40)]
    public string? Material { get; init; }

    /// <summary>Absorption coefficients of the part that is not open, where no material describes it.</summary>
    [Field("absorption coefficients of the part that is not open, 63 Hz to 8 kHz", Min = 0, Max = 1)]
    public BandValues? Absorption { get; init; }
}
