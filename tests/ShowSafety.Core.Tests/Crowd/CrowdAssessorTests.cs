using CsCheck;
using ShowSafety.Core.Crowd;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Crowd.CrowdPlans;

namespace ShowSafety.Core.Tests.Crowd;

public sealed class CrowdAssessorTests
{
    [Fact]
    public void Assess_EverythingThere_LeavesNotesOnly()
    {
        CrowdAssessment assessment = CrowdAssessor.Assess(Complete);

        Assert.Equal(
            ["crowd.barrier-stops-no-piece", "crowd.published-practice", "crowd.alarm-by-eye"],
            assessment.Findings.Select(f => f.Code)
        );
        Assert.All(assessment.Findings, f => Assert.Equal(Severity.Note, f.Severity));
    }

    [Fact]
    public void Assess_EmptyPlan_AsksForVisitorsLineAndStewards() =>
        Assert.Equal(
            ["crowd.visitors-not-on-plan", "crowd.line-missing", "crowd.steward-posts-missing"],
            Codes(new Plan())
        );

    [Fact]
    public void Assess_SamePlanTwice_GivesEqualAssessments() =>
        Assert.Equal(CrowdAssessor.Assess(Complete), CrowdAssessor.Assess(Complete));

    // 10 m for people who aren't needed: guidelines of the Canadian national body.
    [Fact]
    public void Assess_PublishedPractice_KeepsVisitorsTenMetresAway()
    {
        Zone zone = CrowdAssessor.Assess(Complete).Zones.Single(z => z.Row == ZoneRow.PublishedPractice);

        Assert.Equal(ZoneEffect.Excludes, zone.Effect);
        Assert.Equal(Audience.Visitors | Audience.Children, zone.Whom);
        Assert.Equal(Phases.Start | Phases.Running, zone.When);
        Assert.True(zone.Area.Covers(SiteGeometry.CircleAround(new(0, 0), 9.98)));
        Assert.True(zone.Area.Covers(SiteGeometry.Point(new(0, -10.39))));
    }

    [Fact]
    public void Assess_NoStewardsNoWheelchairPlaces_AreFound()
    {
        var findings = CrowdAssessor.Assess(Complete with { Viewing = null }).Findings;

        Assert.Equal(Severity.Act, findings.Single(f => f.Code == "crowd.steward-posts-missing").Severity);
        Assert.Equal(Severity.Note, findings.Single(f => f.Code == "crowd.wheelchair-places-missing").Severity);
    }

    [Fact]
    public void Assess_CrowdLine_CountsPanels()
    {
        Figure panels = CrowdAssessor.Assess(Complete).Figures.Single(f => f.Key == "crowd.panels");

        Assert.Equal(12, panels.Value.Planning);
    }

    // ISO 7731:2003, from memory: at most 118 dB(A), 15 dB above ambient.
    [Fact]
    public void Assess_Engine_SaysOverWhichLevelNoAlarmIsHeard() =>
        Assert.Equal(
            103,
            CrowdAssessor
                .Assess(Complete)
                .Figures.Single(f => f.Key == "crowd.highest-ambient-for-alarm")
                .Value.Planning
        );

    [Fact]
    public void Assess_OddNumbers_NeverFails() =>
        Gen.Select(Gen.Double, Gen.Double, Gen.Double, Gen.Int)
            .Sample(
                (shaft, barrier, width, adults) =>
                {
                    Plan plan = Complete with
                    {
                        Engines = [Turbine with { ShaftHeightMetres = Measured(shaft) }],
                        CrowdLine = Complete.CrowdLine! with { HeightMetres = Measured(barrier) },
                        People = [Watchers with { Adults = adults }],
                        Site = Complete.Site with
                        {
                            Exits = [new() { Id = "x", WidthMetres = Measured(Math.Clamp(width, -50, 50)) }],
                        },
                    };
                    Assert.All(
                        CrowdAssessor.Assess(plan).Figures,
                        f => Assert.True(double.IsFinite(f.Value.Best) && double.IsFinite(f.Value.Planning))
                    );
                }
            );

    [Fact]
    public void Assess_AreaThatCrossesItself_NeverFails()
    {
        Plan plan = WithWatchers(w => w with { Area = [new(0, 30), new(10, 40), new(10, 30), new(0, 40)] });

        Assert.NotEmpty(CrowdAssessor.Assess(plan).Findings);
    }
}
