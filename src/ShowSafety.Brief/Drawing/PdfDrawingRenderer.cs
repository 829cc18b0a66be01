using PdfSharp.Drawing;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>Draws a picture onto a page of the PDF library, its top left corner at a place in millimetres.</summary>
internal sealed class PdfDrawingRenderer
{
    private readonly XGraphics graphics;
    private readonly double left;
    private readonly double top;

    private PdfDrawingRenderer(XGraphics graphics, double leftMillimetres, double topMillimetres)
    {
        this.graphics = graphics;
        left = leftMillimetres;
        top = topMillimetres;
    }

    public static void Render(PaperPicture picture, XGraphics graphics, double leftMillimetres, double topMillimetres)
    {
        var renderer = new PdfDrawingRenderer(graphics, leftMillimetres, topMillimetres);
        foreach (PaperLayer layer in picture.Layers)
        {
            renderer.Draw(layer);
        }
    }

    private void Draw(PaperLayer layer)
    {
        XGraphicsState? state = null;
        if (layer.Clip is { } clip)
        {
            state = graphics.Save();
            graphics.IntersectClip(PdfInk.Rect(left + clip.Left, top + clip.Top, clip.Width, clip.Height));
        }

        foreach (PaperItem item in layer.Items)
        {
            Draw(item, layer.Clip);
        }

        if (state is not null)
        {
            graphics.Restore(state);
        }
    }

    private void Draw(PaperItem item, PaperBox? clip)
    {
        switch (item)
        {
            case PaperPath path:
                Draw(path, clip);
                break;
            case PaperDisc disc:
                Draw(disc);
                break;
            case PaperText text:
                graphics.DrawString(
                    text.Text,
                    Typeface.Font(text.Style),
                    PdfInk.Brush(text.Style.Grey),
                    Point(text.Start)
                );
                break;
        }
    }

    private void Draw(PaperPath path, PaperBox? clip)
    {
        XGraphicsPath shape = Shape(path);
        if (path.Closed && path.FillGrey is { } grey)
        {
            graphics.DrawPath(PdfInk.Brush(grey), shape);
        }

        if (path is { Closed: true, Hatch: { } hatch })
        {
            Draw(hatch, path, clip ?? Around(path));
        }

        if (path.Outline is { } pen)
        {
            graphics.DrawPath(Pen(pen), shape);
        }
    }

    private void Draw(Hatch hatch, PaperPath path, PaperBox within)
    {
        foreach (HatchLines lines in hatch.Lines)
        {
            XPen pen = PdfInk.Pen(lines.WidthMillimetres, 0);
            foreach (HatchStroke stroke in HatchFiller.Strokes(path.Rings, lines, within))
            {
                graphics.DrawLine(pen, Point(stroke.From), Point(stroke.To));
            }
        }

        if (hatch.Dots is { } dots)
        {
            // A point drawn with a round pen is a dot in a tenth of the bytes of a circle.
            XPen pen = PdfInk.Pen(dots.DiameterMillimetres, 0);
            pen.LineCap = XLineCap.Round;
            foreach (PaperPoint centre in HatchFiller.Dots(path.Rings, dots, within))
            {
                graphics.DrawLine(pen, Point(centre), Point(centre));
            }
        }
    }

    private static PaperBox Around(PaperPath path)
    {
        List<PaperPoint> points = [.. path.Rings.SelectMany(ring => ring)];
        if (points.Count == 0)
        {
            return default;
        }

        double minX = points.Min(p => p.X);
        double minY = points.Min(p => p.Y);
        return new(minX, minY, points.Max(p => p.X) - minX, points.Max(p => p.Y) - minY);
    }

    private void Draw(PaperDisc disc)
    {
        XRect box = PdfInk.Rect(
            left + disc.Centre.X - disc.Radius,
            top + disc.Centre.Y - disc.Radius,
            2 * disc.Radius,
            2 * disc.Radius
        );
        if (disc.FillGrey is { } grey)
        {
            graphics.DrawEllipse(PdfInk.Brush(grey), box);
        }

        if (disc.Outline is { } pen)
        {
            graphics.DrawEllipse(Pen(pen), box);
        }
    }

    private XGraphicsPath Shape(PaperPath path)
    {
        var shape = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (ValueList<PaperPoint> ring in path.Rings)
        {
            if (ring.Count < 2)
            {
                continue;
            }

            shape.StartFigure();
            shape.AddLines([.. ring.Select(Point)]);
            if (path.Closed)
            {
                shape.CloseFigure();
            }
        }

        return shape;
    }

    private XPoint Point(PaperPoint point) => PdfInk.Point(left + point.X, top + point.Y);

    private static XPen Pen(Stroke stroke)
    {
        XPen pen = PdfInk.Pen(stroke.WidthMillimetres, stroke.Grey);
        pen.LineJoin = XLineJoin.Round;
        if (stroke.DashesMillimetres.Count > 0)
        {
            // The library counts dashes in widths of the pen.
            pen.DashPattern = [.. stroke.DashesMillimetres.Select(dash => dash / stroke.WidthMillimetres)];
        }

        return pen;
    }
}
