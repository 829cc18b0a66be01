using ShowSafety.Core.Measures;

namespace ShowSafety.Core;

/// <summary>What every room of physics gives: figures, zones, findings. A room adds members of its own.</summary>
public abstract record RoomAssessment
{
    /// <summary>Calculated values worth printing, in a fixed order.</summary>
    public ValueList<Figure> Figures { get; init; } = [];

    /// <summary>Zones in a fixed order.</summary>
    public ValueList<Zone> Zones { get; init; } = [];

    /// <summary>Findings in a fixed order.</summary>
    public ValueList<Finding> Findings { get; init; } = [];
}

/// <summary>A calculated value worth printing.</summary>
/// <param name="Key">Room and matter in lower case, the key of its label in Wording: "debris.one-third-speed".</param>
/// <param name="ElementId">Id of the element it belongs to, or null.</param>
/// <param name="Value">The value.</param>
public sealed record Figure(string Key, string? ElementId, Quantity Value)
{
    /// <summary>Id of a part of the element (throttle state, rotor), or null.</summary>
    public string? PartId { get; init; }
}
