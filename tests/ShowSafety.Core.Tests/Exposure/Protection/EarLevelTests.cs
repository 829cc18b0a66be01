using CsCheck;
using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Tests.Exposure.Protection;

public sealed class EarLevelTests
{
    [Fact]
    public void LevelDbA_AnyProtector_NeverRaisesTheLevel() =>
        Gen.Select(Gen.Double[60, 140], Gen.Double[-3, 20], Gen.Double[0, 40], Gen.Double[0, 40], Gen.Double[0, 40])
            .Sample(
                (levelA, cMinusA, high, medium, low) =>
                {
                    var level = new PointLevel(BandValues.Uniform(levelA), levelA, levelA + cMinusA, 3);
                    HearingProtector hml = new()
                    {
                        HighDb = SamplePlan.Measured(high),
                        MediumDb = SamplePlan.Measured(medium),
                        LowDb = SamplePlan.Measured(low),
                    };
                    HearingProtector snr = new() { SnrDb = SamplePlan.Measured(medium) };
                    Assert.True(WornProtector.LevelDbA(hml, level) <= levelA);
                    Assert.True(WornProtector.LevelDbA(snr, level) <= levelA);
                }
            );

    [Fact]
    public void LevelDbA_NoRating_CannotTell() =>
        Assert.Null(WornProtector.LevelDbA(new(), new(BandValues.Zero, 100, 100, 0)));

    [Fact]
    public void HmlReduction_BothBranches_MeetAtTwo() =>
        Assert.Equal(
            EarLevel.HmlReductionDb(100, 102, 30, 25, 18),
            EarLevel.HmlReductionDb(100, 102.0000001, 30, 25, 18),
            5
        );

    [Theory]
    [InlineData(10, 40)]
    [InlineData(-2, -9)]
    public void HmlReduction_OutsideTheMethod_IsHeldAtItsEnds(double end, double beyond) =>
        Assert.Equal(
            EarLevel.HmlReductionDb(100, 100 + end, 30, 25, 18),
            EarLevel.HmlReductionDb(100, 100 + beyond, 30, 25, 18),
            9
        );

    [Fact]
    public void PartlyWorn_WornLess_NeverHelpsMore() =>
        Gen.Select(Gen.Double[0, 40], Gen.Double[0, 1], Gen.Double[0, 1])
            .Sample(
                (reduction, a, b) =>
                    Assert.True(
                        EarLevel.PartlyWornReductionDb(reduction, Math.Min(a, b))
                            <= EarLevel.PartlyWornReductionDb(reduction, Math.Max(a, b)) + 1e-9
                    )
            );

    [Fact]
    public void PartlyWorn_ShareOverOne_Refuses() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EarLevel.PartlyWornReductionDb(20, 1.1));

    // Classes of EN 458 with an action level of 85 dB(A), memory; 70 to 80 dB(A) is the target HSE names too.
    [Theory]
    [InlineData(80, 86, ProtectionFit.NotEnough)]
    [InlineData(60, 86, ProtectionFit.NotEnough)]
    [InlineData(76, 82, ProtectionFit.Usable)]
    [InlineData(72, 78, ProtectionFit.AsWanted)]
    [InlineData(69.9, 75, ProtectionFit.TooMuch)]
    [InlineData(70, 80, ProtectionFit.AsWanted)]
    [InlineData(80, 85, ProtectionFit.Usable)]
    public void Of_LevelAtTheEar_GivesTheClass(double lower, double upper, ProtectionFit expected) =>
        Assert.Equal(expected, ProtectionFits.Of(lower, upper));
}
