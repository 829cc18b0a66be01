using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Tests.Sound.Sources;

public sealed class ReadingEnvelopeTests
{
    private static readonly Gen<DirectedReading[]> Readings = Gen.Select(
        Gen.Double[0, 180],
        Gen.Double[80, 140],
        (angle, level) => new DirectedReading(angle, BandValues.Uniform(level))
    ).Array[1, 5];

    [Fact]
    public void LevelsDb_SingleReadingAt90_AddsFourteenDecibelsAt40()
    {
        // Subsonic table (memory: Heller and Franken): +8 at 40 degrees, -6 at 90.
        var envelope = new ReadingEnvelope([new(90, BandValues.Uniform(100))], JetDirectivity.Subsonic, null);

        Assert.Equal(114, envelope.LevelsDb(40)[3], 1e-9);
    }

    [Fact]
    public void LevelsDb_SingleReadingAt40_TakesNothingOffAtTheIntake()
    {
        var envelope = new ReadingEnvelope([new(40, BandValues.Uniform(100))], JetDirectivity.Subsonic, null);

        Assert.Equal(100, envelope.LevelsDb(180)[3], 1e-9);
    }

    [Fact]
    public void LevelsDb_AwayFromReadings_IsNeverUnderTheNearestReading() =>
        Gen.Select(Readings, Gen.Double[0, 180])
            .Sample(
                (readings, angle) =>
                {
                    var envelope = new ReadingEnvelope(readings, JetDirectivity.Subsonic, null);
                    double nearest = readings.Min(r => Math.Abs(r.AngleDegrees - angle));
                    double least = readings
                        .Where(r => Math.Abs(r.AngleDegrees - angle) <= nearest + 1e-12)
                        .Min(r => r.LevelsDb[0]);
                    Assert.True(envelope.LevelsDb(angle)[0] >= least - 1e-9);
                }
            );

    [Fact]
    public void LevelsDb_InTheDirectionOfAReading_IsAtLeastTheReading() => Readings.Sample(AssertHoldsEveryReading);

    [Fact]
    public void LevelsDb_ReadingsWithinTenDegrees_HoldEveryReading() =>
        Gen.Select(
                Gen.Double[0, 10],
                Gen.Double[80, 140],
                (angle, level) => new DirectedReading(angle, BandValues.Uniform(level))
            )
            .Array[2, 6]
            .Sample(AssertHoldsEveryReading);

    [Fact]
    public void LevelsDb_LoudReadingNearerToItsNeighbourThanToTheOneItIsMergedWith_IsHeld()
    {
        // The reading at 4 degrees counts as one direction with that at 0, yet lies a degree from that at 5.
        var envelope = new ReadingEnvelope(
            [new(0, BandValues.Uniform(80)), new(4, BandValues.Uniform(120)), new(5, BandValues.Uniform(90))],
            JetDirectivity.Subsonic,
            null
        );

        Assert.Equal(120, envelope.LevelsDb(4)[0], 1e-9);
        Assert.InRange(envelope.LevelsDb(5)[0], 90, 120);
    }

    [Fact]
    public void SteepestDbPerDegree_ReadingsWithinTenDegrees_BoundsEveryStep() =>
        Gen.Select(
                Gen.Double[0, 10],
                Gen.Double[80, 140],
                (angle, level) => new DirectedReading(angle, BandValues.Uniform(level))
            )
            .Array[2, 6]
            .Sample(
                readings =>
                {
                    var envelope = new ReadingEnvelope(readings, JetDirectivity.Subsonic, null);
                    for (double angle = 0; angle < 20; angle += 0.05)
                    {
                        double step = envelope.LevelsDb(angle + 0.05)[0] - envelope.LevelsDb(angle)[0];
                        Assert.True(Math.Abs(step) <= (envelope.SteepestDbPerDegree * 0.05) + 1e-9);
                    }
                },
                iter: 30
            );

    [Fact]
    public void LevelsDb_OverAllAngles_HasNoJump() =>
        Gen.Select(Gen.Double[5, 80], Gen.Double[85, 175], Gen.Double[90, 130], Gen.Double[90, 130])
            .Sample(
                (first, second, low, high) =>
                {
                    var envelope = new ReadingEnvelope(
                        [new(first, BandValues.Uniform(low)), new(second, BandValues.Uniform(high))],
                        JetDirectivity.Subsonic,
                        null
                    );
                    for (double angle = 0; angle < 180; angle += 0.25)
                    {
                        double step = envelope.LevelsDb(angle + 0.25)[0] - envelope.LevelsDb(angle)[0];

                        // The steepest fade is 65 dB over 2.5 degrees, for readings 5 degrees apart.
                        Assert.True(Math.Abs(step) < 8, $"{step} dB at {angle} degrees");
                    }
                }
            );

    [Fact]
    public void SphereMeanDb_UniformPower_IsThePower() =>
        Assert.Equal(101.5, new UniformPower(BandValues.Uniform(101.5)).SphereMeanDb()[2], 1e-9);

    [Fact]
    public void Constructor_NoReading_Throws() =>
        Assert.Throws<ArgumentException>(() => new ReadingEnvelope([], JetDirectivity.Subsonic, null));

    [Fact]
    public void LevelsDb_ReadingWithoutDirection_IsAFloor()
    {
        var envelope = new ReadingEnvelope(
            [new(90, BandValues.Uniform(100))],
            JetDirectivity.Subsonic,
            BandValues.Uniform(105)
        );

        Assert.Equal(105, envelope.LevelsDb(180)[0], 1e-9);
    }

    private static void AssertHoldsEveryReading(DirectedReading[] readings)
    {
        var envelope = new ReadingEnvelope(readings, JetDirectivity.Subsonic, null);
        Assert.All(readings, r => Assert.True(envelope.LevelsDb(r.AngleDegrees)[0] >= r.LevelsDb[0] - 1e-9));
    }
}
