using NetTopologySuite.Algorithm;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Densify;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Layout;

/// <summary>
/// How far a geometry outside a ring reaches beyond each of its edges: the largest distance from the edge of the points
/// it is the nearest edge to. The boundary is sampled, and for a ring that is not convex the inside too, because there
/// the farthest point may lie inside a notch. With samples no farther than s from any point, a point's edge is among
/// those at most 2 s farther than the sample's nearest one, and s is added: sampling never shortens a reach.
/// </summary>
internal static class OutsideReach
{
    private const double BoundaryStepMetres = 0.1;
    private const int MostInside = 20_000;

    /// <summary>Reach in metres beyond each edge of the ring; 0 beyond an edge no sample belongs to.</summary>
    public static double[] Of(ValueList<PlanPoint> ring, Geometry outside)
    {
        var reach = new double[ring.Count];
        Coordinate[] corners = [.. ring.Select(SiteGeometry.Coordinate)];
        foreach (Coordinate point in Samples(outside))
        {
            Add(corners, point, BoundaryStepMetres / 2, reach);
        }

        Polygon site = SiteGeometry.Polygon(ring);
        if (site.ConvexHull().Area > site.Area * (1 + 1e-9))
        {
            AddInside(corners, outside, reach);
        }

        return reach;
    }

    // The points are only looked at one by one, so the shape they make need not be repaired, which takes a buffer.
    private static Coordinate[] Samples(Geometry outside) =>
        new Densifier(outside) { DistanceTolerance = BoundaryStepMetres, Validate = false }
            .GetResultGeometry()
            .Coordinates;

    private static void AddInside(Coordinate[] ring, Geometry outside, double[] reach)
    {
        Envelope box = outside.EnvelopeInternal;
        var inside = new IndexedPointInAreaLocator(outside);
        double step = Math.Max(BoundaryStepMetres, Math.Sqrt(box.Area / MostInside));
        for (double y = box.MinY; y <= box.MaxY; y += step)
        {
            for (double x = box.MinX; x <= box.MaxX; x += step)
            {
                var point = new Coordinate(x, y);
                if (inside.Locate(point) != Location.Exterior)
                {
                    Add(ring, point, step, reach);
                }
            }
        }
    }

    private static void Add(Coordinate[] ring, Coordinate point, double apart, double[] reach)
    {
        Span<double> distances = ring.Length <= 64 ? stackalloc double[ring.Length] : new double[ring.Length];
        double nearest = double.MaxValue;
        for (int i = 0; i < distances.Length; i++)
        {
            distances[i] = DistanceComputer.PointToSegment(point, ring[i], ring[(i + 1) % ring.Length]);
            nearest = Math.Min(nearest, distances[i]);
        }

        for (int i = 0; i < distances.Length; i++)
        {
            if (distances[i] <= nearest + (2 * apart))
            {
                reach[i] = Math.Max(reach[i], distances[i] + apart);
            }
        }
    }
}
