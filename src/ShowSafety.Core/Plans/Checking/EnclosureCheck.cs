using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Plans.CheckFinding;

namespace ShowSafety.Core.Plans;

/// <summary>Whether the hall or tent fits the site, the engines and itself.</summary>
internal static class EnclosureCheck
{
    public static IEnumerable<Finding> Findings(Plan plan) =>
        plan.Site.Enclosure is { } enclosure
            ? [.. Heights(enclosure), .. Sides(enclosure), .. Fits(plan, enclosure)]
            : [];

    private static IEnumerable<Finding> Heights(Enclosure enclosure)
    {
        if (enclosure is { RidgeHeightMetres: { } ridge, EavesHeightMetres: { } eaves } && ridge.Value < eaves.Value)
        {
            yield return Act(
                "plan.ridge-below-eaves",
                enclosure.Id,
                Number("ridge", ridge, Unit.Metre),
                Number("eaves", eaves, Unit.Metre)
            );
        }
    }

    private static IEnumerable<Finding> Sides(Enclosure enclosure) =>
        [
            .. enclosure
                .Sides.Where(s => s.Side < 0 || s.Side >= enclosure.Footprint.Count)
                .Select(s => Act("plan.side-without-wall", enclosure.Id, FindingArgument.Of("side", s.Side))),
            .. enclosure
                .Sides.GroupBy(s => s.Side)
                .Where(same => same.Count() > 1)
                .Select(same => Act("plan.side-twice", enclosure.Id, FindingArgument.Of("side", same.Key))),
        ];

    private static IEnumerable<Finding> Fits(Plan plan, Enclosure enclosure)
    {
        if (Shapes.Ring(enclosure.Footprint) is not { } footprint)
        {
            yield break;
        }

        if (Shapes.Ring(plan.Site.Outline) is { } outline && !Shapes.Covers(outline, footprint))
        {
            yield return Act("plan.enclosure-off-site", enclosure.Id);
        }

        foreach (Engine engine in plan.Engines)
        {
            if (Engine(engine, enclosure, footprint) is { } finding)
            {
                yield return finding;
            }
        }
    }

    private static Finding? Engine(Engine engine, Enclosure enclosure, Polygon footprint)
    {
        if (!Shapes.Covers(footprint, SiteGeometry.Point(engine.Place)))
        {
            return Note("plan.engine-outside-enclosure", engine.Id) with { Place = engine.Place };
        }

        return
            enclosure.EavesHeightMetres is { } eaves
            && engine.ShaftHeightMetres is { } shaft
            && eaves.Value <= shaft.Value
            ? Act(
                "plan.enclosure-lower-than-shaft",
                engine.Id,
                Number("eaves", eaves, Unit.Metre),
                Number("shaft", shaft, Unit.Metre)
            )
            : null;
    }
}
