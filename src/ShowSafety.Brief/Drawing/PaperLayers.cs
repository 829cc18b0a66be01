using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>Puts the elements of a layer on paper; labels are placed apart, since they depend on one another.</summary>
internal static class PaperLayers
{
    public static PaperLayer Of(Layer layer, DrawingFrame frame) =>
        new(layer.Name, layer.Elements.SelectMany(element => Of(element, frame)).ToValueList(), frame.Window);

    private static IEnumerable<PaperItem> Of(DrawingElement element, DrawingFrame frame) =>
        element switch
        {
            Area area => [OnPaper(area, frame)],
            Polyline line => OnPaper(line, frame),
            Marker marker => Markers.Draw(marker.Shape, frame.ToPaper(marker.At), marker.SizeMillimetres),
            _ => [],
        };

    private static PaperPath OnPaper(Area area, DrawingFrame frame) =>
        new(
            area.Rings.Select(ring => OnPaper(ring, frame)).ToValueList(),
            true,
            area.Outline,
            area.FillGrey,
            area.Hatch
        );

    private static IEnumerable<PaperItem> OnPaper(Polyline line, DrawingFrame frame)
    {
        ValueList<PaperPoint> points = OnPaper(line.Line, frame);
        yield return new PaperPath([points], false, line.Stroke);
        if (line.ArrowAtEnd && points.Count > 1)
        {
            yield return Markers.ArrowHead(points[^2], points[^1], 3);
        }
    }

    private static ValueList<PaperPoint> OnPaper(IEnumerable<PlanPoint> points, DrawingFrame frame) =>
        points.Where(MetreBox.IsFinite).Select(frame.ToPaper).ToValueList();
}
