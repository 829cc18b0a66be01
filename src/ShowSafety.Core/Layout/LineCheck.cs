using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Layout;

/// <summary>Cuts a line where it enters or leaves the public keep-out and says what sets each stretch.</summary>
internal static class LineCheck
{
    // Crossing points are calculated; a stretch shorter than this is one of them, not a stretch.
    private const double ShortestMetres = 0.02;

    // Depth inside the keep-out is measured at points no farther apart than this.
    private const double SampleMetres = 0.25;

    /// <summary>The stretches of a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="excluding">The zones.</param>
    /// <param name="keepOut">Their union.</param>
    public static ValueList<LineStretch> Of(ValueList<PlanPoint> line, ValueList<Zone> excluding, Geometry keepOut) =>
        [.. line.Zip(line.Skip(1)).SelectMany(s => Segment(s.First, s.Second, keepOut, excluding))];

    private static IEnumerable<LineStretch> Segment(
        PlanPoint from,
        PlanPoint to,
        Geometry keepOut,
        ValueList<Zone> excluding
    )
    {
        LineString segment = SiteGeometry.Line([from, to]);
        IEnumerable<LineStretch> inside = Parts(segment.Intersection(keepOut), from)
            .Select(p => Inside(p, keepOut, excluding));
        IEnumerable<LineStretch> outside = Parts(segment.Difference(keepOut), from).Select(p => Outside(p, excluding));
        return inside.Concat(outside).OrderBy(s => s.From.DistanceMetres(from));
    }

    private static IEnumerable<LineString> Parts(Geometry cut, PlanPoint from)
    {
        for (int i = 0; i < cut.NumGeometries; i++)
        {
            if (cut.GetGeometryN(i) is LineString part && part.Length > ShortestMetres)
            {
                bool turned = End(part).DistanceMetres(from) < Start(part).DistanceMetres(from);
                yield return turned ? (LineString)part.Reverse() : part;
            }
        }
    }

    private static LineStretch Inside(LineString part, Geometry keepOut, ValueList<Zone> excluding)
    {
        Point[] samples = [.. Samples(part)];
        Geometry edge = keepOut.Boundary;
        double depth = samples.Max(p => edge.Distance(p));
        Zone? deepest = excluding.Where(z => z.Area.Intersects(part)).MaxBy(z => Depth(z.Area, samples));
        return new(Start(part), End(part), false, depth, deepest?.Row, deepest?.ElementId);
    }

    private static double Depth(Geometry area, Point[] samples)
    {
        Geometry edge = area.Boundary;
        return samples.Where(p => area.Contains(p)).Select(p => edge.Distance(p)).Append(0).Max();
    }

    private static LineStretch Outside(LineString part, ValueList<Zone> excluding)
    {
        Zone? nearest = excluding.MinBy(z => z.Area.Distance(part));
        return new(Start(part), End(part), true, nearest?.Area.Distance(part) ?? 0, nearest?.Row, nearest?.ElementId);
    }

    private static IEnumerable<Point> Samples(LineString part)
    {
        int steps = (int)Math.Clamp(Math.Ceiling(part.Length / SampleMetres), 2, 400);
        PlanPoint start = Start(part);
        PlanPoint end = End(part);
        for (int i = 0; i <= steps; i++)
        {
            double share = (double)i / steps;
            yield return SiteGeometry.Point(
                new(
                    start.XMetres + (share * (end.XMetres - start.XMetres)),
                    start.YMetres + (share * (end.YMetres - start.YMetres))
                )
            );
        }
    }

    private static PlanPoint Start(LineString part) => SiteGeometry.PlanPoint(part.StartPoint.Coordinate);

    private static PlanPoint End(LineString part) => SiteGeometry.PlanPoint(part.EndPoint.Coordinate);
}
