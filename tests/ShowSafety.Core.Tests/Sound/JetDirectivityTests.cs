using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Tests.Sound;

public sealed class JetDirectivityTests
{
    [Fact]
    public void IndexDb_BothTables_HaveASphereMeanOfZero()
    {
        Assert.Equal(0, SphereMean.OfDb(JetDirectivity.Subsonic.IndexDb), 1e-9);
        Assert.Equal(0, SphereMean.OfDb(JetDirectivity.Choked.IndexDb), 1e-9);
    }

    [Theory]
    [InlineData(null, 900.0)]
    [InlineData(400.0, null)]
    [InlineData(355.0, 850.0)]
    public void For_SpeedUnknownOrUnderMachOne_IsSubsonic(double? speed, double? kelvin) =>
        Assert.Same(JetDirectivity.Subsonic, JetDirectivity.For(speed, kelvin));

    [Theory]
    [InlineData(650.0, 900.0)]
    [InlineData(700.0, 200.0)]
    public void For_MachOneOrMore_IsChoked(double speed, double kelvin) =>
        Assert.Same(JetDirectivity.Choked, JetDirectivity.For(speed, kelvin));

    [Fact]
    public void PrintedDb_AnyAngle_LiesBetweenItsNeighboursInTheTable() =>
        Gen.Double[0, 180]
            .Sample(angle =>
            {
                double below = JetDirectivity.Subsonic.PrintedDb(20 * Math.Floor(angle / 20));
                double above = JetDirectivity.Subsonic.PrintedDb(20 * Math.Ceiling(angle / 20));
                double here = JetDirectivity.Subsonic.PrintedDb(angle);
                Assert.InRange(here, Math.Min(below, above) - 1e-9, Math.Max(below, above) + 1e-9);
            });

    [Fact]
    public void ShapeDb_AnyPeak_IsScaledToZeroDbAAndFallsAwayFromThePeak() =>
        Gen.Double[100, 6000]
            .Sample(peak =>
            {
                BandValues shape = JetNoise.ShapeDb(peak);
                Assert.Equal(0, FrequencyWeighting.LevelDbA(shape), 1e-9);

                // Asymptotes +9 and -3 dB an octave (memory: f² and f⁻² of spectral density).
                Assert.InRange(shape[1] - shape[0], -3.1, 9.1);
                Assert.InRange(shape[7] - shape[6], -3.1, 9.1);
            });

    [Fact]
    public void ShapeDb_FarFromThePeak_HasTheAsymptotes()
    {
        BandValues high = JetNoise.ShapeDb(50_000);
        BandValues low = JetNoise.ShapeDb(5);

        Assert.Equal(9.03, high[1] - high[0], 0.05);
        Assert.Equal(-3.01, low[7] - low[6], 0.05);
    }
}
