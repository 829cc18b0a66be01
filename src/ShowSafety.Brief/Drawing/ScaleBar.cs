using System.Globalization;
using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Drawing;

/// <summary>A scale bar of four parts, black and white in turn, over a round number of metres.</summary>
internal static class ScaleBar
{
    private const double LongestMillimetres = 62;
    private const double BarHeight = 1.8;

    /// <summary>The longest of 1, 2, 4 or 5 times a power of ten metres that fits the bar.</summary>
    public static double LengthMetres(DrawingScale scale)
    {
        double most = scale.ToMetres(LongestMillimetres);
        double power = Math.Pow(10, Math.Floor(Math.Log10(most)));
        double[] steps = [5, 4, 2, 1];
        return steps.First(step => step * power <= most * (1 + 1e-12)) * power;
    }

    public static IEnumerable<PaperItem> Draw(DrawingScale scale, PaperPoint topLeft)
    {
        double metres = LengthMetres(scale);
        double part = scale.ToMillimetres(metres) / 4;
        double barTop = topLeft.Y + TextStyles.DrawingLabel.LeadingMillimetres + 0.6;
        for (int i = 0; i < 4; i++)
        {
            double x = topLeft.X + (i * part);
            yield return new PaperPath(
                [
                    [
                        new(x, barTop),
                        new(x + part, barTop),
                        new(x + part, barTop + BarHeight),
                        new(x, barTop + BarHeight),
                    ],
                ],
                true,
                Stroke.Thin,
                i % 2 == 0 ? 0 : 1
            );
        }

        foreach (double share in (double[])[0, 0.5, 1])
        {
            yield return Caption(metres * share, topLeft.X + (4 * part * share), topLeft.Y, share == 1);
        }

        yield return new PaperText(
            new(topLeft.X, barTop + BarHeight + 0.8 + TextStyles.DrawingStrong.BaselineMillimetres),
            $"Scale {scale}",
            TextStyles.DrawingStrong
        );
    }

    private static PaperText Caption(double metres, double middle, double top, bool withUnit)
    {
        TextStyle style = TextStyles.DrawingLabel;
        string number = metres.ToString("0.###", CultureInfo.InvariantCulture);
        double width = TextMeasure.WidthMillimetres(number, style);
        double left = metres == 0 ? middle : middle - (width / 2);
        return new(new(left, top + style.BaselineMillimetres), withUnit ? number + " m" : number, style);
    }
}
