using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;
using NetTopologySuite.Operation.Distance;

namespace ShowSafety.Core.Layout;

/// <summary>
/// An area that is asked many times over, with the indexes that make each question cheap. The answers are those of the
/// area itself. Built when first needed and kept for one assessment, by one thread.
/// </summary>
internal sealed class IndexedArea(Geometry area)
{
    // Nearer than this a line may touch the area or enter it by a rounding error, and only the area itself tells.
    private const double TouchMetres = 1e-6;

    private IPreparedGeometry? _prepared;
    private IndexedFacetDistance? _edge;

    private IPreparedGeometry Prepared => _prepared ??= PreparedGeometryFactory.Prepare(area);

    private IndexedFacetDistance Edge => _edge ??= new(area);

    /// <summary>Whether they have a point in common.</summary>
    public bool Meets(Geometry other) =>
        area.EnvelopeInternal.Intersects(other.EnvelopeInternal) && Prepared.Intersects(other);

    /// <summary>Whether all of the other lies in the area, its edge included.</summary>
    public bool Covers(Geometry other) =>
        area.EnvelopeInternal.Covers(other.EnvelopeInternal) && Prepared.Covers(other);

    /// <summary>Whether all of the other lies in the area and nothing of it on the area's edge.</summary>
    public bool HoldsWithin(Geometry other) =>
        area.EnvelopeInternal.Covers(other.EnvelopeInternal) && Prepared.ContainsProperly(other);

    /// <summary>Distance in metres of two things that are not inside one another, 0 when they touch.</summary>
    public double DistanceMetres(LineString outside)
    {
        double metres = area.IsEmpty ? 0 : Edge.Distance(outside);
        return metres > TouchMetres ? metres : area.Distance(outside);
    }

    /// <summary>Distance in metres from a point to the area's edge, on whichever side of it the point is.</summary>
    public double ToEdgeMetres(Point point) => Edge.Distance(point);

    /// <summary>A distance in metres a thing is at least away, told by their boxes alone.</summary>
    public double LeastMetres(Geometry other) => area.EnvelopeInternal.Distance(other.EnvelopeInternal);
}
