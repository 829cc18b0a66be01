using NetTopologySuite.Densify;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Layout;

/// <summary>Reports the parts of excluding zones that lie beyond the site's outline, and who may be there.</summary>
internal static class BeyondSite
{
    private const double SliverSquareMetres = 0.01;

    // The reach beyond an edge is measured at points no farther apart than this; it is added to the reach, so that
    // sampling never shortens it.
    private const double SampleMetres = 2;

    // A point nearest to a corner lies beyond both edges that meet there.
    private const double SameDistanceMetres = 0.01;

    public static ValueList<BeyondEdge> Of(Plan plan, ValueList<Zone> zones)
    {
        Polygon site = SiteGeometry.Polygon(plan.Site.Outline);
        return
        [
            .. zones
                .Where(z => z.Effect == ZoneEffect.Excludes && !z.Area.IsEmpty)
                .SelectMany(z => Edges(plan.Site, site, z))
                .GroupBy(b => (b.Edge, b.Row, b.ElementId))
                .Select(g => g.MaxBy(b => b.ReachMetres)!)
                .OrderBy(b => b.Edge)
                .ThenBy(b => b.Row),
        ];
    }

    public static IEnumerable<Finding> Check(ValueList<BeyondEdge> beyond) =>
        beyond.Where(b => b.EmptyToMetres is null || b.EmptyToMetres < b.ReachMetres).Select(Unsettled);

    private static Finding Unsettled(BeyondEdge beyond)
    {
        bool known = beyond.WhoIsThere is not null || beyond.EmptyToMetres is not null;
        return new(
            known ? "layout.zone-beyond-site" : "layout.zone-over-unknown-ground",
            KeepOut.SeverityOf(beyond.Row)
        )
        {
            ElementId = beyond.ElementId,
            Row = beyond.Row,
            CannotTell = !known,
            Field = "Surrounding.EmptyToMetres",
            Arguments =
            [
                FindingArgument.Of("edge", beyond.Edge),
                FindingArgument.Of("reach", Quantity.CautiousHigh(beyond.ReachMetres, beyond.ReachMetres, Unit.Metre)),
                FindingArgument.Of(
                    "empty",
                    Quantity.CautiousLow(beyond.EmptyToMetres ?? 0, beyond.EmptyToMetres ?? 0, Unit.Metre)
                ),
                FindingArgument.Of("who", beyond.WhoIsThere ?? "—"),
            ],
        };
    }

    private static IEnumerable<BeyondEdge> Edges(Site site, Polygon outline, Zone zone)
    {
        Geometry outside = zone.Area.Difference(outline);
        if (outside.Area < SliverSquareMetres)
        {
            return [];
        }

        LineString[] edges = EdgesOf(site.Outline);
        var reach = new double[edges.Length];
        foreach (Coordinate corner in Densifier.Densify(outside, SampleMetres).Coordinates)
        {
            Reach(edges, new PlanPoint(corner.X, corner.Y), reach);
        }

        return Enumerable
            .Range(0, edges.Length)
            .Where(i => reach[i] > SameDistanceMetres)
            .Select(i => Described(site, zone, i, reach[i]));
    }

    private static LineString[] EdgesOf(ValueList<PlanPoint> ring) =>
        [.. ring.Select((from, i) => SiteGeometry.Line([from, ring[(i + 1) % ring.Count]]))];

    private static void Reach(LineString[] edges, PlanPoint corner, double[] reach)
    {
        Point point = SiteGeometry.Point(corner);
        double[] distances = [.. edges.Select(e => e.Distance(point))];
        double nearest = distances.Min();
        for (int i = 0; i < edges.Length; i++)
        {
            if (distances[i] <= nearest + SameDistanceMetres)
            {
                reach[i] = Math.Max(reach[i], distances[i]);
            }
        }
    }

    private static BeyondEdge Described(Site site, Zone zone, int edge, double reach)
    {
        Surrounding[] said = [.. site.Surroundings.Where(s => s.Edge == edge)];
        return new(
            edge,
            zone.Row,
            zone.ElementId,
            reach,
            said.Min(s => s.EmptyToMetres?.Value),
            said.Select(s => s.WhoIsThere).FirstOrDefault(w => w is not null)
        );
    }
}
