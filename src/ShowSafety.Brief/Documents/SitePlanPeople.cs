using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>Where people are: groups, posts, and who is beyond the edge of the drawing, with the distance.</summary>
internal static class SitePlanPeople
{
    private static readonly Stroke AreaPen = new(0.25, LineStyle.Solid, 0.3);

    public static SitePlanPart Of(Plan plan, MetreBox extent)
    {
        var elements = new List<DrawingElement>();
        foreach (PersonGroup group in plan.People)
        {
            elements.AddRange(Drawn(group, extent));
        }

        MarkedPlace[] posts =
        [
            .. plan.Viewing?.StewardPosts ?? [],
            .. plan.Viewing?.WheelchairPlaces ?? [],
            .. plan.Gate?.Stopping?.StopPosts ?? [],
        ];
        foreach (MarkedPlace post in posts)
        {
            elements.Add(new Marker(post.Place, MarkerShape.Plus));
            elements.Add(new Label(post.Place, post.Name ?? post.Id, 4));
        }

        List<LegendEntry> legend =
        [
            .. plan.People.Select(group => group.Role).Distinct().Order().Select(Legend),
            .. posts.Length > 0 ? [new LegendEntry("Post or kept place", Marker: MarkerShape.Plus)] : (LegendEntry[])[],
        ];
        return new(new Layer("people", elements.ToValueList()), legend.ToValueList());
    }

    private static IEnumerable<DrawingElement> Drawn(PersonGroup group, MetreBox extent)
    {
        if (group.Area.Count >= 3)
        {
            yield return new Area([group.Area], AreaPen);
        }

        PlanPoint? place =
            group.Place
            ?? (
                group.Area.Count >= 3
                    ? SiteGeometry.PlanPoint(SiteGeometry.Polygon(group.Area).InteriorPoint.Coordinate)
                    : null
            );
        if (place is not { } at)
        {
            yield break;
        }

        yield return new Marker(at, MarkOf(group.Role));
        yield return new Label(
            at,
            (group.Name ?? Sections.Sentence(BriefLabels.Of(group.Role))) + Beyond(at, extent),
            3
        );
    }

    private static string Beyond(PlanPoint at, MetreBox extent)
    {
        PlanPoint edge = new(
            Math.Clamp(at.XMetres, extent.LeftMetres, extent.RightMetres),
            Math.Clamp(at.YMetres, extent.BottomMetres, extent.TopMetres)
        );
        double metres = edge.DistanceMetres(at);
        return metres > 0 ? $", {ValueFormat.Number(metres, Unit.Metre)} beyond the drawing" : "";
    }

    private static MarkerShape MarkOf(PersonRole role) =>
        role switch
        {
            PersonRole.Crew => MarkerShape.Disc,
            PersonRole.Exhibitor => MarkerShape.Square,
            PersonRole.Visitor => MarkerShape.Ring,
            _ => MarkerShape.Diamond,
        };

    private static LegendEntry Legend(PersonRole role) =>
        new(Sections.Sentence(BriefLabels.Of(role)), Marker: MarkOf(role));
}
