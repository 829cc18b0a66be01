using ShowSafety.Core.Exhaust;

namespace ShowSafety.Core.Tests.Exhaust;

public sealed class ImpingementTests
{
    [Theory]
    [InlineData(1000, 0.01, 6)]
    [InlineData(23000, 0.05, 6)]
    [InlineData(23000, 0.01, 13)]
    [InlineData(500000, 0.01, 6)]
    public void Nusselt_OutsideTheCorrelation_IsRefused(double reynolds, double area, double distance) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Impingement.Nusselt(reynolds, 0.71, area, distance));

    [Theory]
    [InlineData(8.3)]
    [InlineData(2)]
    [InlineData(0)]
    public void PressureShare_InsideTheCore_IsOne(double diameters) =>
        Assert.Equal(1, Impingement.PressureShare(diameters));

    // Beltaos and Rajaratnam against the free jet of Fischer's constant: 31.8 against 24.5 T/H².
    [Fact]
    public void PressurePascals_AgainstTheFreeJet_IsTheLarger()
    {
        Assert.Equal(31.8, Impingement.PressurePascals(1, 1), 0.05);
        Assert.Equal(24.5, Impingement.FreeJetPressurePascals(7, 1, 1), 0.01);
    }

    [Fact]
    public void WallRiseRatio_InsideTheCore_IsOne() => Assert.Equal(1, Impingement.WallRiseRatio(5, 1, 3, 0));

    // Force of the fit by a numerical integral of its pressure over the wall, over ρ U² π d²/4.
    [Fact]
    public void ForceShare_NumericalIntegral_Agrees()
    {
        double sum = Enumerable
            .Range(0, 10000)
            .Select(i => (i + 0.5) * 1e-4)
            .Sum(r => 2 * Math.PI * r * Impingement.PressureProfile(r) * 1e-4 * Impingement.PressurePascals(1, 1));

        Assert.Equal(sum, Impingement.ForceShare, 1e-4);
    }

    [Fact]
    public void Reach_Suction_InvertsTheSpeed()
    {
        double area = 0.003;
        double reach = Suction.OpeningReach(0.3, 3.4, area);

        Assert.Equal(3.4, Suction.OpeningSpeed(0.3, reach, area), 1e-9);
        Assert.Equal(0.3, Suction.OpeningFlow(3.4, reach, area, false), 1e-9);
        Assert.Equal(3.4, Suction.WallSinkSpeed(0.3, Suction.WallSinkReach(0.3, 3.4)), 1e-9);
        Assert.Equal(0, Suction.OpeningReach(0.001, 3.4, area));
    }
}
