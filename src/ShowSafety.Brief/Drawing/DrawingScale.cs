using System.Globalization;

namespace ShowSafety.Brief.Drawing;

/// <summary>A round drawing scale, one to <see cref="Denominator"/>.</summary>
internal readonly record struct DrawingScale(int Denominator)
{
    // Scales of ISO 5455:1979 (1, 2, 5 and tens), with 1:250, 1:1250 and 1:2500 which British site plans use
    // (common practice, no source).
    private static readonly int[] Series = [20, 50, 100, 200, 250, 500, 1000, 1250, 2000, 2500, 5000, 10_000, 20_000];

    public double MillimetresPerMetre => 1000.0 / Denominator;

    public double ToMillimetres(double metres) => metres * 1000 / Denominator;

    public double ToMetres(double millimetres) => millimetres * Denominator / 1000;

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"1:{Denominator}");

    /// <summary>The largest round scale at which a box of the site fits a rectangle of paper.</summary>
    public static DrawingScale Fitting(MetreBox extent, double widthMillimetres, double heightMillimetres)
    {
        double needed = Math.Max(
            extent.WidthMetres * 1000 / widthMillimetres,
            extent.HeightMetres * 1000 / heightMillimetres
        );
        foreach (int denominator in Series)
        {
            if (denominator >= needed * (1 - 1e-12))
            {
                return new(denominator);
            }
        }

        double rounded = Math.Ceiling(needed / 10_000) * 10_000;
        return new((int)Math.Min(rounded, int.MaxValue));
    }
}
