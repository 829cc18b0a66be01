using CsCheck;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Tests.Exposure;

public sealed class LevelWindowsTests
{
    private static readonly Gen<(TimeStretch Stretch, double LevelDbA)[]> Programme = Gen.Select(
            Gen.Double[1, 1800],
            Gen.Double[0, 1800],
            Gen.Double[60, 130]
        )
        .Array[1, 6]
        .Select(steps =>
        {
            double at = 36_000;
            var stretches = new List<(TimeStretch, double)>();
            foreach ((double runs, double rests, double level) in steps)
            {
                stretches.Add((new(at, at + runs), level));
                at += runs + rests;
            }

            return stretches.ToArray();
        });

    [Fact]
    public void WorstDbA_AnyOtherPosition_IsNotWorse() =>
        Gen.Select(Programme, Gen.Double[34_000, 48_000], Gen.Double[5, 60])
            .Sample(
                (stretches, start, minutes) =>
                {
                    double worst = LevelWindows.WorstDbA(stretches, minutes, WindowKind.Sliding, 50);
                    Assert.True(Mean(stretches, start, 60 * minutes, 50) <= worst + 1e-9);
                }
            );

    [Fact]
    public void WorstDbA_ClockWindow_IsNeverWorseThanSliding() =>
        Programme.Sample(stretches =>
            Assert.True(
                LevelWindows.WorstDbA(stretches, 15, WindowKind.Clock, 50)
                    <= LevelWindows.WorstDbA(stretches, 15, WindowKind.Sliding, 50) + 1e-9
            )
        );

    [Fact]
    public void WorstDbA_RunAcrossTheQuarter_ClockSplitsIt()
    {
        (TimeStretch, double)[] run = [(new(600, 1200), 100)];

        Assert.Equal(100 + (10 * Math.Log10(600.0 / 900)), LevelWindows.WorstDbA(run, 15, WindowKind.Sliding, -200), 9);
        Assert.Equal(100 + (10 * Math.Log10(300.0 / 900)), LevelWindows.WorstDbA(run, 15, WindowKind.Clock, -200), 9);
    }

    [Fact]
    public void WorstDbA_NothingRuns_IsBackground() =>
        Assert.Equal(63, LevelWindows.WorstDbA([], 15, WindowKind.Sliding, 63), 9);

    [Fact]
    public void WorstDbA_WindowLongerThanTheEvent_IsFilledWithBackground() =>
        Assert.Equal(
            Decibels.FromEnergy((0.25 * Decibels.ToEnergy(100)) + (0.75 * Decibels.ToEnergy(70))),
            LevelWindows.WorstDbA([(new(0, 3600), 100)], 240, WindowKind.Sliding, 70),
            9
        );

    [Fact]
    public void Starts_NoLength_Refuses() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LevelWindows.Starts([], 0, WindowKind.Sliding));

    private static double Mean(
        (TimeStretch Stretch, double LevelDbA)[] stretches,
        double start,
        double seconds,
        double background
    )
    {
        double heard = stretches.Sum(s => s.Stretch.SecondsWithin(start, start + seconds));
        double energy = stretches.Sum(s =>
            s.Stretch.SecondsWithin(start, start + seconds) * Decibels.ToEnergy(s.LevelDbA)
        );
        return Decibels.FromEnergy((energy + ((seconds - heard) * Decibels.ToEnergy(background))) / seconds);
    }
}
