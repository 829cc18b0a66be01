using CsCheck;
using ShowSafety.Core.Exhaust;

namespace ShowSafety.Core.Tests.Exhaust;

public sealed class RoundJetTests
{
    // J15: the closed integrals against Simpson sums over the section, b = 0.5 m, 10 m/s, λ = 1.19.
    [Fact]
    public void Integrals_GaussianJet_EqualNumericalIntegrals()
    {
        double momentum = OverSection(r => Speed(r) * Speed(r));
        double scalar = OverSection(r => Speed(r) * Math.Exp(-(r * r) / (0.595 * 0.595)));
        double volume = OverSection(Speed);

        Assert.Equal(momentum, RoundJet.Momentum(0.5, 10), 1e-4 * momentum);
        Assert.Equal(scalar, RoundJet.ScalarFlow(0.5, 10, 1, 1.19), 1e-4 * scalar);
        Assert.Equal(volume, RoundJet.VolumeFlow(0.5, 10), 1e-4 * volume);

        static double Speed(double r) => 10 * Math.Exp(-(r * r) / 0.25);
    }

    [Fact]
    public void CentreRatio_NearTheNozzle_IsNotOverOne() => Assert.Equal(1, RoundJet.CentreRatio(6.2, 1, 2, 0));

    [Fact]
    public void CentreRatio_AtTheVirtualOrigin_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundJet.CentreRatio(6.2, 1, 4, 4));

    // Decided set of Fischer et al. 1979 (memory): mean flow carries 0.88 of the momentum flux.
    [Fact]
    public void MomentumShare_DecidedSet_IsThatOfTheMeanFlow()
    {
        double slope = JetConstants.SpeedWidthSlope * Math.Sqrt(Math.Log(2));

        Assert.Equal(0.88, RoundJet.MomentumShare(JetConstants.DecayConstant(7.0), slope), 0.01);
    }

    [Fact]
    public void MomentumShare_ConservingConstant_IsOne() =>
        Gen.Double[0.05, 0.2]
            .Sample(slope =>
                Math.Abs(RoundJet.MomentumShare(RoundJet.DecayConservingMomentum(slope), slope) - 1) < 1e-12
            );

    [Fact]
    public void MassFlowRatio_AtTheNozzle_IsOne() => Assert.Equal(1, RoundJet.MassFlowRatio(0, 0.3));

    private static double OverSection(Func<double, double> value)
    {
        const int steps = 4000;
        const double end = 5;
        const double width = end / steps;
        return Enumerable.Range(0, steps).Select(i => (i + 0.5) * width).Sum(r => 2 * Math.PI * r * value(r) * width);
    }
}
