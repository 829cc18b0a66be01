using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Tests.Sound;

public sealed class AirAbsorptionTests
{
    private static readonly Gen<AirState> AnyAir = Gen.Select(
        Gen.Double[-20, 50],
        Gen.Double[10, 100],
        Gen.Double[60, 110],
        (t, h, p) => new AirState(t, h, p)
    );

    [Fact]
    public void BandsDecibelsPerKilometre_AnyAirInRange_RisesWithFrequencyAndIsPositive() =>
        AnyAir.Sample(air =>
        {
            BandValues bands = AirAbsorption.BandsDecibelsPerKilometre(air);
            Assert.True(bands[0] > 0);
            Assert.All(Enumerable.Range(1, 7), band => Assert.True(bands[band] > bands[band - 1]));
        });

    [Fact]
    public void PowerCoefficientPerMetre_AKilometre_TakesOffTheDecibels()
    {
        double perMetre = AirAbsorption.PowerCoefficientPerMetre(4.66);

        Assert.Equal(4.66, -10 * Math.Log10(Math.Exp(-perMetre * 1000)), 1e-9);
    }
}
