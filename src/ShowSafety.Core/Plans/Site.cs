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

/// <summary>Where the origin of the plan lies on the Earth (WGS 84).</summary>
public sealed record GeoAnchor
{
    /// <summary>Latitude in degrees, north positive.</summary>
    [Field("latitude, north positive", Required = true, Unit = Unit.Degree, Min = -90, Max = 90)]
    public double LatitudeDegrees { get; init; }

    /// <summary>Longitude in degrees, east positive.</summary>
    [Field("longitude, east positive", Required = true, Unit = Unit.Degree, Min = -180, Max = 180)]
    public double LongitudeDegrees { get; init; }
}

/// <summary>Air for which the plan is made.</summary>
public sealed record Air
{
    /// <summary>Air temperature.</summary>
    [Field(
        "air temperature",
        Unit = Unit.Celsius,
        Min = -20,
        Max = 50,
        Cautious = 10,
        Hopeful = 20,
        FindOut = FindOut.Meter
    )]
    public Stated? TemperatureCelsius { get; init; }

    /// <summary>Relative humidity.</summary>
    [Field(
        "relative humidity",
        Unit = Unit.Percent,
        Min = 10,
        Max = 100,
        Cautious = 70,
        Hopeful = 50,
        FindOut = FindOut.Meter
    )]
    public Stated? HumidityPercent { get; init; }

    /// <summary>Air pressure.</summary>
    [Field(
        "air pressure at the place, not reduced to sea level",
        Unit = Unit.Kilopascal,
        Min = 60,
        Max = 110,
        Cautious = 101.325,
        Hopeful = 101.325,
        FindOut = FindOut.Meter
    )]
    public Stated? PressureKilopascals { get; init; }
}

/// <summary>Weather for which the plan holds; outside it the plan must be assessed again.</summary>
public sealed record WeatherBand
{
    /// <summary>Highest wind speed, ten-minute mean at head height.</summary>
    [Field(
        "highest wind speed for which the plan holds, mean at head height",
        Unit = Unit.MetrePerSecond,
        Min = 0,
        Max = 25,
        Cautious = 8,
        Hopeful = 5,
        FindOut = FindOut.Decide
    )]
    public Stated? HighestWindMetresPerSecond { get; init; }

    /// <summary>Lowest air temperature.</summary>
    [Field(
        "lowest air temperature for which the plan holds",
        Unit = Unit.Celsius,
        Min = -20,
        Max = 50,
        FindOut = FindOut.Decide
    )]
    public Stated? LowestTemperatureCelsius { get; init; }

    /// <summary>Highest air temperature.</summary>
    [Field(
        "highest air temperature for which the plan holds",
        Unit = Unit.Celsius,
        Min = -20,
        Max = 50,
        Cautious = 35,
        Hopeful = 25,
        FindOut = FindOut.Decide
    )]
    public Stated? HighestTemperatureCelsius { get; init; }
}

/// <summary>Kinds of ground, as sound and people meet it.</summary>
public enum GroundKind
{
    /// <summary>Paving, concrete, asphalt, water, tamped ground.</summary>
    Hard,

    /// <summary>Grass, field, loose ground.</summary>
    Grass,

    /// <summary>Loose gravel.</summary>
    Gravel,

    /// <summary>Boards or sheets laid over soft ground.</summary>
    Boards,
}

/// <summary>A patch of ground of another kind.</summary>
public sealed record GroundPatch
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Outline.</summary>
    [Field(
        "outline of the patch",
        Required = true,
        Points = PointsShape.Ring,
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000,
        MinCount = 3,
        MaxCount = 400
    )]
    public ValueList<PlanPoint> Outline { get; init; } = [];

    /// <summary>Kind of ground.</summary>
    [Field("kind of ground", Required = true)]
    public GroundKind Kind { get; init; }

    /// <summary>Ground factor G of ISO 9613-2 where the kind does not describe it.</summary>
    [Field("ground factor G of ISO 9613-2:1996 where the kind does not describe it", Min = 0, Max = 1)]
    public Stated? GroundFactor { get; init; }
}

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
