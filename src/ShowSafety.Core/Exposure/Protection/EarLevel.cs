using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure.Protection;

/// <summary>
/// A-weighted level under a hearing protector by the methods of ISO 4869-2:2018. None of them contains the allowance
/// for real-world wear, which <see cref="Worn"/> adds; and no protector makes it louder than without.
/// </summary>
public static class EarLevel
{
    /// <summary>Allowance for imperfect fit in daily use, in dB (HSE L108, 2021: 4 dB for all three methods).</summary>
    public const double RealWorldAllowanceDb = 4;

    /// <summary>Smallest L_C − L_A the HML method is used with, in dB.</summary>
    public const double LeastCMinusADb = -2;

    /// <summary>Largest L_C − L_A the HML method is used with, in dB.</summary>
    public const double MostCMinusADb = 10;

    /// <summary>Values of L_C − L_A where the HML method bends, in dB.</summary>
    internal static double[] BendsDb { get; } = [LeastCMinusADb, HmlBendDb, MostCMinusADb];

    private const double HmlBendDb = 2;

    /// <summary>
    /// Octave band method (cl. 6): 10 lg Σ 10^(0.1(L_Af − APV_f)) in dB(A), all eight bands.
    /// </summary>
    /// <param name="aWeightedBandsDb">A-weighted octave band levels in dB.</param>
    /// <param name="assumedProtectionDb">Assumed protection values in dB.</param>
    public static double OctaveBandDbA(BandValues aWeightedBandsDb, BandValues assumedProtectionDb) =>
        Decibels.Sum(aWeightedBandsDb - assumedProtectionDb);

    /// <summary>
    /// Predicted noise level reduction by the HML method in dB (cl. 7): M − (H−M)/4·(L_C−L_A−2) up to a difference of
    /// 2 dB, M − (M−L)/8·(L_C−L_A−2) above; the difference is held within −2 to 10 dB.
    /// </summary>
    public static double HmlReductionDb(double levelDbA, double levelDbC, double highDb, double mediumDb, double lowDb)
    {
        double beyond = Math.Clamp(levelDbC - levelDbA, LeastCMinusADb, MostCMinusADb) - HmlBendDb;
        double slope = beyond <= 0 ? (highDb - mediumDb) / 4 : (mediumDb - lowDb) / 8;
        return mediumDb - (slope * beyond);
    }

    /// <summary>SNR method (cl. 8): L_C − SNR in dB(A).</summary>
    public static double SnrDbA(double levelDbC, double snrDb) => levelDbC - snrDb;

    /// <summary>
    /// The level to reckon with in daily wear: the calculated one plus the real-world allowance, at most the level
    /// without protector.
    /// </summary>
    public static double Worn(double calculatedDbA, double unprotectedDbA) =>
        Math.Min(calculatedDbA + RealWorldAllowanceDb, unprotectedDbA);

    /// <summary>
    /// Reduction left of a protector that is worn only a part of the time: −10 lg[ w·10^(−R/10) + (1 − w) ] in dB
    /// (equal energy; the principle of EN 458).
    /// </summary>
    /// <param name="reductionDb">Reduction while worn, zero or more dB.</param>
    /// <param name="wornShare">Share of the time it is worn, 0 to 1.</param>
    public static double PartlyWornReductionDb(double reductionDb, double wornShare) =>
        wornShare is >= 0 and <= 1
            ? -Decibels.FromEnergy((wornShare * Decibels.ToEnergy(-reductionDb)) + (1 - wornShare))
            : throw new ArgumentOutOfRangeException(nameof(wornShare), wornShare, "A share is from 0 to 1.");

    /// <summary>
    /// Most that plug and muff together give, in dB: the better one plus 6 dB (HSE L108). Ratings are never added.
    /// </summary>
    public static double DoubleReductionDb(double firstDb, double secondDb) => Math.Max(firstDb, secondDb) + 6;
}
