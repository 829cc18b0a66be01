using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Layout;

/// <summary>Turns the zones of all rooms into areas and checks where people are.</summary>
public static class LayoutAssessor
{
    /// <summary>Assesses a plan with the zones of every room.</summary>
    public static LayoutAssessment Assess(Plan plan, ValueList<Zone> zones)
    {
        ValueList<Zone> publicZones = KeepOut.Excluding(zones, KeepOut.PublicOf(plan));
        Geometry publicKeepOut = SiteGeometry.Union(publicZones.Select(z => z.Area));
        var areas = new IndexedAreas();
        var check = new LineCheck(publicZones, publicKeepOut, areas);
        (ValueList<PlanPoint> suggested, ValueList<LineStretch> stretches) = SuggestedLine.OnlyIfOutside(
            SuggestedLine.Of(plan, publicKeepOut),
            check
        );
        var layout = new LayoutAssessment
        {
            PublicKeepOut = publicKeepOut,
            CrewKeepOut = KeepOut.For(zones, Audience.Crew),
            HearingArea = SiteGeometry.Union(zones.Where(z => z.Row == ZoneRow.HearingZone).Select(z => z.Area)),
            PlannedLine = check.Of(plan.CrowdLine?.Line ?? []),
            SuggestedLine = suggested,
            SuggestedStretches = stretches,
            Beyond = BeyondSite.Of(plan, zones),
            LineSetBy = SetBy(stretches),
        };
        return layout with
        {
            Figures = Figures(plan, layout),
            Findings =
            [
                .. PeopleCheck.Check(plan, zones, areas),
                .. LineFindings.Of(plan, layout),
                .. BeyondSite.Check(layout.Beyond),
            ],
        };
    }

    private static ZoneRow? SetBy(ValueList<LineStretch> stretches) =>
        stretches
            .GroupBy(s => s.Row)
            .OrderByDescending(g => g.Sum(s => s.From.DistanceMetres(s.To)))
            .FirstOrDefault()
            ?.Key;

    private static ValueList<Figure> Figures(Plan plan, LayoutAssessment layout)
    {
        if (layout.SuggestedLine.Count < 2)
        {
            return [];
        }

        LineString line = SiteGeometry.Line(layout.SuggestedLine);
        return
        [
            .. plan.Engines.Select(e =>
            {
                double metres = line.Distance(SiteGeometry.Point(e.Place));
                return new Figure("layout.line-distance", e.Id, Quantity.Plain(metres, Unit.Metre));
            }),
            new("layout.line-length", null, Quantity.Plain(line.Length, Unit.Metre)),
        ];
    }
}
