using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

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
