using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Tests.Sound;

public sealed class FrequencyWeightingTests
{
    [Fact]
    public void ADb_OneKilohertz_IsZero() => Assert.Equal(0, FrequencyWeighting.ADb(1000), 12);

    [Fact]
    public void ABandsDb_OctaveBands_AreTheWeightsAtExactMidbands() =>
        // IEC 61672-1:2013 Table 3 (via transcription).
        Assert.All(
            new[] { -26.2, -16.1, -8.6, -3.2, 0, 1.2, 1.0, -1.1 }.Zip(FrequencyWeighting.ABandsDb),
            pair => Assert.Equal(pair.First, pair.Second, 0.05)
        );

    [Fact]
    public void ExactThirdOctaveHertz_OctaveNumbers_AreTheOctaveMidbands()
    {
        for (int band = 0; band < OctaveBand.Count; band++)
        {
            Assert.Equal(
                OctaveBand.MidbandHertz(band),
                FrequencyWeighting.ExactThirdOctaveHertz(18 + (3 * band)),
                1e-9
            );
        }
    }

    [Fact]
    public void LevelDbA_AllBandsRaised_RisesAlike() =>
        Gen.Double[-60, 60]
            .Select(Gen.Double[0, 120].Array[8])
            .Sample(
                (rise, bands) =>
                {
                    var spectrum = BandValues.Of(bands);
                    double change =
                        FrequencyWeighting.LevelDbA(spectrum + rise) - FrequencyWeighting.LevelDbA(spectrum);
                    Assert.Equal(rise, change, 1e-9);
                }
            );

    [Fact]
    public void LevelDbC_AnySpectrum_IsNeverUnderTheAWeightedLevelByMoreThanTheLargestAWeight() =>
        Gen.Double[0, 120]
            .Array[8]
            .Sample(bands =>
            {
                var spectrum = BandValues.Of(bands);
                Assert.True(FrequencyWeighting.LevelDbA(spectrum) - FrequencyWeighting.LevelDbC(spectrum) < 2.0);
            });
}
