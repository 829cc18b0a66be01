using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Layout;

/// <summary>Where people may be: areas made from the zones, the planned crowd line checked, a line suggested.</summary>
public sealed record LayoutAssessment : RoomAssessment
{
    /// <summary>Union of every zone that excludes visitors or, unless none come, children; not clipped to the site.</summary>
    public required Geometry PublicKeepOut { get; init; }

    /// <summary>Union of every zone that excludes crew, not clipped to the site.</summary>
    public required Geometry CrewKeepOut { get; init; }

    /// <summary>Where hearing protection is required, not clipped to the site.</summary>
    public required Geometry HearingArea { get; init; }

    /// <summary>The planned crowd line cut where its state changes; empty when none is drawn.</summary>
    public ValueList<LineStretch> PlannedLine { get; init; } = [];

    /// <summary>A line outside every excluding zone, from one end to the other; empty when none exists.</summary>
    public ValueList<PlanPoint> SuggestedLine { get; init; } = [];

    /// <summary>What sets each segment of the suggested line, in order.</summary>
    public ValueList<LineStretch> SuggestedStretches { get; init; } = [];

    /// <summary>Parts of excluding zones that lie beyond the site's outline, edge by edge.</summary>
    public ValueList<BeyondEdge> Beyond { get; init; } = [];

    /// <summary>The row that sets most of the line's length, or null without a line.</summary>
    public ZoneRow? LineSetBy { get; init; }
}

/// <summary>A stretch of a crowd line.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="MeetsRules">Whether it lies outside every zone that excludes visitors.</param>
/// <param name="Metres">
/// Distance in metres: how far the stretch must move to leave the zones (when it does not meet the rules), or the
/// least distance to the zone that sets it.
/// </param>
/// <param name="Row">Row of the zone that sets it, or null when nothing is near.</param>
/// <param name="ElementId">Element of that zone, or null.</param>
public sealed record LineStretch(
    PlanPoint From,
    PlanPoint To,
    bool MeetsRules,
    double Metres,
    ZoneRow? Row,
    string? ElementId
);

/// <summary>How far the zones of a row reach beyond one edge of the outline.</summary>
/// <param name="Edge">Index of the edge.</param>
/// <param name="Row">Row.</param>
/// <param name="ElementId">Element the zone comes from.</param>
/// <param name="ReachMetres">Farthest reach beyond the edge in metres.</param>
/// <param name="EmptyToMetres">Distance kept empty, as the plan states, or null.</param>
/// <param name="WhoIsThere">Who is there, as the plan states, or null.</param>
public sealed record BeyondEdge(
    int Edge,
    ZoneRow Row,
    string ElementId,
    double ReachMetres,
    double? EmptyToMetres,
    string? WhoIsThere
);
