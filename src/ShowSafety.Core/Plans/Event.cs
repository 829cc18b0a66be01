using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The event a demonstration is part of, on the event's own wall clock.</summary>
public sealed record ShowEvent
{
    /// <summary>Name of the event.</summary>
    [Field("name of the event", MaxLength = 120)]
    public string? Name { get; init; }

    /// <summary>Days on which the engine is shown.</summary>
    [Field("days on which the engine is shown", MaxCount = 31)]
    public ValueList<DateOnly> Days { get; init; } = [];

    /// <summary>The organiser's contact on the day.</summary>
    [Field("the organiser's contact on the day")]
    public string? OrganiserContact { get; init; }

    /// <summary>Venue, with postal address.</summary>
    [Field("venue, with postal address")]
    public string? Venue { get; init; }
}

/// <summary>Who prepared the plan, and when.</summary>
public sealed record Prepared
{
    /// <summary>Name of the person.</summary>
    [Field("name of the person who prepared the plan", MaxLength = 120)]
    public string? By { get; init; }

    /// <summary>Date.</summary>
    [Field("date the plan was prepared")]
    public DateOnly? On { get; init; }
}

/// <summary>How values are shown; never how they are calculated.</summary>
public sealed record Display
{
    /// <summary>Units on outputs.</summary>
    [Field("units on outputs")]
    public DisplayUnits Units { get; init; }

    /// <summary>Language of outputs.</summary>
    [Field("language of outputs")]
    public DisplayLanguage Language { get; init; }
}

/// <summary>Units on outputs.</summary>
public enum DisplayUnits
{
    /// <summary>Metres, degrees Celsius.</summary>
    Metric,
}

/// <summary>Language of outputs.</summary>
public enum DisplayLanguage
{
    /// <summary>English.</summary>
    English,
}
