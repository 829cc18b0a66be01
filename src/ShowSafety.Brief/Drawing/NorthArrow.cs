using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Drawing;

/// <summary>An arrow to north, or the plain statement that north was not given.</summary>
internal static class NorthArrow
{
    private const double Reach = 5;

    /// <param name="northDegrees">Clockwise from the top of the drawing; null when not given.</param>
    /// <param name="middle">Where the arrow turns about.</param>
    /// <param name="whenUnknown">What is printed in place of the arrow.</param>
    public static IEnumerable<PaperItem> Draw(double? northDegrees, PaperPoint middle, string whenUnknown)
    {
        TextStyle style = TextStyles.DrawingStrong;
        if (northDegrees is not { } degrees)
        {
            double width = TextMeasure.WidthMillimetres(whenUnknown, style);
            return [new PaperText(new(middle.X + Reach - width, middle.Y), whenUnknown, style)];
        }

        double radians = degrees * Math.PI / 180;
        (double x, double y) = (Math.Sin(radians), -Math.Cos(radians));
        PaperPoint tip = new(middle.X + (x * Reach), middle.Y + (y * Reach));
        PaperPoint tail = new(middle.X - (x * Reach), middle.Y - (y * Reach));
        double letterWidth = TextMeasure.WidthMillimetres("N", style);
        PaperPoint letter = new(
            tip.X + (x * 2.2) - (letterWidth / 2),
            tip.Y + (y * 2.2) + (style.CapitalMillimetres / 2)
        );
        return
        [
            new PaperPath(
                [
                    [tail, tip],
                ],
                false,
                Stroke.Medium
            ),
            Markers.ArrowHead(tail, tip, 3.6),
            new PaperText(letter, "N", style),
        ];
    }
}
