using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Shapes of a plan that may be half drawn.</summary>
internal static class Shapes
{
    /// <summary>The polygon of a ring, or null when the points make none.</summary>
    public static Polygon? Ring(ValueList<PlanPoint> points) =>
        points.Count >= 3 && SiteGeometry.Polygon(points) is { IsValid: true, Area: > 0 } polygon ? polygon : null;

    /// <summary>Whether a shape lies in another, its edge included; a millimetre beyond does not count.</summary>
    public static bool Covers(Geometry outer, Geometry inner) => outer.Buffer(0.001).Covers(inner);
}
