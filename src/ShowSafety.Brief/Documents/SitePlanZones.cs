using NetTopologySuite.Geometries;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>The zones, the widest first, so that none hides a smaller one; each with its row's hatch and name.</summary>
internal static class SitePlanZones
{
    private sealed record RowArea(ZoneRow Row, Geometry Area, ZoneEffect Effect, Audience Whom);

    public static SitePlanPart Of(BriefInput input, Geometry window, Geometry extent)
    {
        RowArea[] rows =
        [
            .. input
                .Zones.GroupBy(zone => zone.Row)
                .Select(group => Joined(group, window))
                .Where(row => !row.Area.IsEmpty)
                .OrderByDescending(row => row.Area.Area)
                .ThenBy(row => row.Row),
        ];
        IEnumerable<DrawingElement> areas = rows.Select(Drawn);
        IEnumerable<DrawingElement> labels = rows.Select((row, i) => Named(row, rows, extent)).OfType<DrawingElement>();
        return new(
            new Layer("zones", areas.Concat(labels).ToValueList()),
            rows.OrderBy(row => row.Row).Select(Legend).ToValueList()
        );
    }

    private static RowArea Joined(IGrouping<ZoneRow, Zone> zones, Geometry window) =>
        new(
            zones.Key,
            SiteGeometry.Union(zones.Select(zone => zone.Area)).Intersection(window),
            zones.Max(zone => zone.Effect),
            zones.Aggregate(Audience.None, (whom, zone) => whom | zone.Whom)
        );

    private static Area Drawn(RowArea row)
    {
        ZoneStyle style = ZoneStyle.Of(row.Row);
        return new(Rings.Of(row.Area), style.Outline, HatchOf(row, style));
    }

    private static Hatch? HatchOf(RowArea row, ZoneStyle style) =>
        row.Effect == ZoneEffect.Informs ? null : style.Hatch;

    /// <summary>The name stands where the zone is alone, if it is anywhere, within the site's window.</summary>
    private static Label? Named(RowArea row, RowArea[] rows, Geometry extent)
    {
        Geometry shown = row.Area.Intersection(extent);
        if (shown.IsEmpty)
        {
            return null;
        }

        Geometry others = SiteGeometry.Union(
            rows.Where(o => o.Row != row.Row && o.Area.Area < row.Area.Area).Select(o => o.Area)
        );
        Geometry alone = shown.Difference(others);
        Point place = (alone.Area > 0.05 * shown.Area ? alone : shown).InteriorPoint;
        // Where the edge lies beyond the drawing nothing else would show that all of it is inside.
        string all = row.Area.Covers(extent) ? ": all of this drawing" : "";
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
