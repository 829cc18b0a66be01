using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>How a line is broken up. Six ways that stay apart in black and white.</summary>
internal enum LineStyle
{
    Solid,
    Dashed,
    LongDashed,
    Dotted,
    DashDotted,
}

/// <summary>A pen: width on paper, line style, and grey from 0 (black) to 1 (white).</summary>
internal sealed record Stroke(double WidthMillimetres, LineStyle Style = LineStyle.Solid, double Grey = 0)
{
    public static readonly Stroke Hairline = new(0.13);
    public static readonly Stroke Thin = new(0.25);
    public static readonly Stroke Medium = new(0.5);
    public static readonly Stroke Heavy = new(0.9);

    /// <summary>Dash and gap lengths in millimetres, in turn; empty for a solid line.</summary>
    public ValueList<double> DashesMillimetres =>
        Style switch
        {
            LineStyle.Dashed => [2.2, 1.2],
            LineStyle.LongDashed => [5, 1.4],
            LineStyle.Dotted => [Math.Max(0.3, WidthMillimetres), Math.Max(0.9, 2 * WidthMillimetres)],
            LineStyle.DashDotted => [4, 1, 0.6, 1],
            _ => [],
        };
}
