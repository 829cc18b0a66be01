using System.Globalization;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>
/// Puts a drawing on a rectangle of paper: the map in its window at a round scale, below it the scale bar and north.
/// Labels without room become numbers that the legend explains.
/// </summary>
internal sealed class DrawingSheet
{
    private const double BarRowHeight = 15;
    private const double Gap = 3;
    private const double Margin = 4;
    private const double LabelRoom = 12;

    private readonly ScaleDrawing drawing;
    private readonly double width;
    private readonly double height;

    private DrawingSheet(ScaleDrawing drawing, double widthMillimetres, double heightMillimetres)
    {
        this.drawing = drawing;
        width = widthMillimetres;
        height = heightMillimetres;
    }

    /// <summary>What is printed where north was not given.</summary>
    public string NorthUnknown { get; init; } = "North not given";

    /// <summary>The map with scale bar and north, and apart from it what its legend must say.</summary>
    public static SheetParts Parts(ScaleDrawing drawing, double widthMillimetres, double heightMillimetres) =>
        new DrawingSheet(drawing, widthMillimetres, heightMillimetres).Compose();

    /// <summary>
    /// Map and legend in one picture. The legend takes its room from the map as far as half the height; a longer one
    /// makes the picture longer.
    /// </summary>
    public static PaperPicture Compose(ScaleDrawing drawing, double widthMillimetres, double heightMillimetres)
    {
        double legend = new LegendBlock(drawing.Legend, widthMillimetres).HeightMillimetres + Gap;
        double map = Math.Max(heightMillimetres / 2, heightMillimetres - legend);
        SheetParts parts = Parts(drawing, widthMillimetres, map);
        return PictureStack.Of([parts.Map, .. parts.LegendPictures(double.PositiveInfinity)], Gap);
    }

    private SheetParts Compose()
    {
        // A label that finds no room becomes a numbered note, and its number may take the room of another label. The
        // notes only ever grow, so this ends.
        List<Label> notes = [];
        DrawingFrame frame = Trimmed(FrameFor(new PaperBox(0, 0, width, height - BarRowHeight)));
        while (true)
        {
            (List<PlacedLabel> placed, List<Label> without) = PlaceLabels(frame, notes);
            if (without.Count == 0)
            {
                return new(Assemble(frame, placed), [.. drawing.Legend, .. notes.Select(Note)]);
            }

            notes.AddRange(without);
        }
    }

    private DrawingFrame FrameFor(PaperBox window)
    {
        MetreBox extent = drawing.ExtentOrContent;
        var inner = new PaperBox(
            window.Left + Margin,
            window.Top + Margin,
            window.Width - (2 * Margin),
            window.Height - (2 * Margin)
        );
        return DrawingFrame.Fit(extent, inner) with { Window = window };
    }

    /// <summary>A wide low site needs no tall window; what is saved goes to the text below.</summary>
    private DrawingFrame Trimmed(DrawingFrame frame)
    {
        double needed = frame.Scale.ToMillimetres(drawing.ExtentOrContent.HeightMetres) + (2 * Margin) + LabelRoom;
        return needed < frame.Window.Height ? frame with { Window = frame.Window with { Height = needed } } : frame;
    }

    private static LegendEntry Note(Label label, int index) =>
        new(string.Create(CultureInfo.InvariantCulture, $"({index + 1}) {label.Text}"));

    private (List<PlacedLabel> Placed, List<Label> Without) PlaceLabels(DrawingFrame frame, List<Label> notes)
    {
        var placer = new LabelPlacer(frame.Window.Grown(-0.5), Obstacles(frame));
        var placed = new List<PlacedLabel>();
        var without = new List<Label>();
        for (int i = 0; i < notes.Count; i++)
        {
            string number = string.Create(CultureInfo.InvariantCulture, $"({i + 1})");
            placed.Add(placer.Force(notes[i] with { Text = number, Strong = true }, Anchor(frame, notes[i])));
        }

        foreach (Label label in Elements<Label>().Where(l => !notes.Contains(l)).OrderBy(l => l.Rank))
        {
            if (placer.Place(label, Anchor(frame, label)) is { } done)
            {
                placed.Add(done);
            }
            else if (!without.Contains(label))
            {
                without.Add(label);
            }
        }

        return (placed, without);
    }

    /// <summary>Where the label points; a point outside the window is pointed at from the window's edge.</summary>
    private static PaperPoint Anchor(DrawingFrame frame, Label label)
    {
        PaperPoint point = frame.ToPaper(label.At);
        PaperBox window = frame.Window;
        return new(Math.Clamp(point.X, window.Left, window.Right), Math.Clamp(point.Y, window.Top, window.Bottom));
    }

