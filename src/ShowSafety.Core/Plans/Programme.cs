using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>When which engine runs at which throttle.</summary>
public sealed record Programme
{
    /// <summary>The runs.</summary>
    [Field("the runs", MaxCount = 200)]
    public ValueList<Run> Runs { get; init; } = [];
}

/// <summary>One run of one engine, from light-up to shut-down.</summary>
public sealed record Run
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Id of the engine.</summary>
    [Field("id of the engine", Required = true, MaxLength = 40)]
    public string EngineId { get; init; } = "";

    /// <summary>Day; absent for the first day of the event.</summary>
    [Field("day of the run; absent: the same on every day of the event")]
    public DateOnly? Day { get; init; }

    /// <summary>Start on the event's wall clock.</summary>
    [Field("start on the event's wall clock, HH:mm", Required = true)]
    public TimeOnly StartsAt { get; init; }

    /// <summary>Throttle steps in order.</summary>
    [Field("throttle steps in order", Required = true, MinCount = 1, MaxCount = 60)]
    public ValueList<ThrottleStep> Steps { get; init; } = [];
}

/// <summary>A time at one throttle state.</summary>
public sealed record ThrottleStep
{
    /// <summary>Id of the throttle state.</summary>
    [Field("id of the throttle state", Required = true, MaxLength = 40)]
    public string StateId { get; init; } = "";

    /// <summary>How long.</summary>
    [Field("how long", Required = true, Unit = Unit.Second, Min = 1, Max = 36000)]
    public double Seconds { get; init; }
}
