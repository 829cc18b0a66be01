using ShowSafety.Core.Crowd;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Crowd.CrowdPlans;

namespace ShowSafety.Core.Tests.Crowd;

public sealed class ReachCheckTests
{
    private static Zone ZoneOf(Plan plan) =>
        CrowdAssessor.Assess(plan).Zones.Single(z => z.Row == ZoneRow.HotAndSpinningParts);

    // Casing from 0.94 to 1.06 m, barrier 1.4 m: the rows from 800 to 1,200 mm, the largest is 1,100 mm.
    [Fact]
    public void Assess_KnownBarrier_ReachesOverTheWholeCasing()
    {
        Zone zone = ZoneOf(Complete);

        Assert.Equal(1.1, zone.Reach!.Planning, 9);
        Assert.Equal(Phases.Always, zone.When);
        Assert.Equal(Audience.Visitors | Audience.Children, zone.Whom);
        Assert.True(zone.Area.Covers(SiteGeometry.Point(new(1.159, 0))));
        Assert.True(zone.Area.Covers(SiteGeometry.Point(new(0, -1.559))));
        Assert.False(zone.Area.Covers(SiteGeometry.Point(new(1.2, 0))));
    }

    [Fact]
    public void Assess_NoLine_KeepsTheLongestReach()
    {
        Assert.Equal(1.5, ZoneOf(Complete with { CrowdLine = null }).Reach!.Planning);
        Assert.Contains("crowd.line-missing", Codes(Complete with { CrowdLine = null }));
    }

    [Fact]
    public void Assess_Rope_IsNoBarrier()
    {
        Plan plan = WithLine(l => l with { Infill = BarrierInfill.Rope });

        Assert.Equal(1.5, ZoneOf(plan).Reach!.Planning);
        Assert.Equal(["crowd.rope-is-no-barrier"], Codes(plan));
    }

    [Fact]
    public void Assess_BarrierUnderOneMetre_IsNotListed()
    {
        Plan plan = WithLine(l => l with { HeightMetres = Measured(0.9) });

        Assert.Equal(1.5, ZoneOf(plan).Reach!.Planning);
        Assert.Equal(["crowd.barrier-too-low"], Codes(plan));
    }

    [Fact]
    public void Assess_BarrierUnderOnePointFour_IsNoted()
    {
        Plan plan = WithLine(l => l with { HeightMetres = Measured(1.1) });

        Assert.Empty(Codes(plan));
        Assert.Contains(CrowdAssessor.Assess(plan).Findings, f => f.Code == "crowd.barrier-needs-stewards");
        Assert.Equal(1.5, ZoneOf(plan).Reach!.Planning);
    }

    [Fact]
    public void Assess_HeightOrInfillUnknown_CannotTell()
    {
        Plan plan = WithLine(l => l with { HeightMetres = null, Infill = null });

        Assert.Equal(["crowd.barrier-height-missing", "crowd.barrier-infill-missing"], Codes(plan));
    }

    // The table is for people of 14 and over: rails with children near are not shown.
    [Theory]
    [InlineData(20, true)]
    [InlineData(null, true)]
    [InlineData(0, false)]
    public void Assess_RailsWithChildren_CannotTell(int? children, bool expected)
    {
        Plan plan = WithLine(l => l with { Infill = BarrierInfill.Rails }) with
        {
            People = [Watchers with { Children = children }],
        };

        Assert.Equal(expected, Codes(plan).Contains("crowd.children-reach-through"));
    }

    [Fact]
    public void Assess_BareEngine_AssumesSizeAndSaysSo()
    {
        Plan plan = Complete with { Engines = [new() { Id = "bare" }] };

        Assert.Equal(
            ["crowd.shaft-height-missing", "crowd.engine-length-missing", "crowd.casing-diameter-missing"],
            Codes(plan)
        );
        Assert.Equal(1.1, ZoneOf(plan).Reach!.Planning, 9);
    }
}
