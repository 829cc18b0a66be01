using CsCheck;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Exposure.Programme;

public sealed class TimelineBuilderTests
{
    [Fact]
    public void Build_RunWithoutDay_HappensOnEveryDay()
    {
        Timeline timeline = TimelineBuilder.Build(SamplePlan.Plan());

        Assert.Equal(2, timeline.Days.Count);
        Assert.All(timeline.Days, day => Assert.Equal(600.0 / 3600, day.Stretches.Single().Time.Hours, 9));
        Assert.Empty(timeline.Findings);
    }

    [Fact]
    public void Build_RunOnAnotherDay_AddsThatDayAndSaysSo()
    {
        Plan plan = SamplePlan.Plan() with
        {
            Programme = new()
            {
                Runs = [SamplePlan.Run("r1", new(11, 0), ("full", 60)) with { Day = new(2031, 6, 1) }],
            },
        };

        Timeline timeline = TimelineBuilder.Build(plan);

        Assert.Equal(3, timeline.Days.Count);
        Assert.Single(timeline.Days[2].Stretches);
        Assert.Contains(timeline.Findings, f => f.Code == "exposure.run-outside-event");
    }

    [Fact]
    public void Build_TwoEnginesOverlap_AreHeardTogether()
    {
        Plan plan = SamplePlan.Plan() with
        {
            Engines = [new() { Id = "e1" }, new() { Id = "e2" }],
            Programme = new()
            {
                Runs =
                [
                    SamplePlan.Run("r1", new(11, 0), ("idle", 60), ("full", 60)),
                    SamplePlan.Run("r2", new(11, 1, 30), ("full", 60)) with
                    {
                        EngineId = "e2",
                    },
                ],
            },
        };

        Timeline timeline = TimelineBuilder.Build(plan);

        Assert.Equal([60.0, 30, 30, 30], timeline.Days[0].Stretches.Select(s => Math.Round(3600 * s.Time.Hours, 6)));
        Assert.Equal(2, timeline.Combinations[timeline.Days[0].Stretches[2].Combination].StateByEngine.Count);
        Assert.DoesNotContain(timeline.Combinations, c => c.IsContradictory);
    }

    [Fact]
    public void Build_OneEngineInTwoStatesAtOnce_CannotTell()
    {
        Plan plan = SamplePlan.Plan() with
        {
            Programme = new()
            {
                Runs =
                [
                    SamplePlan.Run("r1", new(11, 0), ("full", 600)),
                    SamplePlan.Run("r2", new(11, 5), ("idle", 600)),
                ],
            },
        };

        Timeline timeline = TimelineBuilder.Build(plan);

        Assert.Contains(timeline.Combinations, c => c.IsContradictory);
        Assert.Contains(timeline.Findings, f => f is { Code: "exposure.runs-contradict", CannotTell: true });
    }

    [Fact]
    public void Build_UnknownEngine_CannotTell()
    {
        Plan plan = SamplePlan.Plan() with { Engines = [] };

        Timeline timeline = TimelineBuilder.Build(plan);

        Assert.All(timeline.Combinations, c => Assert.True(c.IsContradictory));
        Assert.Contains(timeline.Findings, f => f.Code == "exposure.run-of-unknown-engine");
    }

    [Fact]
    public void Build_NothingPlanned_SaysSo()
    {
        Timeline timeline = TimelineBuilder.Build(new Plan());

        Assert.Empty(timeline.Combinations);
        Assert.Single(timeline.Days);
        Assert.Equal("exposure.no-programme", timeline.Findings.Single().Code);
    }

    [Fact]
    public void Build_StepsWithoutLength_AreLeftOut()
    {
        Run run = SamplePlan.Run("r", new(11, 0), ("idle", 0), ("full", -3), ("full", double.NaN), ("idle", 10));

        Assert.Equal(["idle"], TimelineBuilder.Steps(run).Select(s => s.StateId));
    }

    [Fact]
    public void Build_AnyRuns_KeepsTheRunningTimeOfOneEngine() =>
        Gen.Int[1, 3000]
            .Array[1, 5]
            .Sample(seconds =>
            {
                var at = new TimeOnly(8, 0);
                var runs = new List<Run>();
                foreach (int length in seconds)
                {
                    runs.Add(SamplePlan.Run($"r{runs.Count}", at, ("idle", length), ("full", 1)));
                    at = at.Add(TimeSpan.FromSeconds(length + 5));
                }

                Timeline timeline = TimelineBuilder.Build(
                    SamplePlan.Plan() with
                    {
                        Programme = new() { Runs = [.. runs] },
                    }
                );
                Assert.Equal(
                    (seconds.Sum() + seconds.Length) / 3600.0,
                    timeline.Days[0].Stretches.Sum(s => s.Time.Hours),
                    9
                );
            });

    [Fact]
    public void During_OverlappingPresences_CountOnce()
    {
        Timeline timeline = TimelineBuilder.Build(SamplePlan.Plan());
        Presence[] twice = [new() { From = new(10, 0), To = new(11, 5) }, new() { From = new(11, 0), To = new(11, 6) }];

        Assert.Equal(0.1, StayPattern.During(timeline, twice).HoursByDay[0][0], 9);
    }

    [Fact]
    public void During_PresenceBackwards_IsTheWholeProgramme()
    {
        Timeline timeline = TimelineBuilder.Build(SamplePlan.Plan());
        Presence[] backwards = [new() { From = new(12, 0), To = new(9, 0) }];

        Assert.Equal(600.0 / 3600, StayPattern.During(timeline, backwards).HoursByDay[0][0], 9);
    }

    [Fact]
    public void During_AwayFromTheRuns_HearsNothing()
    {
        Timeline timeline = TimelineBuilder.Build(SamplePlan.Plan());
        Presence[] later = [new() { From = new(14, 0), To = new(15, 0) }];

        Assert.Empty(StayPattern.During(timeline, later).Heard);
    }

    [Fact]
    public void WindowShares_TenMinuteRun_FillsTwoThirdsOfTheQuarter()
    {
        StayPattern stay = StayPattern.Whole(TimelineBuilder.Build(SamplePlan.Plan()));

        Assert.Equal(10.0 / 15, stay.WindowShares(15, WindowKind.Sliding).Max(shares => shares[0]), 9);
    }
}
