using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Crowd;

/// <summary>The crowd line's barrier: panels it takes, and that it is a barrier.</summary>
internal static class LineCheck
{
    public static IEnumerable<Figure> Figures(Plan plan)
    {
        if (plan.CrowdLine is { Line.Count: > 1 } line && line.PanelLengthMetres.Positive() is { } panel)
        {
            double panels = Barriers.Panels(SiteGeometry.Line(line.Line).Length, panel);
            yield return new(
                "crowd.panels",
                null,
                Quantity.CautiousHigh(panels, panels, Unit.One) with
                {
                    Pedigree = line.PanelLengthMetres!.Pedigree,
                    Sum = "barrier-panels",
                    Citations = [SiteSources.CrowdPanels],
                }
            );
        }
    }

    public static IEnumerable<Finding> Findings(Plan plan)
    {
        if (plan.CrowdLine is null)
        {
            yield return CannotTell.Without(
                typeof(Plan),
                "crowd.line-missing",
                Severity.Act,
                nameof(Plan.CrowdLine),
                row: ZoneRow.HotAndSpinningParts
            );
            yield break;
        }

        if (plan.CrowdLine.PanelLengthMetres.Positive() is null)
        {
            yield return CannotTell.Without(
                typeof(CrowdLine),
                "crowd.panel-length-missing",
                Severity.Note,
                nameof(CrowdLine.PanelLengthMetres)
            );
        }

        yield return new("crowd.barrier-stops-no-piece", Severity.Note) { Citations = [SiteSources.CrowdBarriers] };
    }
}
