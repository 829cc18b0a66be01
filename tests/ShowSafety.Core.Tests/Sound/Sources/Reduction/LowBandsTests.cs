using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Tests.Sound.Sources.Reduction;

public sealed class LowBandsTests
{
    private static readonly Gen<BandValues> Spectrum = Gen.Double[40, 110].Array[8].Select(b => BandValues.Of(b));

    [Fact]
    public void Of_MoreDbCThanAssumed_MeetsBothLevels()
    {
        BandValues assumed = SoundPlans.Bands;
        double c = FrequencyWeighting.LevelDbC(assumed) + 1;

        var fitted = LowBands.Of(assumed, c);

        Assert.Equal(LowBandsVerdict.Raised, fitted.Verdict);
        Assert.Equal(c, FrequencyWeighting.LevelDbC(fitted.BandsDb), 1e-9);
        Assert.Equal(FrequencyWeighting.LevelDbA(assumed), FrequencyWeighting.LevelDbA(fitted.BandsDb), 1e-9);
        Assert.All(Enumerable.Range(0, 3), b => Assert.Equal(fitted.LowChangeDb, fitted.BandsDb[b] - assumed[b], 1e-9));
    }

    [Fact]
    public void Of_LessDbCThanAssumed_KeepsTheSpectrum()
    {
        var fitted = LowBands.Of(SoundPlans.Bands, FrequencyWeighting.LevelDbC(SoundPlans.Bands) - 5);

        Assert.Equal(LowBandsVerdict.Kept, fitted.Verdict);
        Assert.Equal(SoundPlans.Bands, fitted.BandsDb);
    }

    [Fact]
    public void Of_FarMoreDbC_IsDoubtfulAndLosesNoMoreThanThreeDecibelsAbove()
    {
        double c = FrequencyWeighting.LevelDbC(SoundPlans.Bands) + 25;

        var fitted = LowBands.Of(SoundPlans.Bands, c);

        Assert.Equal(LowBandsVerdict.Doubtful, fitted.Verdict);
        Assert.Equal(c, FrequencyWeighting.LevelDbC(fitted.BandsDb), 1e-9);
        Assert.Equal(3.01, SoundPlans.Bands[5] - fitted.BandsDb[5], 0.005);
    }

    [Fact]
    public void Of_AnySpectrum_IsNeverUnderTheDbAOrDbCRead() =>
        Gen.Select(Spectrum, Gen.Double[-20, 40])
            .Sample(
                (assumed, more) =>
                {
                    double a = FrequencyWeighting.LevelDbA(assumed);
                    double c = FrequencyWeighting.LevelDbC(assumed) + more;
                    var fitted = LowBands.Of(assumed, c);
                    Assert.True(FrequencyWeighting.LevelDbA(fitted.BandsDb) >= a - 1e-6);
                    Assert.True(FrequencyWeighting.LevelDbC(fitted.BandsDb) >= c - 1e-6);
                    Assert.True(fitted.LowChangeDb >= 0);
                }
            );
}
