using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Layout;

/// <summary>Reports the parts of excluding zones that lie beyond the site's outline, and who may be there.</summary>
internal static class BeyondSite
{
    private const double SliverSquareMetres = 0.01;

    // A reach shorter than this is the sampling's own allowance along an edge the zone only touches at a corner.
    private const double ShortestMetres = 0.15;

    public static ValueList<BeyondEdge> Of(Plan plan, ValueList<Zone> zones)
    {
        Polygon site = SiteGeometry.Polygon(plan.Site.Outline);
        var index = new IndexedArea(site);
        return
        [
            .. zones
                .Where(z => z.Effect == ZoneEffect.Excludes && !z.Area.IsEmpty && !index.Covers(z.Area))
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

        double[] reach = OutsideReach.Of(site.Outline, outside);
        return Enumerable
            .Range(0, reach.Length)
            .Where(i => reach[i] > ShortestMetres)
            .Select(i => Described(site, zone, i, reach[i]));
    }

    private static BeyondEdge Described(Site site, Zone zone, int edge, double reach)
    {
        Surrounding[] said = [.. site.Surroundings.Where(s => s.Edge == edge)];
        return new(
            edge,
            zone.Row,
            zone.ElementId,
            reach,
            // One entry that says who is there and not how far the ground is empty leaves the edge open.
            said.All(s => s.EmptyToMetres is not null)
                ? said.Min(s => s.EmptyToMetres?.Value)
                : null,
            said.Select(s => s.WhoIsThere).FirstOrDefault(w => w is not null)
        );
    }
}
