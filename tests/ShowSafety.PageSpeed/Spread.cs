using System.Globalization;

namespace ShowSafety.PageSpeed;

/// <summary>Middle and upper end of measured times in milliseconds.</summary>
/// <param name="P50">Half are shorter.</param>
/// <param name="P95">One in twenty is longer.</param>
internal readonly record struct Spread(double P50, double P95)
{
    /// <summary>Of at least one value.</summary>
    /// <exception cref="InvalidOperationException">Nothing was measured.</exception>
    public static Spread Of(double[] values)
    {
        if (values.Length == 0)
        {
            throw new InvalidOperationException(
                "Nothing was measured: no zones were drawn while the bench was dragged."
            );
        }

        double[] sorted = [.. values.Order()];
        return new(At(sorted, 0.5), At(sorted, 0.95));
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{P50:0.0} / {P95:0.0} ms");

    // Nearest rank.
    private static double At(double[] sorted, double share) =>
        sorted[Math.Max(0, (int)Math.Ceiling(share * sorted.Length) - 1)];
}
