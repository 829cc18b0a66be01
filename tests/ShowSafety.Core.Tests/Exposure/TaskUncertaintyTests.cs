using CsCheck;
using ShowSafety.Core.Exposure;

namespace ShowSafety.Core.Tests.Exposure;

public sealed class TaskUncertaintyTests
{
    [Fact]
    public void Predicted_SplitTask_DoesNotShrink() =>
        Gen.Select(Gen.Double[70, 120], Gen.Double[0.5, 8], Gen.Int[2, 20], Gen.Double[0.5, 4])
            .Sample(
                (level, hours, pieces, common) =>
                {
                    DayTask[] split = [.. Enumerable.Repeat(new DayTask(level, hours / pieces, 0, 0), pieces)];
                    double whole = TaskUncertainty.Predicted([new(level, hours, 0, 0)], common).ExpandedUncertaintyDb;
                    Assert.Equal(whole, TaskUncertainty.Predicted(split, common).ExpandedUncertaintyDb, 9);
                }
            );

    [Fact]
    public void Predicted_AnyTasks_CommonPartIsWhole() =>
        Gen.Select(Gen.Double[60, 120], Gen.Double[0.1, 4])
            .Array[1, 8]
            .Sample(tasks =>
                Assert.True(
                    TaskUncertainty
                        .Predicted([.. tasks.Select(t => new DayTask(t.Item1, t.Item2, 0, 0.01))], 2)
                        .StandardUncertaintyDb
                        >= 2 - 1e-9
                )
            );

    // 2.01 dB for one task, 0.64 dB in ten parts: the shrinking that the common form avoids (ISO 9612:2009 Annex C).
    [Fact]
    public void Measured_TenParts_ShrinksByRootTen()
    {
        double one = TaskUncertainty.Measured([new(90, 8, 0, 0)], 0.7).ExpandedUncertaintyDb;
        double ten = TaskUncertainty
            .Measured([.. Enumerable.Repeat(new DayTask(90, 0.8, 0, 0), 10)], 0.7)
            .ExpandedUncertaintyDb;

        Assert.Equal(2.01, one, 2);
        Assert.Equal(0.64, ten, 2);
    }

    [Fact]
    public void Measured_NoTask_Refuses() => Assert.Throws<ArgumentException>(() => TaskUncertainty.Measured([], 0.7));

    [Fact]
    public void FromSamples_OneSample_SaysNothingAboutScatter() =>
        Assert.Equal(0, DayTask.FromSamples([88], 1, 0).SamplingUncertaintyDb);

    // Definition of u1a in ISO 9612:2009 (memory): standard deviation of the mean.
    [Fact]
    public void FromSamples_ThreeSamples_IsDeviationOfTheMean() =>
        Assert.Equal(Math.Sqrt(2.0 / 6), DayTask.FromSamples([87, 88, 89], 1, 0).SamplingUncertaintyDb, 9);
}
