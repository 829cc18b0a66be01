using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>Things that burn, soften or blow away and lie where the jet is too hot or too fast for them.</summary>
internal static class ThingsInJet
{
    /// <summary>A finding for each thing inside the zone of its material.</summary>
    public static IEnumerable<Finding> Of(
        Plan plan,
        Engine engine,
        IReadOnlyList<(ZoneKind Kind, ThresholdZone Zone)> drawn
    ) =>
        from thing in plan.Site.Burnables
        from zone in drawn
        where zone.Kind.Thing == thing.Kind && Outline(thing).Intersects(zone.Zone.Area)
        select Inside(engine, thing, zone.Kind);

    private static Finding Inside(Engine engine, Burnable thing, ZoneKind kind) =>
        new(kind.IsSpeed ? "exhaust.loose-things-in-jet" : "exhaust.thing-in-heat", SeverityOf(thing.Kind))
        {
            ElementId = thing.Id,
            Place = thing.Outline[0],
            Arguments =
            [
                FindingArgument.Of("engine", engine.Name ?? engine.Id),
                FindingArgument.Of("limit", Quantity.Plain(kind.Limit, kind.Unit)),
            ],
            Row = kind.Row,
            Citations = kind.Citations,
        };

    // A burning tent, field or vehicle with people about can kill; paper, wood and litter are cleared away.
    private static Severity SeverityOf(BurnableKind kind) =>
        kind is BurnableKind.TentFabric or BurnableKind.DryVegetation or BurnableKind.Vehicle
            ? Severity.Stop
            : Severity.Act;

    // A plan being drawn may hold a point, a line or a ring that crosses itself; the hull only adds ground.
    private static Geometry Outline(Burnable thing) =>
        thing.Outline.Count == 0
            ? SiteGeometry.Empty
            : SiteGeometry
                .Factory.CreateMultiPointFromCoords([.. thing.Outline.Select(SiteGeometry.Coordinate)])
                .ConvexHull();
}
