using System.Globalization;

namespace ShowSafety.Core.Sums;

/// <summary>Writes the lines of a calculation the same on every machine.</summary>
internal static class SumLines
{
    /// <summary>A line with its numbers in invariant form.</summary>
    public static string Line(FormattableString line) => line.ToString(CultureInfo.InvariantCulture);
}
