using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>The marker shapes as paths on paper.</summary>
internal static class Markers
{
    public static IEnumerable<PaperItem> Draw(MarkerShape shape, PaperPoint at, double size)
    {
        double r = size / 2;
        Stroke pen = Stroke.Thin;
        switch (shape)
        {
            case MarkerShape.Disc:
                return [new PaperDisc(at, r, null, 0)];
            case MarkerShape.Ring:
                return [new PaperDisc(at, r, pen, 1)];
            case MarkerShape.Square:
                return [Closed(at, pen, 0, (-r, -r), (r, -r), (r, r), (-r, r))];
            case MarkerShape.OpenSquare:
                return [Closed(at, pen, 1, (-r, -r), (r, -r), (r, r), (-r, r))];
            case MarkerShape.Triangle:
                return [Closed(at, pen, 0, (0, -r), (r, r), (-r, r))];
            case MarkerShape.Diamond:
                return [Closed(at, pen, 1, (0, -r * 1.2), (r * 1.2, 0), (0, r * 1.2), (-r * 1.2, 0))];
            case MarkerShape.Plus:
                return
                [
                    Open(Stroke.Medium, new(at.X - r, at.Y), new(at.X + r, at.Y)),
                    Open(Stroke.Medium, new(at.X, at.Y - r), new(at.X, at.Y + r)),
                ];
            default:
                return
                [
                    Open(Stroke.Medium, new(at.X - r, at.Y - r), new(at.X + r, at.Y + r)),
                    Open(Stroke.Medium, new(at.X - r, at.Y + r), new(at.X + r, at.Y - r)),
                ];
        }
    }

    /// <summary>A filled arrow head with its tip at the end of a line.</summary>
    public static PaperItem ArrowHead(PaperPoint from, PaperPoint tip, double length)
    {
        double dx = tip.X - from.X;
        double dy = tip.Y - from.Y;
        double run = Math.Sqrt((dx * dx) + (dy * dy));
        if (run == 0)
        {
            return new PaperDisc(tip, length / 4, null, 0);
        }

        (double ux, double uy) = (dx / run * length, dy / run * length);
        const double Narrow = 0.38;
        ValueList<PaperPoint> ring =
        [
            tip,
            new(tip.X - ux - (uy * Narrow), tip.Y - uy + (ux * Narrow)),
            new(tip.X - ux + (uy * Narrow), tip.Y - uy - (ux * Narrow)),
        ];
        return new PaperPath([ring], true, null, 0);
    }

    private static PaperPath Open(Stroke pen, params ReadOnlySpan<PaperPoint> points) =>
        new([ValueList.Create(points)], false, pen);

    private static PaperPath Closed(PaperPoint at, Stroke pen, double fill, params (double X, double Y)[] corners) =>
        new([corners.Select(c => new PaperPoint(at.X + c.X, at.Y + c.Y)).ToValueList()], true, pen, fill);
}
