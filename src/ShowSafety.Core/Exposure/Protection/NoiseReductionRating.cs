namespace ShowSafety.Core.Exposure.Protection;

/// <summary>
/// Estimates with the United States' noise reduction rating NRR, 29 CFR 1910.95 App. B and OSHA's field practice. The
/// plan itself uses SNR or HML; these serve people who hold a box with an NRR printed on it.
/// </summary>
public static class NoiseReductionRating
{
    /// <summary>Bonus OSHA grants a second protector over the better one, in dB.</summary>
    public const double SecondProtectorDb = 5;

    /// <summary>What is taken off an NRR for use with A-weighted levels, in dB.</summary>
    public const double AWeightingDb = 7;

    /// <summary>TWA_C − NRR in dB(A).</summary>
    public static double FromCWeightedDbA(double averageDbC, double ratingDb) => averageDbC - ratingDb;

    /// <summary>TWA_A − (NRR − 7), or with half of it for field use, in dB(A).</summary>
    /// <param name="averageDbA">Time-weighted average without protector in dB(A).</param>
    /// <param name="ratingDb">NRR in dB.</param>
    /// <param name="halved">Whether only half the reduction is counted.</param>
    public static double FromAWeightedDbA(double averageDbA, double ratingDb, bool halved) =>
        averageDbA - ReductionDb(ratingDb, halved);

    /// <summary>Plug under muff: the reduction of the higher NRR plus 5 dB, the bonus not halved.</summary>
    public static double DoubleDbA(double averageDbA, double firstDb, double secondDb, bool halved) =>
        averageDbA - (ReductionDb(Math.Max(firstDb, secondDb), halved) + SecondProtectorDb);

    private static double ReductionDb(double ratingDb, bool halved) =>
        Math.Max(0, ratingDb - AWeightingDb) * (halved ? 0.5 : 1);
}
