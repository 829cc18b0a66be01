using NetTopologySuite.Geometries;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Documents;

/// <summary>Geometries as rings to draw: shells and holes alike, since areas fill by the even-odd rule.</summary>
internal static class Rings
{
    public static ValueList<ValueList<PlanPoint>> Of(Geometry geometry) =>
        Polygons(geometry).SelectMany(p => p.InteriorRings.Prepend(p.ExteriorRing)).Select(Open).ToValueList();

    public static ValueList<PlanPoint> Corners(MetreBox box) =>
        [
            new(box.LeftMetres, box.BottomMetres),
            new(box.RightMetres, box.BottomMetres),
            new(box.RightMetres, box.TopMetres),
            new(box.LeftMetres, box.TopMetres),
        ];

    public static Polygon Polygon(MetreBox box) => SiteGeometry.Polygon(Corners(box));

    /// <summary>A rectangle about its middle, its length along a heading.</summary>
    public static ValueList<PlanPoint> Turned(PlanPoint middle, double heading, double length, double width)
    {
        PlanPoint ahead = middle.Along(heading, length / 2);
        PlanPoint behind = middle.Along(heading + 180, length / 2);
        return
        [
            ahead.Along(heading - 90, width / 2),
            ahead.Along(heading + 90, width / 2),
            behind.Along(heading + 90, width / 2),
            behind.Along(heading - 90, width / 2),
        ];
    }

    private static IEnumerable<Polygon> Polygons(Geometry geometry) =>
        Enumerable
            .Range(0, geometry.NumGeometries)
            .Select(geometry.GetGeometryN)
            .OfType<Polygon>()
            .Where(p => !p.IsEmpty);

    private static ValueList<PlanPoint> Open(LineString ring) =>
        ring.Coordinates.SkipLast(1).Select(SiteGeometry.PlanPoint).ToValueList();
}