    private IEnumerable<T> Elements<T>()
        where T : DrawingElement => drawing.Layers.SelectMany(layer => layer.Elements).OfType<T>();

    private IEnumerable<PaperBox> Obstacles(DrawingFrame frame)
    {
        foreach (Marker marker in Elements<Marker>())
        {
            PaperPoint at = frame.ToPaper(marker.At);
            yield return new PaperBox(at.X, at.Y, 0, 0).Grown(marker.SizeMillimetres / 2);
        }

        foreach (PaperBox box in Elements<DrawingElement>().Where(e => e.KeepClear).SelectMany(e => ClearOf(e, frame)))
        {
            yield return box;
        }

        if (BannerBox is { } banner)
        {
            yield return banner;
        }
    }

    /// <summary>Boxes along the edges, close enough that no label slips between them.</summary>
    private static IEnumerable<PaperBox> ClearOf(DrawingElement element, DrawingFrame frame)
    {
        const double Step = 1.5;
        IEnumerable<PlanPoint> edge = element is Area area
            ? area.Rings.SelectMany(ring => ring.Concat(ring.Take(1)))
            : element.Points;
        PaperPoint[] points = [.. edge.Where(MetreBox.IsFinite).Select(frame.ToPaper)];
        for (int i = 0; i + 1 < points.Length; i++)
        {
            double dx = points[i + 1].X - points[i].X;
            double dy = points[i + 1].Y - points[i].Y;
            int steps = (int)Math.Clamp(Math.Ceiling(double.Hypot(dx, dy) / Step), 1, 400);
            for (int step = 0; step <= steps; step++)
            {
                double share = (double)step / steps;
                yield return new PaperBox(points[i].X + (share * dx), points[i].Y + (share * dy), 0, 0).Grown(Step / 2);
            }
        }
    }

    private PaperBox? BannerBox =>
        drawing.Banner is { } text
            ? new PaperBox(0, 0, TextMeasure.WidthMillimetres(text, TextStyles.DrawingBanner) + 6, 8)
            : null;

    private PaperPicture Assemble(DrawingFrame frame, List<PlacedLabel> labels)
    {
        var layers = new List<PaperLayer> { new("background", [Outline(frame.Window, null, 1)]) };
        layers.AddRange(drawing.Layers.Select(layer => PaperLayers.Of(layer, frame)).Where(l => l.Items.Count > 0));
        layers.Add(new PaperLayer("leaders", labels.SelectMany(LeaderItems).ToValueList()));
        layers.Add(new PaperLayer("labels", labels.SelectMany(LabelItems).ToValueList()));
        layers.Add(new PaperLayer("frame", [Outline(frame.Window, Stroke.Thin, null), .. BannerItems()]));
        double below = frame.Window.Bottom + 2.5;
        layers.Add(new PaperLayer("scale", ScaleBar.Draw(frame.Scale, new(0, below)).ToValueList()));
        PaperPoint north = new(width - 8, below + 7);
        layers.Add(new PaperLayer("north", NorthArrow.Draw(drawing.NorthDegrees, north, NorthUnknown).ToValueList()));
        return new(
            drawing.Title,
            drawing.Description,
            width,
            frame.Window.Bottom + BarRowHeight,
            frame,
            layers.ToValueList()
        );
    }

    private static PaperPath Outline(PaperBox box, Stroke? pen, double? fill) =>
        new(
            [
                [
                    new(box.Left, box.Top),
                    new(box.Right, box.Top),
                    new(box.Right, box.Bottom),
                    new(box.Left, box.Bottom),
                ],
            ],
            true,
            pen,
            fill
        );

    private static IEnumerable<PaperItem> LeaderItems(PlacedLabel placed) =>
        placed.LeaderFrom is { } from
            ?
            [
                new PaperPath(
                    [
                        [from, placed.Box.Nearest(from)],
                    ],
                    false,
                    Stroke.Hairline
                ),
                new PaperDisc(from, 0.45, null, 0),
            ]
            : [];

    private static IEnumerable<PaperItem> LabelItems(PlacedLabel placed)
    {
        yield return Outline(placed.Box, null, 1);
        foreach (PaperText line in placed.Lines)
        {
            yield return line;
        }
    }

    private IEnumerable<PaperItem> BannerItems()
    {
        if (drawing.Banner is { } text && BannerBox is { } box)
        {
            TextStyle style = TextStyles.DrawingBanner with { Grey = 1 };
            yield return Outline(box, null, 0);
            yield return new PaperText(new(3, 4 + (style.CapitalMillimetres / 2)), text, style);
        }
    }
}
