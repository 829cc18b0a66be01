using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>A group of people who are at the same place for the same time.</summary>
public sealed record PersonGroup
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Name people know the group by.</summary>
    [Field("name of the group", MaxLength = 120)]
    public string? Name { get; init; }

    /// <summary>What they do there.</summary>
    [Field("what they do there", Required = true)]
    public PersonRole Role { get; init; }

    /// <summary>Legal class: it decides which rule covers them.</summary>
    [Field("legal class, which decides the rules that cover them", FindOut = FindOut.Decide)]
    public LegalClass? LegalClass { get; init; }

    /// <summary>Number of adults.</summary>
    [Field("number of adults", Unit = Unit.Person, Min = 0, Max = 100000)]
    public int? Adults { get; init; }

    /// <summary>Number of children under 16.</summary>
    [Field("number of children under 16", Unit = Unit.Person, Min = 0, Max = 100000)]
    public int? Children { get; init; }

    /// <summary>The area they keep to; a single place is a small ring.</summary>
    [Field(
        "the area they keep to",
        Points = PointsShape.Ring,
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000,
        MinCount = 3,
        MaxCount = 100
    )]
    public ValueList<PlanPoint> Area { get; init; } = [];

    /// <summary>The place of one person or a small group.</summary>
    [Field(
        "the place of one person or a small group, where no area is given",
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000
    )]
    public PlanPoint? Place { get; init; }

    /// <summary>Height of their ears above the ground.</summary>
    [Field("height of their ears above the ground", Unit = Unit.Metre, Min = 0.3, Max = 10, FindOut = FindOut.Tape)]
    public Stated? EarHeightMetres { get; init; }

    /// <summary>When they are there.</summary>
    [Field("when they are there; absent: for the whole programme", MaxCount = 60)]
    public ValueList<Presence> Presence { get; init; } = [];

    /// <summary>Id of the hearing protector they wear while an engine runs.</summary>
    [Field("id of the hearing protector worn while an engine runs", MaxLength = 40)]
    public string? ProtectorId { get; init; }

    /// <summary>Noise exposure level of the rest of their day.</summary>
    [Field(
        "daily noise exposure level from everything else that day",
        Unit = Unit.DecibelA,
        Min = 0,
        Max = 130,
        Cautious = 70,
        Hopeful = 60,
        FindOut = FindOut.SoundMeter
    )]
    public Stated? OtherExposureDbA { get; init; }
}

/// <summary>What people do at the demonstration.</summary>
public enum PersonRole
{
    /// <summary>Runs or guards the engine.</summary>
    Crew,

    /// <summary>Mans another stand.</summary>
    Exhibitor,

    /// <summary>Watches.</summary>
    Visitor,

    /// <summary>Lives or works beyond the site.</summary>
    Neighbour,
}

/// <summary>Legal class of a person.</summary>
public enum LegalClass
{
    /// <summary>Employed by somebody for this work.</summary>
    Worker,

    /// <summary>Self-employed.</summary>
    SelfEmployed,

    /// <summary>Unpaid volunteer.</summary>
    Volunteer,

    /// <summary>Member of the public.</summary>
    Visitor,
}

/// <summary>A stretch of time on the event's wall clock.</summary>
public sealed record Presence
{
    /// <summary>From.</summary>
    [Field("from, HH:mm", Required = true)]
    public TimeOnly From { get; init; }

    /// <summary>To.</summary>
    [Field("to, HH:mm, later than from", Required = true)]
    public TimeOnly To { get; init; }
}

/// <summary>A model of hearing protector at hand.</summary>
public sealed record HearingProtector
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Name or description.</summary>
    [Field("name or description", MaxLength = 120)]
    public string? Name { get; init; }

    /// <summary>Kind.</summary>
    [Field("kind", Required = true)]
    public ProtectorKind Kind { get; init; }

    /// <summary>Single number rating.</summary>
    [Field("single number rating SNR", Unit = Unit.Decibel, Min = 0, Max = 50, FindOut = FindOut.Maker)]
    public Stated? SnrDb { get; init; }

    /// <summary>High-frequency value.</summary>
    [Field("high-frequency value H", Unit = Unit.Decibel, Min = 0, Max = 50, FindOut = FindOut.Maker)]
    public Stated? HighDb { get; init; }

    /// <summary>Medium-frequency value.</summary>
    [Field("medium-frequency value M", Unit = Unit.Decibel, Min = 0, Max = 50, FindOut = FindOut.Maker)]
    public Stated? MediumDb { get; init; }

    /// <summary>Low-frequency value.</summary>
    [Field("low-frequency value L", Unit = Unit.Decibel, Min = 0, Max = 50, FindOut = FindOut.Maker)]
    public Stated? LowDb { get; init; }

    /// <summary>How many pairs are there.</summary>
    [Field("how many pairs there are", Min = 0, Max = 100000)]
    public int? Count { get; init; }
}

/// <summary>Kinds of hearing protectors.</summary>
public enum ProtectorKind
{
    /// <summary>Ear-muffs.</summary>
    Muff,

    /// <summary>Ear-plugs.</summary>
    Plug,
}
