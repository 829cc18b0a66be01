using System.Globalization;

namespace ShowSafety.Brief.Drawing;

/// <summary>Numbers and greys as SVG writes them, whatever the machine's language.</summary>
internal static class SvgValues
{
    public static string Number(double value) =>
        (Math.Round(value, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);

    public static string Grey(double grey)
    {
        int level = (int)Math.Round(Math.Clamp(grey, 0, 1) * 255);
        return string.Create(CultureInfo.InvariantCulture, $"#{level:x2}{level:x2}{level:x2}");
    }
}
