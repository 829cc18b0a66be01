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
