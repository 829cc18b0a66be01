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
        protector switch
        {
            { HighDb: { } high, MediumDb: { } medium, LowDb: { } low } => EarLevel.Worn(
                level.LevelDbA
                    - EarLevel.HmlReductionDb(level.LevelDbA, level.LevelDbC, high.Value, medium.Value, low.Value),
                level.LevelDbA
            ),
            { SnrDb: { } snr } => EarLevel.Worn(EarLevel.SnrDbA(level.LevelDbC, snr.Value), level.LevelDbA),
            _ => null,
        };

    /// <summary>Whether the ratings needed for a level at the ear are stated.</summary>
    public static bool IsRated(HearingProtector protector) =>
        protector is { HighDb: not null, MediumDb: not null, LowDb: not null } or { SnrDb: not null };
}
