namespace ShowSafety.Core.Measures;

/// <summary>
/// The eight octave bands from 63 Hz to 8 kHz. Index 0 is 63 Hz, index 7 is 8 kHz. Calculations use the exact
/// base-10 midbands of IEC 61260-1:2014; people read the nominal names.
/// </summary>
public static class OctaveBand
{
    /// <summary>Number of bands: 8.</summary>
    public const int Count = 8;

    private static readonly double[] Exact = [.. Enumerable.Range(-4, Count).Select(k => 1000 * Math.Pow(10, 0.3 * k))];

    private static readonly int[] Nominal = [63, 125, 250, 500, 1000, 2000, 4000, 8000];

    /// <summary>Exact midband frequency 1000·10^(3k/10) in hertz of band <paramref name="index"/> (0 to 7).</summary>
    public static double MidbandHertz(int index) => Exact[index];

    /// <summary>Nominal midband frequency in hertz of band <paramref name="index"/> (0 to 7), for display only.</summary>
    public static int NominalHertz(int index) => Nominal[index];

    /// <summary>Nominal name of band <paramref name="index"/>: "63", "125", … "8k".</summary>
    public static string Name(int index) =>
        Nominal[index] < 1000
            ? Nominal[index].ToString(System.Globalization.CultureInfo.InvariantCulture)
            : (Nominal[index] / 1000).ToString(System.Globalization.CultureInfo.InvariantCulture) + "k";
}
