using NetTopologySuite.Geometries;
using ShowSafety.Core.Layout;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Layout;

/// <summary>
/// Hand-solved layouts: one engine at the origin of a square site of 100 m, its exhaust blowing down the sheet, a round
/// excluding zone of 10 m about it unless a test says otherwise.
/// </summary>
public sealed class LayoutAssessorTests
{
    private static readonly Plan Field = new()
    {
        Title = "Field",
        Site = new Site { Outline = [new(-50, -50), new(50, -50), new(50, 50), new(-50, 50)] },
        Engines =
        [
            new Engine
            {
                Id = "e1",
                Place = new(0, 0),
                ExhaustHeadingDegrees = 180,
            },
        ],
        People =
        [
            new PersonGroup
            {
                Id = "public",
                Role = PersonRole.Visitor,
                Adults = 50,
                Area = [new(-20, 20), new(20, 20), new(20, 30), new(-20, 30)],
            },
        ],
        CrowdLine = new CrowdLine { Line = [new(-45, 15), new(45, 15)] },
    };

    [Fact]
    public void Assess_LineOutsideTheZone_MeetsTheRulesWithItsClearance()
    {
        LayoutAssessment layout = LayoutAssessor.Assess(Field, [Circle(10)]);

        LineStretch stretch = Assert.Single(layout.PlannedLine);
        Assert.True(stretch.MeetsRules);
        Assert.Equal(5, stretch.Metres, 0.03);
        Assert.Equal(ZoneRow.PublishedPractice, stretch.Row);
        Assert.Empty(layout.Findings);
    }

    [Fact]
    public void Assess_LineThroughTheZone_FailsBetweenTheCrossingsByTheDepth()
    {
        Plan near = Field with { CrowdLine = new CrowdLine { Line = [new(-45, 6), new(45, 6)] } };

        LayoutAssessment layout = LayoutAssessor.Assess(near, [Circle(10)]);

        LineStretch failing = Assert.Single(layout.PlannedLine, s => !s.MeetsRules);
        Assert.Equal(-8, failing.From.XMetres, 0.05);
        Assert.Equal(8, failing.To.XMetres, 0.05);
        Assert.Equal(4, failing.Metres, 0.05);
        Finding finding = Assert.Single(layout.Findings);
        Assert.Equal(("layout.line-inside-zone", Severity.Act), (finding.Code, finding.Severity));
    }

    [Fact]
    public void Assess_SuggestedLine_KeepsTheMarginAndIsSetByTheZone()
    {
        LayoutAssessment layout = LayoutAssessor.Assess(Field, [Circle(10)]);

        double distance = SiteGeometry.Line(layout.SuggestedLine).Distance(SiteGeometry.Point(new(0, 0)));
        Assert.InRange(distance, 10, 10.6);
        Assert.All(layout.SuggestedStretches, s => Assert.True(s.MeetsRules));
        Assert.Equal(ZoneRow.PublishedPractice, layout.LineSetBy);
    }

    [Theory]
    [InlineData(ZoneRow.DirectFlight, Severity.Stop)]
    [InlineData(ZoneRow.JetSpeedPublic, Severity.Stop)]
    [InlineData(ZoneRow.PublishedPractice, Severity.Act)]
    public void Assess_VisitorsInside_AreAStopOrAnActByTheRow(ZoneRow row, Severity severity)
    {
        LayoutAssessment layout = LayoutAssessor.Assess(Field, [Circle(25) with { Row = row }]);

        Finding inside = Assert.Single(layout.Findings, f => f.Code == "layout.people-in-zone");
        Assert.Equal((severity, row, "public"), (inside.Severity, inside.Row!.Value, inside.ElementId));
    }

    [Fact]
    public void Assess_ZoneThatBindsCrewOnly_LeavesVisitorsAlone()
    {
        LayoutAssessment layout = LayoutAssessor.Assess(Field, [Circle(25) with { Whom = Audience.Crew }]);

        Assert.Empty(layout.Findings);
        Assert.True(layout.PublicKeepOut.IsEmpty);
        Assert.False(layout.CrewKeepOut.IsEmpty);
    }

