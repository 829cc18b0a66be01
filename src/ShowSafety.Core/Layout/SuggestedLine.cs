using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Linemerge;
using NetTopologySuite.Simplify;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Layout;

/// <summary>
/// Suggests a crowd line: the edge of the free ground the visitors are on, kept a margin away from every excluding
/// zone, made of straight stretches. It is simplified by less than the margin, so it never enters a zone.
/// </summary>
internal static class SuggestedLine
{
    // Choice: half a metre for setting out by tape and for people leaning on a barrier.
    private const double MarginMetres = 0.5;

    // Together less than the margin: straightening and rounding to a tape's decimetre.
    private const double StraightenedMetres = 0.35;
    private const int RoundedDecimals = 1;

    // Free ground smaller than this is a corner nobody watches from.
    private const double SmallestSquareMetres = 4;

    public static ValueList<PlanPoint> Of(Plan plan, Geometry publicKeepOut)
    {
        if (publicKeepOut.IsEmpty)
        {
            return [];
        }

        Polygon site = SiteGeometry.Polygon(plan.Site.Outline);
        Geometry free = site.Difference(SiteGeometry.Widened(publicKeepOut, MarginMetres));
        return Ground(plan, free) is { } ground ? EdgeTowardsKeepOut(ground, site) : [];
    }

    /// <summary>
    /// The line and its stretches if it lies outside every zone, else none. It is made outside them; this asks the
    /// check that judges the planned line, because a line nobody checked must not be printed as a suggestion.
    /// </summary>
    public static (ValueList<PlanPoint> Line, ValueList<LineStretch> Stretches) OnlyIfOutside(
        ValueList<PlanPoint> line,
        LineCheck check
    )
    {
        ValueList<LineStretch> stretches = check.Of(line);
        return stretches.All(s => s.MeetsRules) ? (line, stretches) : ([], []);
    }

    private static Geometry? Ground(Plan plan, Geometry free)
    {
        Geometry[] pieces =
        [
            .. Enumerable
                .Range(0, free.NumGeometries)
                .Select(free.GetGeometryN)
                .Where(g => g.Area > SmallestSquareMetres),
        ];
        Geometry audience = AudienceGround(plan);
        return pieces.Length == 0
            ? null
            : pieces.OrderBy(p => p.Distance(audience)).ThenByDescending(p => p.Intersection(audience).Area).First();
    }

    /// <summary>Where visitors are: their areas, else the line as drawn, else the ground ahead of the first engine.</summary>
    private static Geometry AudienceGround(Plan plan)
    {
        Geometry visitors = SiteGeometry.Union(
            plan.People.Where(p => p.Role == PersonRole.Visitor).Select(Occupants.AreaOf).OfType<Geometry>()
        );
        if (!visitors.IsEmpty)
        {
            return visitors;
        }

        return plan switch
        {
            { CrowdLine.Line: { Count: >= 2 } line } => SiteGeometry.Line(line),
            { Engines: [var engine, ..] } => SiteGeometry.Point(
                engine.Place.Along(engine.ExhaustHeadingDegrees + 180, 15)
            ),
            _ => SiteGeometry.Polygon(plan.Site.Outline).Centroid,
        };
    }

    private static ValueList<PlanPoint> EdgeTowardsKeepOut(Geometry ground, Polygon site)
    {
        // What of the ground's edge is not the site's own edge faces the keep-out.
        Geometry edge = ground.Boundary.Difference(site.Boundary.Buffer(0.05));
        var merger = new LineMerger();
        merger.Add(edge);
        LineString? longest = merger.GetMergedLineStrings().OfType<LineString>().MaxBy(l => l.Length);
        return longest is null
            ? []
            : WithoutStandstill(
                DouglasPeuckerSimplifier
                    .Simplify(longest, StraightenedMetres)
                    .Coordinates.Select(c => new PlanPoint(
                        Math.Round(c.X, RoundedDecimals),
                        Math.Round(c.Y, RoundedDecimals)
                    ))
            );
    }

    // Only neighbours that became the same point are one. A line that runs into a gap between two zones and out again
    // may pass the same decimetre twice, and a closed line ends where it began: dropping such a corner would cut
    // through a zone.
    private static ValueList<PlanPoint> WithoutStandstill(IEnumerable<PlanPoint> points)
    {
        var line = new List<PlanPoint>();
        foreach (PlanPoint point in points)
        {
            if (line.Count == 0 || line[^1] != point)
            {
                line.Add(point);
            }
        }

        return [.. line];
    }
}
