using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>
/// One family of parallel hatch lines. The angle is that of the line itself on paper, in degrees anticlockwise from
/// the horizontal, from 0 up to but not including 180.
/// </summary>
internal sealed record HatchLines(double AngleDegrees, double SpacingMillimetres, double WidthMillimetres);

/// <summary>Dots on a square grid.</summary>
internal sealed record HatchDots(double SpacingMillimetres, double DiameterMillimetres);

/// <summary>A hatch: lines, dots or both, in black on whatever lies below.</summary>
internal sealed record Hatch(string Name, ValueList<HatchLines> Lines, HatchDots? Dots = null)
{
    /// <summary>Share of the paper that is inked, from 0 to 1, overlaps counted once on average.</summary>
    public double InkShare
    {
        get
        {
            double white = Lines.Aggregate(1.0, (rest, l) => rest * (1 - (l.WidthMillimetres / l.SpacingMillimetres)));
            if (Dots is { } dots)
            {
                double radius = dots.DiameterMillimetres / 2;
                white *= 1 - (Math.PI * radius * radius / (dots.SpacingMillimetres * dots.SpacingMillimetres));
            }

            return 1 - white;
        }
    }
}

/// <summary>
/// Our own hatches. They differ in direction, or in being lines or dots, before they differ in weight, so that two of
/// them side by side stay apart on a poor photocopy.
/// </summary>
internal static class Hatches
{
    public static readonly Hatch Rising = new("rising", [new(45, 2.6, 0.22)]);
    public static readonly Hatch Falling = new("falling", [new(135, 2.6, 0.22)]);
    public static readonly Hatch RisingHeavy = new("rising-heavy", [new(45, 3.6, 0.75)]);
    public static readonly Hatch Crossed = new("crossed", [new(45, 3.2, 0.22), new(135, 3.2, 0.22)]);
    public static readonly Hatch Level = new("level", [new(0, 2, 0.18)]);
    public static readonly Hatch Upright = new("upright", [new(90, 2, 0.18)]);
    public static readonly Hatch Squared = new("squared", [new(0, 2.8, 0.16), new(90, 2.8, 0.16)]);
    public static readonly Hatch Shallow = new("shallow", [new(20, 3, 0.2)]);
    public static readonly Hatch Steep = new("steep", [new(110, 3, 0.2)]);
    public static readonly Hatch CrossedShallow = new("crossed-shallow", [new(20, 3.6, 0.2), new(160, 3.6, 0.2)]);
    public static readonly Hatch Dotted = new("dotted", [], new(2.4, 0.5));
    public static readonly Hatch DottedHeavy = new("dotted-heavy", [], new(2.8, 1.3));
    public static readonly Hatch DottedRising = new("dotted-rising", [new(60, 4, 0.2)], new(2.6, 0.5));
    public static readonly Hatch DottedLevel = new("dotted-level", [new(0, 4, 0.2)], new(2.6, 0.5));

    public static readonly ValueList<Hatch> All =
    [
        Rising,
        Falling,
        RisingHeavy,
        Crossed,
        Level,
        Upright,
        Squared,
        Shallow,
        Steep,
        CrossedShallow,
        Dotted,
        DottedHeavy,
        DottedRising,
        DottedLevel,
    ];
}
