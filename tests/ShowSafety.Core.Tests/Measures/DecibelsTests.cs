using CsCheck;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Tests.Measures;

public sealed class DecibelsTests
{
    private static readonly Gen<double> Level = Gen.Double[-50, 180];

    [Fact]
    public void Sum_NothingAtAll_IsSilence() => Assert.Equal(Decibels.SilenceDb, Decibels.Sum());

    [Theory]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    public void FromEnergy_ImpossibleEnergy_IsRefused(double energy) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Decibels.FromEnergy(energy));

    [Fact]
    public void Sum_TwoLevels_IsSymmetricAndNeverUnderTheLouder() =>
        Gen.Select(Level, Level)
            .Sample(
                (a, b) =>
                    Math.Abs(Decibels.Sum(a, b) - Decibels.Sum(b, a)) < 1e-9
                    && Decibels.Sum(a, b) >= Math.Max(a, b) - 1e-9
                    && Decibels.Sum(a, b) <= Math.Max(a, b) + 3.0104
            );

    [Fact]
    public void ToEnergy_ThereAndBack_IsTheSameLevel() =>
        Level.Sample(l => Math.Abs(Decibels.FromEnergy(Decibels.ToEnergy(l)) - l) < 1e-9);
}