    [Fact]
    public void Assess_ZoneOverUnknownGround_CannotTellAndIsAStop()
    {
        LayoutAssessment layout = LayoutAssessor.Assess(Field, [Strip(60)]);

        Finding[] unknown = [.. layout.Findings.Where(f => f.Code == "layout.zone-over-unknown-ground")];
        Assert.Equal(2, unknown.Length);
        Assert.All(unknown, f => Assert.Equal((Severity.Stop, true), (f.Severity, f.CannotTell)));
        Assert.Equal([1, 3], layout.Beyond.Select(b => b.Edge));
        Assert.All(layout.Beyond, b => Assert.Equal(10, b.ReachMetres, 0.1));
    }

    [Theory]
    [InlineData(10.2, 0)]
    [InlineData(9.8, 2)]
    public void Assess_GroundKeptEmpty_SettlesTheZoneOnlyAsFarAsItReaches(double emptyTo, int findings)
    {
        Plan settled = Field with { Site = Field.Site with { Surroundings = [Empty(1, emptyTo), Empty(3, emptyTo)] } };

        LayoutAssessment layout = LayoutAssessor.Assess(settled, [Strip(60)]);

        Assert.Equal(findings, layout.Findings.Count(f => f.Code == "layout.zone-beyond-site"));
    }

    [Fact]
    public void Assess_ZoneOverTheWholeSite_SaysThatNoLineIsPossible()
    {
        LayoutAssessment layout = LayoutAssessor.Assess(Field, [Circle(200)]);

        Assert.Empty(layout.SuggestedLine);
        Assert.Contains(layout.Findings, f => f is { Code: "layout.no-line-possible", Severity: Severity.Stop });
    }

    [Fact]
    public void Assess_VisitorsBesideTheLine_AreNotBehindIt()
    {
        Plan beside = Field with { CrowdLine = new CrowdLine { Line = [new(-5, 15), new(5, 15)] } };

        LayoutAssessment layout = LayoutAssessor.Assess(beside, [Circle(10)]);

        Assert.Contains(layout.Findings, f => f.Code == "layout.visitors-not-behind-line");
    }

    [Fact]
    public void Assess_PeopleWhoAreGoneBeforeTheRun_AreNotInside()
    {
        Plan early = Field with
        {
            Programme = new Programme
            {
                Runs =
                [
                    new Run
                    {
                        Id = "r",
                        EngineId = "e1",
                        StartsAt = new(14, 0),
                        Steps = [new ThrottleStep { StateId = "full", Seconds = 60 }],
                    },
                ],
            },
            People = [Field.People[0] with { Presence = [new Presence { From = new(9, 0), To = new(12, 0) }] }],
        };

        LayoutAssessment layout = LayoutAssessor.Assess(early, [Circle(25)]);

        Assert.DoesNotContain(layout.Findings, f => f.Code == "layout.people-in-zone");
    }

    private static Zone Circle(double radius) =>
        new(
            ZoneRow.PublishedPractice,
            "e1",
            ZoneEffect.Excludes,
            Audience.Visitors,
            Phases.Start | Phases.Running,
            ZoneFrame.Engine,
            SiteGeometry.CircleAround(new(0, 0), radius)
        );

    private static Zone Strip(double halfLength)
    {
        Polygon area = SiteGeometry.Polygon([
            new(-halfLength, -2),
            new(halfLength, -2),
            new(halfLength, 2),
            new(-halfLength, 2),
        ]);
        return Circle(1) with { Row = ZoneRow.DirectFlight, Area = area };
    }

    private static Surrounding Empty(int edge, double metres) =>
        new()
        {
            Edge = edge,
            EmptyToMetres = new Stated { Value = metres, Pedigree = Pedigree.Estimated },
        };
}
