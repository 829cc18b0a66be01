using NetTopologySuite.Geometries;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Layout;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>The edge of the keep-out, the crowd line as planned, and the line suggested.</summary>
internal static class SitePlanLines
{
    private static readonly Stroke PublicEdge = new(1);
    private static readonly Stroke CrewEdge = new(0.6, LineStyle.Dashed);
    private static readonly Stroke Planned = new(0.8, LineStyle.LongDashed);
    private static readonly Stroke Suggested = new(0.8, LineStyle.DashDotted);
    private static readonly Stroke Short = new(1.6, LineStyle.Dotted);

    public static SitePlanPart Of(BriefInput input, Geometry window)
    {
        var elements = new List<DrawingElement>();
        var legend = new List<LegendEntry>();
        if (input.Layout is { } layout)
        {
            AddEdge(elements, legend, layout.CrewKeepOut, window, CrewEdge, "Keep-out for crew");
            AddEdge(elements, legend, layout.PublicKeepOut, window, PublicEdge, "Keep-out for the public");
            AddSuggested(elements, legend, layout);
        }

        AddPlanned(elements, legend, input);
        return new(new Layer("lines", elements.ToValueList()), legend.ToValueList());
    }

    private static void AddEdge(
        List<DrawingElement> elements,
        List<LegendEntry> legend,
        Geometry area,
        Geometry window,
        Stroke pen,
        string text
    )
    {
        Geometry shown = area.Intersection(window);
        if (!shown.IsEmpty)
        {
            elements.Add(new Area(Rings.Of(shown), pen));
            legend.Add(new LegendEntry(text, pen));
        }
    }

    private static void AddSuggested(List<DrawingElement> elements, List<LegendEntry> legend, LayoutAssessment layout)
    {
        if (layout.SuggestedLine.Count >= 2)
        {
            elements.Add(new Polyline(layout.SuggestedLine, Suggested));
            elements.Add(new Label(layout.SuggestedLine[0], "Suggested crowd line", 2));
            legend.Add(new LegendEntry("Suggested crowd line", Suggested, IsLine: true));
        }
    }

    private static void AddPlanned(List<DrawingElement> elements, List<LegendEntry> legend, BriefInput input)
    {
        if (input.Plan.CrowdLine is not { Line.Count: >= 2 } crowdLine)
        {
            return;
        }

        elements.Add(new Polyline(crowdLine.Line, Planned));
        elements.Add(new Label(crowdLine.Line[^1], "Planned crowd line", 2, true));
        legend.Add(new LegendEntry("Planned crowd line", Planned, IsLine: true));
        LineStretch[] tooNear = [.. input.Layout?.PlannedLine.Where(stretch => !stretch.MeetsRules) ?? []];
        foreach (LineStretch stretch in tooNear)
        {
            elements.Add(new Polyline([stretch.From, stretch.To], Short));
            PlanPoint middle = new(
                (stretch.From.XMetres + stretch.To.XMetres) / 2,
                (stretch.From.YMetres + stretch.To.YMetres) / 2
            );
            Quantity shortfall = Quantity.CautiousHigh(stretch.Metres, stretch.Metres, Unit.Metre);
            elements.Add(new Label(middle, $"Line short by {ValueFormat.Planning(shortfall)}", 1, true));
        }

        if (tooNear.Length > 0)
        {
            legend.Add(new LegendEntry("Planned line inside a zone", Short, IsLine: true));
        }
    }
}
