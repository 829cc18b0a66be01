using CsCheck;
using ShowSafety.Core.Exposure;

namespace ShowSafety.Core.Tests.Exposure;

public sealed class DoseScaleTests
{
    private static readonly DoseScale Osha = new(90, 5);

    [Fact]
    public void DosePercent_TwoParts_Adds() =>
        Gen.Select(Gen.Double[70, 130], Gen.Double[0, 8], Gen.Double[70, 130], Gen.Double[0, 8])
            .Sample(
                (l1, h1, l2, h2) =>
                {
                    LevelTime a = new(l1, h1);
                    LevelTime b = new(l2, h2);
                    Assert.Equal(Osha.DosePercent(a) + Osha.DosePercent(b), Osha.DosePercent(a, b), 6);
                }
            );

    [Fact]
    public void DosePercent_HigherLevel_NeverLower() =>
        Gen.Select(Gen.Double[60, 130], Gen.Double[0, 20])
            .Sample(
                (level, more) =>
                {
                    DoseScale scale = Osha with { ThresholdDbA = 80 };
                    Assert.True(
                        scale.DosePercent(new LevelTime(level, 1)) <= scale.DosePercent(new LevelTime(level + more, 1))
                    );
                }
            );

    [Theory]
    [InlineData(80, 25)]
    [InlineData(79.999, 0)]
    public void DosePercent_AtThreshold_CountsFromThere(double levelDbA, double expected) =>
        Assert.Equal(expected, (Osha with { ThresholdDbA = 80 }).DosePercent(new LevelTime(levelDbA, 8)), 9);

    [Fact]
    public void TimeWeightedAverage_OfItsOwnDose_IsTheLevel() =>
        Gen.Select(Gen.Double[70, 130], Gen.Double[3, 6])
            .Sample(
                (level, exchange) =>
                {
                    var scale = new DoseScale(85, exchange);
                    Assert.Equal(level, scale.TimeWeightedAverageDbA(scale.DosePercent(new LevelTime(level, 8))), 9);
                }
            );

    [Fact]
    public void TimeWeightedAverage_NoDose_Refuses() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Osha.TimeWeightedAverageDbA(0));

    // 16.61 and 90 as printed in 29 CFR 1910.95 App. A.
    [Fact]
    public void TimeWeightedAverage_FiveDecibelExchange_HasThePrintedFactor() =>
        Assert.Equal((16.61 * Math.Log10(2.5)) + 90, Osha.TimeWeightedAverageDbA(250), 3);
}
