using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>The part of the gate that asks how the spectrum of a reading is known and whether its levels agree.</summary>
internal static class SpectrumGate
{
    /// <summary>
    /// How far dB(C) may lie under dB(A): the weightings differ by no more than 1.9 dB the other way, in the 4 and 8 kHz
    /// bands (IEC 61672-1:2013, Table 3).
    /// </summary>
    public const double LeastCOverADb = -2;

    /// <summary>Parts of the uncertainty; says what is assumed and what disagrees.</summary>
    public static IEnumerable<UncertaintyPart> Pass(SoundMeasurement reading, ReadingLevels levels, Lapses say)
    {
        if (Math.Abs(levels.BandsShortDb) > ReadingLevels.DisagreementDb)
        {
            say.About(
                "sound.bands-and-level-disagree",
                Severity.Act,
                "SoundMeasurement.BandLevelsDb",
                SoundFindings.Decibels("difference", levels.BandsShortDb)
            );
        }

        if (reading.LevelDbC is { } c && double.IsFinite(c) && IsDoubtful(c, levels))
        {
            say.About(
                "sound.levels-doubtful",
                Severity.Act,
                "SoundMeasurement.LevelDbC",
                SoundFindings.Decibels("difference", c - levels.LevelDbA)
            );
            yield return LevelUncertainty.LevelsDoubtful;
        }

        if (levels.Origin != SpectrumOrigin.Measured)
        {
            SayOrigin(levels, say);
            yield return LevelUncertainty.SpectrumAssumed;
        }
    }

    private static bool IsDoubtful(double levelDbC, ReadingLevels levels) =>
        levels.Low?.Verdict == LowBandsVerdict.Doubtful || levelDbC < levels.LevelDbA + LeastCOverADb;

    private static void SayOrigin(ReadingLevels levels, Lapses say)
    {
        string code = levels.Origin switch
        {
            SpectrumOrigin.Borrowed => "sound.spectrum-borrowed",
            SpectrumOrigin.JetShape => "sound.spectrum-jet-shape",
            _ => "sound.spectrum-flat",
        };
        say.About(code, Severity.Note, "SoundMeasurement.BandLevelsDb");
        if (levels.Low is { Verdict: LowBandsVerdict.Raised, LowChangeDb: var raised })
        {
            say.About(
                "sound.low-bands-raised",
                Severity.Note,
                "SoundMeasurement.LevelDbC",
                SoundFindings.Decibels("raised", raised)
            );
        }
    }
}
