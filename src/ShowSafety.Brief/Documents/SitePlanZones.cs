using NetTopologySuite.Geometries;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>The zones, the widest first, so that none hides a smaller one; each with its row's hatch and name.</summary>
internal static class SitePlanZones
{
    // What of a zone shows round the edge of a detail is too little to carry its name.
    private const double SmallestShare = 0.004;

    // So much larger than a detail, a zone that fills it is to be seen and named on the whole.
    private const double ManyTimes = 4;

    /// <param name="Row">The row.</param>
    /// <param name="Area">Where its strongest effect holds.</param>
    /// <param name="Weaker">Where only a weaker one does, as far as that lies outside.</param>
    /// <param name="Effect">The strongest effect.</param>
    /// <param name="Whom">Whom that binds.</param>
    private sealed record RowArea(ZoneRow Row, Geometry Area, Geometry Weaker, ZoneEffect Effect, Audience Whom);

    public static SitePlanPart Of(BriefInput input, SitePlanView view)
    {
        RowArea[] rows =
        [
            .. input
                .Zones.GroupBy(zone => zone.Row)
                .Select(group => Joined(group, view.Window))
                .Where(row => !row.Area.IsEmpty)
                .OrderByDescending(row => row.Area.Area)
                .ThenBy(row => row.Row),
        ];
        IEnumerable<DrawingElement> labels = rows.Select(row => Named(row, rows, view)).OfType<DrawingElement>();
        return new(
            new Layer("zones", rows.SelectMany(Drawn).Concat(labels).ToValueList()),
            rows.OrderBy(row => row.Row).Select(Legend).ToValueList()
        );
    }

    private static RowArea Joined(IGrouping<ZoneRow, Zone> zones, Geometry window)
    {
        ZoneEffect effect = zones.Max(zone => zone.Effect);
        Zone[] strongest = [.. zones.Where(zone => zone.Effect == effect)];
        Geometry area = SiteGeometry.Union(strongest.Select(zone => zone.Area)).Intersection(window);
        Geometry all = SiteGeometry.Union(zones.Select(zone => zone.Area)).Intersection(window);
        return new(
            zones.Key,
            area,
            all.Difference(area),
            effect,
            strongest.Aggregate(Audience.None, (whom, zone) => whom | zone.Whom)
        );
    }

    private static IEnumerable<DrawingElement> Drawn(RowArea row)
    {
        ZoneStyle style = ZoneStyle.Of(row.Row);
        // What the overlay leaves of two equal edges is no area.
        if (row.Weaker.Area > 0.01 * row.Area.Area)
        {
            yield return new Area(Rings.Of(row.Weaker), style.Outline);
        }

        yield return new Area(Rings.Of(row.Area), style.Outline, HatchOf(row, style));
    }

    private static Hatch? HatchOf(RowArea row, ZoneStyle style) =>
        row.Effect == ZoneEffect.Informs ? null : style.Hatch;

    /// <summary>
    /// The name stands where the zone is alone, if it is anywhere. A zone that lies within a detail is named there.
    /// </summary>
    private static Label? Named(RowArea row, RowArea[] rows, SitePlanView view)
    {
        Geometry extent = Rings.Polygon(view.Extent);
        Geometry shown = row.Area.Intersection(view.NamedHere);
        bool tooLittle = view.Elsewhere.Count > 0 && shown.Area < SmallestShare * extent.Area;
        bool namedOnTheWhole = view.IsDetail && row.Area.Covers(extent) && row.Area.Area > ManyTimes * extent.Area;
        if (shown.IsEmpty || tooLittle || namedOnTheWhole)
        {
            return null;
        }

        Geometry others = SiteGeometry.Union(
            rows.Where(o => o.Row != row.Row && o.Area.Area < row.Area.Area).Select(o => o.Area)
        );
        Geometry alone = shown.Difference(others);
        Point place = (alone.Area > 0.05 * shown.Area ? alone : shown).InteriorPoint;
        // Where the edge lies beyond the site nothing else would show that all of it is inside.
        string all = !view.IsDetail && row.Area.Covers(extent) ? BriefLabels.AllOfTheSite : "";
        string text = Sections.Sentence(RowLabels.Of(row.Row)) + all;
        return new(SiteGeometry.PlanPoint(place.Coordinate), text, 3, Centred: true);
    }

    private static LegendEntry Legend(RowArea row)
    {
        ZoneStyle style = ZoneStyle.Of(row.Row);
        string text =
            $"{Sections.Sentence(RowLabels.Of(row.Row))}: {BriefLabels.Of(row.Effect)} {BriefLabels.Of(row.Whom)}";
        return new(text, style.Outline, HatchOf(row, style));
    }
}
