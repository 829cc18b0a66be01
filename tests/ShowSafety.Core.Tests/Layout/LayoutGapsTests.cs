using ShowSafety.Core.Layout;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Layout;

/// <summary>What a plan leaves unsaid must not read as "nobody there".</summary>
public sealed class LayoutGapsTests
{
    private static readonly Site Square = new() { Outline = [new(-50, -50), new(50, -50), new(50, 50), new(-50, 50)] };

    [Theory]
    [InlineData(null, 2)]
    [InlineData(3, 2)]
    [InlineData(0, 0)]
    public void Assess_ZoneForChildren_BindsVisitorsUnlessNoChildrenAreStated(int? children, int findings)
    {
        var plan = new Plan
        {
            Title = "Children",
            Site = Square,
            People = [Visitors() with { Children = children }],
            CrowdLine = new CrowdLine { Line = [new(-20, 5), new(20, 5)] },
        };

        LayoutAssessment layout = LayoutAssessor.Assess(plan, [Circle(ZoneRow.SoundCeiling, Audience.Children)]);

        Assert.Equal(findings, layout.Findings.Count(f => f.Row == ZoneRow.SoundCeiling));
        Assert.Equal(findings == 0, layout.PublicKeepOut.IsEmpty);
    }

    [Fact]
    public void Assess_EdgeSaidEmptyAndSaidInhabited_IsNotSettled()
    {
        var plan = new Plan
        {
            Title = "Edges",
            Site = Square with
            {
                Surroundings =
                [
                    new Surrounding
                    {
                        Edge = 1,
                        EmptyToMetres = new Stated { Value = 100 },
                    },
                    new Surrounding { Edge = 1, WhoIsThere = "Street" },
                ],
            },
        };

        LayoutAssessment layout = LayoutAssessor.Assess(plan, [Box(0, -2, 60, 2)]);

        Finding finding = Assert.Single(layout.Findings);
        Assert.Equal(("layout.zone-beyond-site", Severity.Stop), (finding.Code, finding.Severity));
    }

    // Hand-solved: the notch is 40 m wide and covered whole, so half its width lies beyond each of its long sides.
    [Fact]
    public void Assess_NotchCoveredWhole_ReachesHalfItsWidthBeyondBothSides()
    {
        var plan = new Plan
        {
            Title = "Notch",
            Site = new Site
            {
                Outline =
                [
                    new(-50, -50),
                    new(50, -50),
                    new(50, 50),
                    new(20, 50),
                    new(20, -20),
                    new(-20, -20),
                    new(-20, 50),
                    new(-50, 50),
                ],
            },
        };

        LayoutAssessment layout = LayoutAssessor.Assess(plan, [Box(-25, -25, 25, 50)]);

        double[] sides = [.. layout.Beyond.Where(b => b.Edge is 3 or 5).Select(b => b.ReachMetres)];
        Assert.Equal(2, sides.Length);
        Assert.All(sides, reach => Assert.InRange(reach, 20, 21.5));
    }

    [Theory]
    [InlineData(0, 10, 0, 40, true)]
    [InlineData(23, 0, 23, 30, false)]
    public void Assess_RunPastMidnight_MeetsWhoIsThereAfterwards(int h1, int m1, int h2, int m2, bool inside)
    {
        var plan = new Plan
        {
            Title = "Night",
            Site = Square,
            Programme = new Programme
            {
                Runs =
                [
                    new Run
                    {
                        Id = "r",
                        EngineId = "e1",
                        StartsAt = new(23, 50),
                        Steps = [new ThrottleStep { StateId = "s", Seconds = 3600 }],
                    },
                ],
            },
            People = [Visitors() with { Presence = [new Presence { From = new(h1, m1), To = new(h2, m2) }] }],
        };

        LayoutAssessment layout = LayoutAssessor.Assess(plan, [Circle(ZoneRow.DirectFlight, Audience.Everyone)]);

        Assert.Equal(inside, layout.Findings.Any(f => f.Code == "layout.people-in-zone"));
    }

    [Fact]
    public void OnlyIfOutside_LineThroughAZone_IsNotSuggested()
    {
        ValueList<Zone> zones = [Circle(ZoneRow.DirectFlight, Audience.Everyone)];

        var check = new LineCheck(zones, zones[0].Area, new());
        Assert.Empty(SuggestedLine.OnlyIfOutside([new(-20, 5), new(20, 5)], check).Line);
        Assert.Equal(2, SuggestedLine.OnlyIfOutside([new(-20, 15), new(20, 15)], check).Line.Count);
    }

    private static PersonGroup Visitors() =>
        new()
        {
            Id = "public",
            Role = PersonRole.Visitor,
            Adults = 5,
            Place = new(5, 0),
        };

    private static Zone Circle(ZoneRow row, Audience whom) =>
        new(
            row,
            "e1",
            ZoneEffect.Excludes,
            whom,
            Phases.Running,
            ZoneFrame.Engine,
            SiteGeometry.CircleAround(new(0, 0), 10)
        );

    private static Zone Box(double left, double low, double right, double high) =>
        Circle(ZoneRow.DirectFlight, Audience.Everyone) with
        {
            Area = SiteGeometry.Polygon([new(left, low), new(right, low), new(right, high), new(left, high)]),
        };
}
