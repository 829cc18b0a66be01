using ShowSafety.Core.Exposure;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Exposure.People;

public sealed class NeighbourLevelsTests
{
    private static PersonGroup Neighbours(params Presence[] presence) =>
        new()
        {
            Id = "n1",
            Role = PersonRole.Neighbour,
            Place = new(100, 0),
            EarHeightMetres = SamplePlan.Measured(4),
            Presence = [.. presence],
        };

    private static Figure[] Levels(Plan plan) =>
        [
            .. ExposureAssessor
                .Assess(plan, SamplePlan.Sound())
                .Figures.Where(f => f is { Key: "exposure.neighbour-level", ElementId: "n1" }),
        ];

    // By hand: 120 dB(A) at 1 m are 80 at 100 m; 10 minutes of the hour take off 10 lg 6 = 7.78 dB; U = 3 dB.
    [Fact]
    public void Of_OneRunOfTenMinutes_SpreadsItOverTheWorstHour()
    {
        Figure level = Assert.Single(Levels(SamplePlan.Plan() with { People = [Neighbours()] }));

        Assert.Equal("60 min", level.PartId);
        Assert.Equal(72.22, level.Value.Best, 0.01);
        Assert.Equal(75.22, level.Value.Planning, 0.01);
    }

    // 10 minutes in the 16 hours from 7 to 23: 10 lg 96 = 19.82 dB less; nothing runs from 19 to 23.
    [Fact]
    public void Of_TimesOfDay_SpreadsItOverThoseWithARun()
    {
        Presence day = new() { From = new(7, 0), To = new(23, 0) };
        Presence evening = new() { From = new(19, 0), To = new(23, 0) };

        Figure[] levels = Levels(SamplePlan.Plan() with { People = [Neighbours(day, evening)] });

        Assert.Equal(["60 min", "07:00-23:00"], levels.Select(l => l.PartId));
        Assert.Equal(60.18, levels[1].Value.Best, 0.01);
    }

    [Fact]
    public void Of_Neighbours_AreToldTheLevelAtAFacade()
    {
        Plan plan = SamplePlan.Plan() with { People = [Neighbours()] };

        Finding said = Assert.Single(
            ExposureAssessor.Assess(plan, SamplePlan.Sound()).Findings,
            f => f.Code == "exposure.neighbour-heard"
        );

        Assert.Equal(75.22, said.Arguments.Single(a => a.Name == "facade").Quantity!.Best, 0.01);
    }

    [Fact]
    public void Of_Visitors_AreNoNeighbours() => Assert.Empty(Levels(SamplePlan.Plan()));
}
