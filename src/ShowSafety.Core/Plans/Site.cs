using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The place of the demonstration. Coordinates are metres, x right, y up the sheet.</summary>
public sealed record Site
{
    /// <summary>Edge of the ground the organiser gives to the demonstration and its public.</summary>
    [Field(
        "edge of the ground given to the demonstration and its public",
        Required = true,
        Points = PointsShape.Ring,
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000,
        MinCount = 3,
        MaxCount = 400
    )]
    public ValueList<PlanPoint> Outline { get; init; } = [];

    /// <summary>Bearing of true north, degrees clockwise from +y.</summary>
    [Field("bearing of true north, clockwise from up the sheet", Unit = Unit.Degree, Min = 0, Max = 360)]
    public double? NorthDegrees { get; init; }

    /// <summary>Where the origin lies on the Earth.</summary>
    [Field("where the origin of the plan lies on the Earth")]
    public GeoAnchor? Anchor { get; init; }

    /// <summary>Air for which the plan is made.</summary>
    [Field("air for which the plan is made")]
    public Air? Air { get; init; }

    /// <summary>Weather for which the plan holds.</summary>
    [Field("weather for which the plan holds")]
    public WeatherBand? Weather { get; init; }

    /// <summary>Ground where no patch says otherwise.</summary>
    [Field("ground where no patch says otherwise")]
    public GroundKind? Ground { get; init; }

    /// <summary>Patches of other ground.</summary>
    [Field("patches of other ground")]
    public ValueList<GroundPatch> GroundPatches { get; init; } = [];

    /// <summary>The hall or tent the engine runs in, if any.</summary>
    [Field("the hall or tent the engine runs in, if any")]
    public Enclosure? Enclosure { get; init; }

    /// <summary>Walls, buildings and screens that stand on or near the site.</summary>
    [Field("walls, buildings and sound screens on or near the site")]
    public ValueList<Structure> Structures { get; init; } = [];

    /// <summary>Ways out.</summary>
    [Field("ways out")]
    public ValueList<SiteExit> Exits { get; init; } = [];

    /// <summary>Things that burn, blow away or soften.</summary>
    [Field("things that burn, blow away or soften")]
    public ValueList<Burnable> Burnables { get; init; } = [];

    /// <summary>Other exhibitors' stands.</summary>
    [Field("other exhibitors' stands")]
    public ValueList<OtherStand> Stands { get; init; } = [];

    /// <summary>What lies beyond each edge of the outline.</summary>
    [Field("what lies beyond each edge of the outline", MaxCount = 400)]
    public ValueList<Surrounding> Surroundings { get; init; } = [];

    /// <summary>A picture under the drawing.</summary>
    [Field("a picture under the drawing, kept beside the plan file")]
    public SitePicture? Picture { get; init; }
}

/// <summary>
/// What lies beyond one edge of the site's outline. Edge 0 runs from the first point to the second. An edge nobody
/// describes is unknown ground.
/// </summary>
public sealed record Surrounding
{
    /// <summary>Index of the edge.</summary>
    [Field(
        "index of the edge of the outline, 0 from the first point to the second",
        Required = true,
        Min = 0,
        Max = 399
    )]
    public int Edge { get; init; }

    /// <summary>Distance for which the ground beyond the edge is kept empty of people.</summary>
    [Field(
        "distance beyond the edge that is kept empty of people",
        Unit = Unit.Metre,
        Min = 0,
        Max = 5000,
        FindOut = FindOut.Venue
    )]
    public Stated? EmptyToMetres { get; init; }

    /// <summary>Who or what is there.</summary>
    [Field("who or what is there")]
    public string? WhoIsThere { get; init; }
}

/// <summary>A picture under the drawing: a file beside the plan, known by its hash.</summary>
public sealed record SitePicture
{
    /// <summary>File name, without a folder.</summary>
    [Field("file name, without a folder", Required = true, MaxLength = 120)]
    public string File { get; init; } = "";

    /// <summary>SHA-256 of the file in lower-case hexadecimal.</summary>
    [Field("SHA-256 of the file, lower-case hexadecimal", Required = true, MaxLength = 64)]
    public string Sha256 { get; init; } = "";

    /// <summary>Plan metres per picture element.</summary>
    [Field("metres per picture element", Required = true, Unit = Unit.Metre, Min = 0.0001, Max = 100)]
    public double MetresPerPixel { get; init; }

    /// <summary>Plan point under the picture's lower left corner.</summary>
    [Field("plan point under the lower left corner", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint LowerLeft { get; init; }
}
