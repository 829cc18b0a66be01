using NetTopologySuite.Geometries;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>The site plan as a drawing: what stands there, what the engine reaches, where people may be.</summary>
internal static class SitePlanDrawing
{
    public static ScaleDrawing Of(BriefInput input)
    {
        Plan plan = input.Plan;
        MetreBox extent = Extent(plan);
        // Zones are drawn as far as the window can reach, not to the horizon.
        double beyond = 3 * Math.Max(extent.WidthMetres, extent.HeightMetres);
        Geometry window = Rings.Polygon(extent.Grown(beyond));
        SitePlanPart[] parts =
        [
            SitePlanGround.Of(plan),
            SitePlanZones.Of(input, window, Rings.Polygon(extent)),
            SitePlanThings.Of(plan),
            SitePlanLines.Of(input, window),
            SitePlanEngines.Of(plan, extent),
            SitePlanPeople.Of(plan, extent),
        ];
        return new ScaleDrawing(
            $"{BriefLabels.SitePlanSection}: {plan.Title}",
            SitePlanDescription.Of(input),
            parts.Select(part => part.Layer).Where(layer => layer.Elements.Count > 0).ToValueList(),
            parts.SelectMany(part => part.Legend).ToValueList()
        )
        {
            NorthDegrees = plan.Site.NorthDegrees,
            Extent = extent,
            Banner = Banner(input),
        };
    }

    private static string? Banner(BriefInput input) =>
        input.Marks.Count == 0 ? null : string.Join("  ·  ", input.Marks);

    /// <summary>The outline and every engine; people and ground beyond are pointed at from the edge.</summary>
    private static MetreBox Extent(Plan plan) =>
        MetreBox.Around(plan.Site.Outline.Concat(plan.Engines.Select(engine => engine.Place)))
        ?? new MetreBox(0, 0, 10, 10);
}

/// <summary>A layer of the site plan with its lines of the legend.</summary>
internal sealed record SitePlanPart(Layer Layer, ValueList<LegendEntry> Legend);

/// <summary>The drawing in words, for whoever can't see it.</summary>
internal static class SitePlanDescription
{
    public static string Of(BriefInput input)
    {
        Plan plan = input.Plan;
        string engines = string.Join("; ", plan.Engines.Select(Engine));
        string zones = string.Join(", ", input.Zones.Select(zone => zone.Row).Distinct().Order().Select(RowLabels.Of));
        return string.Join(
            " ",
            [
                $"Site plan to scale. Engines: {(engines.Length == 0 ? BriefLabels.NotStated : engines)}.",
                $"Zones drawn: {(zones.Length == 0 ? "none" : zones)}; their distances are in the section {BriefLabels.ZonesSection}.",
                plan.CrowdLine is null ? "No crowd line is planned." : "The planned crowd line is drawn.",
            ]
        );
    }

    private static string Engine(Engine engine) =>
        $"{engine.Name ?? engine.Id} at x {ValueFormat.Number(engine.Place.XMetres, Unit.Metre)}, "
        + $"y {ValueFormat.Number(engine.Place.YMetres, Unit.Metre)}, exhaust towards "
        + $"{ValueFormat.Number(engine.ExhaustHeadingDegrees, Unit.Degree)} clockwise from up the sheet";
}
