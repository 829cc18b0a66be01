using System.Collections.Concurrent;
using System.Text;
using PdfSharp.Drawing;

namespace ShowSafety.Brief.Typesetting;

/// <summary>
/// Widths of text on paper. The PDF library sets characters by their own widths without kerning, so a line is the sum
/// of its characters, and each character is measured once.
/// </summary>
internal static class TextMeasure
{
    private const double SampleSizePoints = 1000;

    private static readonly ConcurrentDictionary<(Face Face, Rune Rune), double> Widths = new();

    private static readonly XGraphics Context = XGraphics.CreateMeasureContext(
        new XSize(1000, 1000),
        XGraphicsUnit.Point,
        XPageDirection.Downwards
    );

    private static readonly Lock Gate = new();

    public static double WidthMillimetres(string text, TextStyle style) =>
        WidthMillimetres(text, style.Face, style.SizePoints);

    public static double WidthMillimetres(string text, Face face, double sizePoints)
    {
        double shares = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            shares += Share(face, rune);
        }

        return Paper.ToMillimetres(shares * sizePoints);
    }

    /// <summary>The text cut so that it fits, ending in an ellipsis where anything was cut.</summary>
    public static string Fitted(string text, TextStyle style, double widthMillimetres)
    {
        if (WidthMillimetres(text, style) <= widthMillimetres)
        {
            return text;
        }

        Rune[] runes = [.. text.EnumerateRunes()];
        for (int count = runes.Length - 1; count > 0; count--)
        {
            string cut = string.Concat(runes.Take(count)).TrimEnd() + "…";
            if (WidthMillimetres(cut, style) <= widthMillimetres)
            {
                return cut;
            }
        }

        return "…";
    }

    private static double Share(Face face, Rune rune) => Widths.GetOrAdd((face, rune), Measure);

    private static double Measure((Face Face, Rune Rune) key)
    {
        lock (Gate)
        {
            XFont font = Typeface.Font(key.Face, SampleSizePoints);
            return Context.MeasureString(key.Rune.ToString(), font).Width / SampleSizePoints;
        }
    }
}
