using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>The site plan as a drawing: what stands there, what the engine reaches, where people may be.</summary>
internal static class SitePlanDrawing
{
    /// <summary>The whole site, then the surroundings of the engines where the site is much larger.</summary>
    public static IReadOnlyList<ScaleDrawing> Of(BriefInput input) =>
        [.. SitePlanView.Of(input.Plan).Select(view => Of(input, view))];

    private static ScaleDrawing Of(BriefInput input, SitePlanView view)
    {
        Plan plan = input.Plan;
        SitePlanPart[] parts =
        [
            SitePlanGround.Of(plan),
            SitePlanZones.Of(input, view),
            SitePlanThings.Of(plan),
            SitePlanLines.Of(input, view.Window),
            SitePlanEngines.Of(plan, view.Extent),
            SitePlanPeople.Of(plan, view.Extent),
            SitePlanDetails.Of(view),
        ];
        return new ScaleDrawing(
            view.IsDetail ? BriefLabels.DetailTitle : $"{BriefLabels.SitePlanSection}: {plan.Title}",
            view.IsDetail ? BriefLabels.DetailDescription : SitePlanDescription.Of(input),
            parts.Select(part => Named(part.Layer, view)).Where(layer => layer.Elements.Count > 0).ToValueList(),
            // The detail is drawn in the same way: one legend serves both.
            view.IsDetail
                ? []
                : parts.SelectMany(part => part.Legend).ToValueList()
        )
        {
            NorthDegrees = plan.Site.NorthDegrees,
            Extent = view.Extent,
            Banner = Banner(input),
        };
    }

    private static Layer Named(Layer layer, SitePlanView view) =>
        layer with
        {
            Elements = layer
                .Elements.Where(element => element is not Label label || view.Names(label.At))
                .ToValueList(),
        };

    private static string? Banner(BriefInput input) =>
        input.Marks.Count == 0 ? null : string.Join("  ·  ", input.Marks);
}

/// <summary>A layer of the site plan with its lines of the legend.</summary>
internal sealed record SitePlanPart(Layer Layer, ValueList<LegendEntry> Legend);

/// <summary>Where the drawing has a larger one: a frame, and beside it the words that say so.</summary>
internal static class SitePlanDetails
{
    private static readonly Stroke Frame = new(0.25, LineStyle.Dashed);

    public static SitePlanPart Of(SitePlanView view) =>
        new(new Layer("details", view.Elsewhere.SelectMany(Framed).ToValueList()), []);

    private static IEnumerable<DrawingElement> Framed(MetreBox box)
    {
        yield return new Area([Rings.Corners(box)], Frame);
        // On the right edge, which belongs to the drawing outside the frame.
        yield return new Label(new(box.RightMetres, box.TopMetres), BriefLabels.SeeDetail, 1);
    }
}

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
