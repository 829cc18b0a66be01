using CsCheck;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Tests.Sound.Sources.Reduction;

public sealed class StateInterpolationTests
{
    // U⁸ after Lighthill: between two levels 80 lg(U2/U1) apart the share gives 80 lg(U/U1). Derived.
    [Fact]
    public void Share_LevelsOfTheEighthPower_LieOnTheLine() =>
        Gen.Select(Gen.Double[50, 300], Gen.Double[1.01, 3], Gen.Double[0, 1])
            .Sample(
                (lower, ratio, part) =>
                {
                    double upper = lower * ratio;
                    double wanted = lower + (part * (upper - lower));
                    double share = StateInterpolation.Share(lower, upper, wanted) ?? double.NaN;
                    Assert.Equal(
                        JetNoise.SpeedChangeDb(lower, wanted),
                        share * JetNoise.SpeedChangeDb(lower, upper),
                        1e-9
                    );
                }
            );

    [Theory]
    [InlineData(100, 200, 99.9)]
    [InlineData(100, 200, 200.1)]
    [InlineData(200, 100, 150)]
    [InlineData(100, 100, 100)]
    [InlineData(0, 200, 100)]
    [InlineData(100, double.PositiveInfinity, 150)]
    [InlineData(100, 200, double.NaN)]
    public void Share_Outside_IsNone(double lower, double upper, double wanted) =>
        Assert.Null(StateInterpolation.Share(lower, upper, wanted));

    [Theory]
    [InlineData(100, 0)]
    [InlineData(200, 1)]
    [InlineData(141.4213562373095, 0.5)]
    public void Share_Inside_IsLogarithmic(double wanted, double share) =>
        Assert.Equal(share, StateInterpolation.Share(100, 200, wanted) ?? double.NaN, 1e-12);
}
