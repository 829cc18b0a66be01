using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;
using NetTopologySuite.Operation.Union;

namespace ShowSafety.Core.Measures;

/// <summary>
/// The one geometry service: floating precision, next-generation overlay, plan coordinates in metres. Arcs are
/// circumscribed, so that a zone is never short of the circle it stands for.
/// </summary>
public static class SiteGeometry
{
    /// <summary>Segments used for a quarter of a circle.</summary>
    public const int SegmentsPerQuarter = 24;

    private static readonly NtsGeometryServices Services = new(
        CoordinateArraySequenceFactory.Instance,
        PrecisionModel.Floating.Value,
        0,
        GeometryOverlay.NG,
        new CoordinateEqualityComparer()
    );

    /// <summary>The factory every geometry of a plan or an assessment is made with.</summary>
    public static GeometryFactory Factory { get; } = Services.CreateGeometryFactory();

    /// <summary>A geometry with nothing in it.</summary>
    public static Geometry Empty => Factory.CreatePolygon();

    /// <summary>The polygon of a ring of at least three points; closed here, whichever way it turns.</summary>
    /// <exception cref="ArgumentException">Fewer than three points.</exception>
    public static Polygon Polygon(IEnumerable<PlanPoint> ring)
    {
        Coordinate[] points = [.. ring.Select(Coordinate)];
        return points.Length >= 3
            ? Factory.CreatePolygon([.. points, points[0].Copy()])
            : throw new ArgumentException($"A polygon needs three points, {points.Length} were given.", nameof(ring));
    }

    /// <summary>The polyline through at least two points.</summary>
    public static LineString Line(IEnumerable<PlanPoint> points) =>
        Factory.CreateLineString([.. points.Select(Coordinate)]);

    /// <summary>The point as a geometry.</summary>
    public static Point Point(PlanPoint point) => Factory.CreatePoint(Coordinate(point));

    /// <summary>The point as a coordinate.</summary>
    public static Coordinate Coordinate(PlanPoint point) => new(point.XMetres, point.YMetres);

    /// <summary>The coordinate as a plan point.</summary>
    public static PlanPoint PlanPoint(Coordinate coordinate) => new(coordinate.X, coordinate.Y);

    /// <summary>A regular polygon drawn round the circle, touching it from outside.</summary>
    public static Polygon CircleAround(PlanPoint centre, double radiusMetres)
    {
        const int corners = 4 * SegmentsPerQuarter;
        double reach = radiusMetres / Math.Cos(Math.PI / corners);
        return Polygon(Enumerable.Range(0, corners).Select(i => centre.Along(360.0 * i / corners, reach)));
    }

    /// <summary>
    /// Everything within <paramref name="distanceMetres"/> of a geometry, and at most 0.3 % of that distance more:
    /// the rounding of corners is circumscribed.
    /// </summary>
    public static Geometry Widened(Geometry geometry, double distanceMetres) =>
        geometry.Buffer(distanceMetres / Math.Cos(Math.PI / (4 * SegmentsPerQuarter)), SegmentsPerQuarter);

    /// <summary>The union of any number of geometries, an empty polygon when there are none.</summary>
    public static Geometry Union(IEnumerable<Geometry> geometries)
    {
        Geometry[] parts = [.. geometries.Where(g => !g.IsEmpty)];
        return parts.Length == 0 ? Empty : UnaryUnionOp.Union(parts);
    }
}
