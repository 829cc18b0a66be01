using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Layout;

/// <summary>Findings about the planned crowd line and the line that could stand instead.</summary>
internal static class LineFindings
{
    public static IEnumerable<Finding> Of(Plan plan, LayoutAssessment layout) =>
        [.. Missing(plan, layout), .. Failing(layout), .. NotBehind(plan)];

    private static IEnumerable<Finding> Missing(Plan plan, LayoutAssessment layout)
    {
        bool visitors = plan.People.Any(p => p.Role == PersonRole.Visitor);
        if (plan.CrowdLine is null && visitors)
        {
            yield return new("layout.no-line-drawn", Severity.Act) { CannotTell = true, Field = "CrowdLine.Line" };
        }

        if (layout.SuggestedLine.Count < 2 && !layout.PublicKeepOut.IsEmpty && visitors)
        {
            yield return new("layout.no-line-possible", Severity.Stop);
        }
    }

    private static IEnumerable<Finding> Failing(LayoutAssessment layout) =>
        layout
            .PlannedLine.Where(s => !s.MeetsRules)
            .GroupBy(s => (s.Row, s.ElementId))
            .Select(g =>
            {
                LineStretch worst = g.MaxBy(s => s.Metres)!;
                return new Finding(
                    "layout.line-inside-zone",
                    g.Key.Row is { } row ? KeepOut.SeverityOf(row) : Severity.Act
                )
                {
                    Row = g.Key.Row,
                    ElementId = g.Key.ElementId,
                    Place = worst.From,
                    Arguments =
                    [
                        FindingArgument.Of("shortfall", Quantity.CautiousHigh(worst.Metres, worst.Metres, Unit.Metre)),
                        FindingArgument.Of("from", worst.From.ToText()),
                        FindingArgument.Of("to", worst.To.ToText()),
                    ],
                };
            });

    /// <summary>Visitors must stand behind the line: it must lie between each engine and their whole area.</summary>
    private static IEnumerable<Finding> NotBehind(Plan plan)
    {
        if (plan.CrowdLine is not { } crowdLine)
        {
            yield break;
        }

        LineString line = SiteGeometry.Line(crowdLine.Line);
        foreach (PersonGroup group in plan.People.Where(p => p.Role == PersonRole.Visitor))
        {
            Engine? open = plan.Engines.FirstOrDefault(e =>
                Occupants.AreaOf(group) is { } area
                && area.Coordinates.Any(c => !SiteGeometry.Line([e.Place, SiteGeometry.PlanPoint(c)]).Intersects(line))
            );
            if (open is not null)
            {
                yield return new("layout.visitors-not-behind-line", Severity.Act)
                {
                    ElementId = group.Id,
                    Arguments = [FindingArgument.Of("who", group.Name ?? group.Id)],
                };
            }
        }
    }

    private static string ToText(this PlanPoint point) =>
        string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"({point.XMetres:0.0}, {point.YMetres:0.0}) m"
        );
}
