using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests;

public sealed class AssessedSoundWordsTests
{
    private static readonly Phrasebook Names = new(new Dictionary<string, string> { ["e"] = "Engine", ["w"] = "Barn" });

    private static readonly LevelTerms Terms = new(40, 120, 31, 0.2, -2.9, 0, 0, BandValues.Zero);

    private static readonly LevelTerms Screened = Terms with
    {
        ScreenDb = 8.4,
        ScreenBandsDb = BandValues.Of(5, 6, 8, 10, 13, 16, 19, 19),
    };

    private static LevelPart Part(LevelPartKind kind, LevelTerms? terms) =>
        new("e", kind, kind == LevelPartKind.Straight ? null : "w", 91.7, BandValues.Uniform(80), terms);

    [Fact]
    public void Of_StraightOverAHardFloor_SaysWhatTheGroundAdds() =>
        Assert.Equal(
            "Straight from Engine: 91.7 dB(A) of a power level of 120.0 dB(A) at 40° from the exhaust, taken off "
                + "31.0 dB by distance and 0.2 dB by the air; the ground adds 2.9 dB.",
            Plain(AssessedSoundWords.Of(Part(LevelPartKind.Straight, Terms), Names))
        );

    [Fact]
    public void Of_BehindAScreen_SaysWhatItTakesOff() =>
        Assert.Contains(
            "8.4 dB by what stands in the way (5.0 dB at 63 Hz, 19.0 dB at 8 kHz)",
            Plain(AssessedSoundWords.Of(Part(LevelPartKind.Straight, Screened), Names)),
            StringComparison.Ordinal
        );

    [Fact]
    public void Of_Wall_NamesIt() =>
        Assert.StartsWith(
            "Engine thrown back by Barn: 91.7 dB(A) of",
            Plain(AssessedSoundWords.Of(Part(LevelPartKind.Wall, Terms), Names)),
            StringComparison.Ordinal
        );

    [Fact]
    public void Of_Room_IsOneShortSentence() =>
        Assert.Equal(
            "Engine as the sound of Barn: 91.7 dB(A).",
            Plain(AssessedSoundWords.Of(Part(LevelPartKind.Room, null), Names))
        );

    private static string Plain(string sentence) => sentence.Replace('\u00A0', ' ');
}
