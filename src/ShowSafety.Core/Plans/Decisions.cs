using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Controls chosen and residual hazards accepted, each by a named person.</summary>
public sealed record Decisions
{
    /// <summary>Findings somebody has accepted or closed.</summary>
    [Field("findings somebody has accepted or closed", MaxCount = 200)]
    public ValueList<Acceptance> Acceptances { get; init; } = [];
}

/// <summary>A finding accepted or closed by a named person. It never removes a stop.</summary>
public sealed record Acceptance
{
    /// <summary>Code of the finding.</summary>
    [Field("code of the finding", Required = true, MaxLength = 80)]
    public string Finding { get; init; } = "";

    /// <summary>Id of the element the finding is about; absent when it is about the whole plan.</summary>
    [Field("id of the element the finding is about", MaxLength = 40)]
    public string? ElementId { get; init; }

    /// <summary>Who accepts.</summary>
    [Field("name of the person who accepts or has closed it", Required = true, MaxLength = 120)]
    public string By { get; init; } = "";

    /// <summary>When.</summary>
    [Field("date")]
    public DateOnly? On { get; init; }

    /// <summary>What was done or why it is accepted.</summary>
    [Field("what was done, or why it is accepted", MaxLength = 1000)]
    public string? Note { get; init; }
}

/// <summary>A reading taken on the day, to check that the plan holds.</summary>
public sealed record DayReading
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Day.</summary>
    [Field("day", Required = true)]
    public DateOnly Day { get; init; }

    /// <summary>Time on the event's wall clock.</summary>
    [Field("time, HH:mm", Required = true)]
    public TimeOnly At { get; init; }

    /// <summary>Place.</summary>
    [Field("place", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint Place { get; init; }

    /// <summary>A-weighted equivalent level.</summary>
    [Field("A-weighted equivalent level", Unit = Unit.DecibelA, Min = 20, Max = 180)]
    public double? LevelDbA { get; init; }

    /// <summary>Who read it.</summary>
    [Field("who read it", MaxLength = 120)]
    public string? By { get; init; }
}
