using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.People;

/// <summary>The level under a protector of the plan, by the best method its ratings allow.</summary>
public static class WornProtector
{
    /// <summary>
    /// Best estimate in dB(A) with the real-world allowance: HML where H, M and L are stated, otherwise SNR; null where
    /// neither is.
    /// </summary>
    public static double? LevelDbA(HearingProtector protector, PointLevel level) =>
        LevelDbA(protector, level.LevelDbA, level.LevelDbC);

    /// <summary>
    /// The same from levels in dB(A) and dB(C). Both raised by U give the result raised by U.
    /// </summary>
    public static double? LevelDbA(HearingProtector protector, double levelDbA, double levelDbC) =>
        CalculatedDbA(protector, levelDbA, levelDbC) is { } calculated ? EarLevel.Worn(calculated, levelDbA) : null;

    /// <summary>
    /// The highest level in dB(A) for any levels within two ranges; null where no rating is stated. The HML method is
    /// made of planes over the two levels that meet where their difference is -2, 2 or 10 dB, so the highest value lies
    /// at a corner of the range or where one of these lines leaves it.
    /// </summary>
    /// <param name="protector">The protector.</param>
    /// <param name="dbA">Least and most level in dB(A).</param>
    /// <param name="dbC">Least and most level in dB(C).</param>
    public static double? HighestDbA(
        HearingProtector protector,
        (double Least, double Most) dbA,
        (double Least, double Most) dbC
    )
    {
        double? highest = null;
        foreach (double a in (ReadOnlySpan<double>)[dbA.Least, dbA.Most])
        {
            Consider(a, dbC.Least);
            Consider(a, dbC.Most);
            foreach (double bend in EarLevel.BendsDb)
            {
                Consider(a, Math.Clamp(a + bend, dbC.Least, dbC.Most));
            }
        }

        foreach (double c in (ReadOnlySpan<double>)[dbC.Least, dbC.Most])
        {
            foreach (double bend in EarLevel.BendsDb)
            {
                Consider(Math.Clamp(c - bend, dbA.Least, dbA.Most), c);
            }
        }

        return highest;

        // No more than without protector comes last: the calculated level's highest may lie where that holds.
        void Consider(double a, double c) =>
            highest = CalculatedDbA(protector, a, c) is { } worn
                ? Math.Max(highest ?? double.NegativeInfinity, EarLevel.Worn(worn, dbA.Most))
                : highest;
    }

    /// <summary>Whether the ratings needed for a level at the ear are stated.</summary>
    public static bool IsRated(HearingProtector protector) =>
        protector is { HighDb: not null, MediumDb: not null, LowDb: not null } or { SnrDb: not null };

    private static double? CalculatedDbA(HearingProtector protector, double levelDbA, double levelDbC) =>
        protector switch
        {
            { HighDb: { } high, MediumDb: { } medium, LowDb: { } low } => levelDbA
                - EarLevel.HmlReductionDb(levelDbA, levelDbC, high.Value, medium.Value, low.Value),
            { SnrDb: { } snr } => EarLevel.SnrDbA(levelDbC, snr.Value),
            _ => null,
        };
}
