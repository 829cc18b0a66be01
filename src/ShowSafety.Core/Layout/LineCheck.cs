using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Layout;

/// <summary>Cuts a line where it enters or leaves the public keep-out and says what sets each stretch.</summary>
/// <param name="excluding">The zones.</param>
/// <param name="keepOut">Their union.</param>
/// <param name="areas">Indexes of the areas.</param>
internal sealed class LineCheck(ValueList<Zone> excluding, Geometry keepOut, IndexedAreas areas)
{
    // Crossing points are calculated; a stretch shorter than this is one of them, not a stretch.
    private const double ShortestMetres = 0.02;

    // Depth inside the keep-out is measured at points no farther apart than this.
    private const double SampleMetres = 0.25;

    private readonly IndexedArea _keepOut = areas.Of(keepOut);

    /// <summary>The stretches of a line.</summary>
    public ValueList<LineStretch> Of(ValueList<PlanPoint> line) =>
        [.. line.Zip(line.Skip(1)).SelectMany(s => Segment(s.First, s.Second))];

    private IEnumerable<LineStretch> Segment(PlanPoint from, PlanPoint to)
    {
        LineString segment = SiteGeometry.Line([from, to]);
        (Geometry inside, Geometry outside) = Cut(segment);
        return Parts(inside, from)
            .Select(Inside)
            .Concat(Parts(outside, from).Select(Outside))
            .OrderBy(s => s.From.DistanceMetres(from));
    }

    // Most segments lie on one side, and asking which is far cheaper than cutting.
    private (Geometry Inside, Geometry Outside) Cut(LineString segment) =>
        !_keepOut.Meets(segment) ? (SiteGeometry.Empty, segment)
        : _keepOut.HoldsWithin(segment) ? (segment, SiteGeometry.Empty)
        : (segment.Intersection(keepOut), segment.Difference(keepOut));

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

    private LineStretch Inside(LineString part)
    {
        Point[] samples = [.. Samples(part)];
        double depth = samples.Max(_keepOut.ToEdgeMetres);
        Zone? deepest = excluding.Where(z => areas.Of(z.Area).Meets(part)).MaxBy(z => Depth(areas.Of(z.Area), samples));
        return new(Start(part), End(part), false, depth, deepest?.Row, deepest?.ElementId);
    }

    private static double Depth(IndexedArea area, Point[] samples) =>
        samples.Where(area.HoldsWithin).Select(area.ToEdgeMetres).Append(0).Max();

    private LineStretch Outside(LineString part)
    {
        Zone? nearest = null;
        double metres = double.PositiveInfinity;
        // A zone whose box is no nearer than the nearest so far can't be nearer.
        foreach (Zone zone in excluding.Where(z => areas.Of(z.Area).LeastMetres(part) < metres))
        {
            double distance = areas.Of(zone.Area).DistanceMetres(part);
            if (distance < metres)
            {
                nearest = zone;
                metres = distance;
            }
        }

        return nearest is { } set
            ? new(Start(part), End(part), true, metres, set.Row, set.ElementId)
            : new(Start(part), End(part), true, 0, null, null);
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
