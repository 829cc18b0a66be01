using CsCheck;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Tests.Exposure;

public sealed class ExposureLevelTests
{
    private static readonly Gen<LevelTime> Part = Gen.Select(
        Gen.Double[40, 140],
        Gen.Double[0.01, 8],
        (level, hours) => new LevelTime(level, hours)
    );

    [Fact]
    public void DailyDbA_NothingHeard_IsSilence() => Assert.Equal(Decibels.SilenceDb, ExposureLevel.DailyDbA());

    [Fact]
    public void DailyDbA_NegativeTime_Refuses() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ExposureLevel.DailyDbA(new LevelTime(80, -1)));

    [Fact]
    public void WeeklyDbA_EightDays_Refuses() =>
        Assert.Throws<ArgumentException>(() => ExposureLevel.WeeklyDbA(1, 2, 3, 4, 5, 6, 7, 8));

    [Fact]
    public void PeakDb_NoPressure_Refuses() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ExposureLevel.PeakDb(0));

    [Fact]
    public void DailyDbA_MoreTime_NeverLower() =>
        Gen.Select(Part.Array[1, 6], Part)
            .Sample(
                (parts, more) =>
                    Assert.True(ExposureLevel.DailyDbA(parts) <= ExposureLevel.DailyDbA([.. parts, more]) + 1e-9)
            );

    [Fact]
    public void DailyDbA_SplitTask_IsTheSame() =>
        Gen.Select(Part, Gen.Double[0.05, 0.95])
            .Sample(
                (part, share) =>
                    Assert.Equal(
                        ExposureLevel.DailyDbA(part),
                        ExposureLevel.DailyDbA(
                            part with
                            {
                                Hours = part.Hours * share,
                            },
                            part with
                            {
                                Hours = part.Hours * (1 - share),
                            }
                        ),
                        9
                    )
            );

    [Fact]
    public void SoundExposure_TwoParts_Adds() =>
        Gen.Select(Part, Part)
            .Sample(
                (a, b) =>
                {
                    double sum = Exposure(a) + Exposure(b);
                    double whole = ExposureLevel.SoundExposurePascalSquaredHours(ExposureLevel.DailyDbA(a, b), 8);
                    Assert.Equal(1, whole / sum, 9);
                }
            );

    private static double Exposure(LevelTime part) =>
        ExposureLevel.SoundExposurePascalSquaredHours(part.LevelDbA, part.Hours);
}
