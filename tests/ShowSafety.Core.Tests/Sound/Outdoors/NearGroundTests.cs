using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;

namespace ShowSafety.Core.Tests.Sound.Outdoors;

public sealed class NearGroundTests
{
    private static readonly Gen<double> Height = Gen.Double[0, 6];
    private static readonly Gen<double> Factor = Gen.Double[0, 1];

    // Source 1.0 m, microphone 1.5 m high: D_Ω after ISO 9613-2:1996 equation (11). Derived.
    [Theory]
    [InlineData(1, 0.69)]
    [InlineData(2, 1.51)]
    [InlineData(3, 2.06)]
    [InlineData(5, 2.57)]
    [InlineData(10, 2.89)]
    public void ImageDb_NearTheSource_IsLessThanThreeDecibels(double flat, double expected) =>
        Assert.Equal(expected, NearGround.ImageDb(flat, 1, 1.5, 0), 0.005);

    // Hard ground within its end regions is direct sound and floor image, nothing else, with the air of both ways.
    [Fact]
    public void FlatPath_HardGroundNearBy_IsDirectSoundAndFloorImage() =>
        Gen.Select(Gen.Double[0.2, 300], Height, Height, Gen.Double[0, 0.03])
            .Where((flat, source, receiver, _) => flat <= 30 * (source + receiver))
            .Sample(
                (flat, source, receiver, air) =>
                {
                    double image = OutdoorPath.HardGroundFactor(flat, source, receiver, air);
                    var path = FlatPath.Of(GroundFactors.Even(0), flat, source, receiver, BandValues.Uniform(air));
                    Assert.All(path.LossDb, loss => Assert.Equal(Decibels.FromEnergy(image), -loss, 1e-9));
                }
            );

    // Half-sphere spreading: from ten times the heights on, image and source are equally far to a hundredth.
    [Fact]
    public void FlatPath_FarOverHardGround_IsHalfSphereSpreadingInsideItsRegion() =>
        Gen.Select(Gen.Double[0.3, 3], Gen.Double[0.3, 3], Gen.Double[10, 30])
            .Sample(
                (source, receiver, heights) =>
                {
                    double flat = heights * (source + receiver);
                    var path = FlatPath.Of(GroundFactors.Even(0), flat, source, receiver, BandValues.Zero);
                    double half = SoundPower.HemisphereDb(OutdoorPath.SlantMetres(flat, source - receiver));
                    Assert.All(path.LossDb, loss => Assert.Equal(half, loss, 0.03));
                }
            );

    // T01 of ISO/TR 17534-3:2015 (memory): the near ground moves it by no more than 0.001 dB (derived).
    [Fact]
    public void AttenuationDb_CaseT01_IsWithinAHundredthOfTheStandard()
    {
        double flat = Math.Sqrt((190 * 190) + (40 * 40));
        double plain = GroundEffect.AttenuationDb(3, 0, flat, 1, 4);

        double near = NearGround.AttenuationDb(3, GroundFactors.Even(0), flat, 1, 4, 0);

        // Beside that the gain is 10 lg 2 = 3.0103 dB, which Table 3 rounds to 3.
        Assert.Equal(plain, near - (3 - (10 * Math.Log10(2))), 0.001);
    }

    [Fact]
    public void AttenuationDb_SofterGround_IsNeverLouderInTheBandsItDamps() =>
        Gen.Select(Gen.Int[1, 7], Gen.Double[0.1, 800], Gen.Select(Height, Height), Factor.Array[3], Factor.Array[3])
            .Sample(
                (band, flat, heights, low, more) =>
                {
                    double Loss(Func<int, double> g) =>
                        NearGround.AttenuationDb(band, new(g(0), g(1), g(2)), flat, heights.Item1, heights.Item2, 0);
                    double hard = Loss(i => low[i]);
                    double soft = Loss(i => low[i] + (more[i] * (1 - low[i])));
                    Assert.True(soft >= hard - 1e-9, $"{soft} under {hard}");
                }
            );

    [Fact]
    public void AttenuationDb_LowestBand_DoesNotKnowTheGround() =>
        Gen.Select(Gen.Double[0.1, 800], Factor)
            .Sample(
                (flat, factor) =>
                    Assert.Equal(
                        NearGround.AttenuationDb(0, GroundFactors.Even(0), flat, 1, 1.5, 0),
                        NearGround.AttenuationDb(0, GroundFactors.Even(factor), flat, 1, 1.5, 0),
                        1e-12
                    )
            );
}
