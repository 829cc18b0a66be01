using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Plans.CheckFinding;

namespace ShowSafety.Core.Plans;

/// <summary>Whether things stand on the site, and its edges are described once each.</summary>
internal static class PlaceCheck
{
    // An exit is drawn in its wall or gateway; a metre allows for the width of the pen.
    private const double ExitToEdgeMetres = 1;

    public static IEnumerable<Finding> Findings(Plan plan)
    {
        foreach (Finding finding in Surroundings(plan.Site))
        {
            yield return finding;
        }

        if (Shapes.Ring(plan.Site.Outline) is not { } outline)
        {
            yield break;
        }

        foreach (Finding finding in plan.Engines.SelectMany(e => OffSite(e, outline)).Concat(Exits(plan, outline)))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> OffSite(Engine engine, Polygon outline)
    {
        if (!Shapes.Covers(outline, SiteGeometry.Point(engine.Place)))
        {
            yield return Act("plan.engine-off-site", engine.Id) with
            {
                Place = engine.Place,
            };
        }
        else if (Shapes.Ring(BenchShape.Of(engine)) is { } bench && !Shapes.Covers(outline, bench))
        {
            yield return Act("plan.bench-off-site", engine.Id) with
            {
                Place = engine.Place,
            };
        }
    }

    private static IEnumerable<Finding> Exits(Plan plan, Polygon outline)
    {
        Polygon? enclosure = plan.Site.Enclosure is { } e ? Shapes.Ring(e.Footprint) : null;
        return plan
            .Site.Exits.Where(exit =>
                outline.ExteriorRing.Distance(SiteGeometry.Point(exit.Place)) > ExitToEdgeMetres
                && !(enclosure?.ExteriorRing.Distance(SiteGeometry.Point(exit.Place)) <= ExitToEdgeMetres)
            )
            .Select(exit => Act("plan.exit-off-edge", exit.Id) with { Place = exit.Place });
    }

    private static IEnumerable<Finding> Surroundings(Site site) =>
        [
            .. site
                .Surroundings.Where(s => s.Edge < 0 || s.Edge >= site.Outline.Count)
                .Select(s => Act("plan.surrounding-without-edge", null, FindingArgument.Of("edge", s.Edge))),
            .. site
                .Surroundings.GroupBy(s => s.Edge)
                .Where(same => same.Count() > 1)
                .Select(same => Act("plan.surrounding-twice", null, FindingArgument.Of("edge", same.Key))),
        ];
}
