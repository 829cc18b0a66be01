using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>A point on paper in millimetres: x to the right, y down, from the top left corner.</summary>
internal readonly record struct PaperPoint(double X, double Y);

/// <summary>A rectangle on paper in millimetres.</summary>
internal readonly record struct PaperBox(double Left, double Top, double Width, double Height)
{
    public double Right => Left + Width;

    public double Bottom => Top + Height;

    public bool Overlaps(PaperBox other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(PaperBox other) =>
        other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    public bool Holds(PaperPoint point) => point.X >= Left && point.X <= Right && point.Y >= Top && point.Y <= Bottom;

    /// <summary>The point of the box nearest to a point; the point itself within.</summary>
    public PaperPoint Nearest(PaperPoint point) =>
        new(Math.Clamp(point.X, Left, Right), Math.Clamp(point.Y, Top, Bottom));

    /// <summary>Whether a straight line passes through the box.</summary>
    public bool IsCrossedBy(PaperPoint from, PaperPoint to)
    {
        double enter = 0;
        double leave = 1;
        return Cut(from.X, to.X, Left, Right, ref enter, ref leave)
            && Cut(from.Y, to.Y, Top, Bottom, ref enter, ref leave)
            && enter < leave;
    }

    private static bool Cut(double from, double to, double low, double high, ref double enter, ref double leave)
    {
        double run = to - from;
        if (run == 0)
        {
            return from > low && from < high;
        }

        double first = (low - from) / run;
        double second = (high - from) / run;
        enter = Math.Max(enter, Math.Min(first, second));
        leave = Math.Min(leave, Math.Max(first, second));
        return enter < leave;
    }

    public PaperBox Grown(double by) => new(Left - by, Top - by, Width + (2 * by), Height + (2 * by));
}

/// <summary>
/// The one place where metres become millimetres of paper: a round stated scale, the extent in the middle of its
/// window, y turned over.
/// </summary>
internal sealed record DrawingFrame(DrawingScale Scale, PaperBox Window, PlanPoint Centre)
{
    public static DrawingFrame Fit(MetreBox extent, PaperBox window) =>
        new(DrawingScale.Fitting(extent, window.Width, window.Height), window, extent.Centre);

    public PaperPoint ToPaper(PlanPoint point) =>
        new(
            Window.Left + (Window.Width / 2) + Scale.ToMillimetres(point.XMetres - Centre.XMetres),
            Window.Top + (Window.Height / 2) - Scale.ToMillimetres(point.YMetres - Centre.YMetres)
        );
}
