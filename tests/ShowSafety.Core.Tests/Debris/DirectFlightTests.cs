using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Debris.DebrisPlans;

namespace ShowSafety.Core.Tests.Debris;

/// <summary>Rows 1 and 2 on the plan.</summary>
public sealed class DirectFlightTests
{
    [Fact]
    public void Assess_TwoRotors_GivesOneExcludingZoneForEveryoneAndTwoInnerOnes()
    {
        Zone[] zones = Row1(With(Turbine, Compressor));

        Assert.Equal(["", "one-third-disc", "intermediate"], zones.Select(z => z.Part));
        Assert.Equal([ZoneEffect.Excludes, ZoneEffect.Informs, ZoneEffect.Informs], zones.Select(z => z.Effect));
        Assert.All(zones, z => Assert.Equal(Audience.Everyone, z.Whom));
        Assert.All(zones, z => Assert.Equal(Phases.Start | Phases.Running | Phases.RunDown, z.When));
        Assert.All(zones, z => Assert.Equal(ZoneFrame.Engine, z.Frame));
        Assert.All(zones, z => Assert.Equal(14.914, z.Boundary!.Planning, 0.001));
        Assert.All(zones, z => Assert.True(zones[0].Area.Covers(z.Area)));
    }

    [Theory]
    [InlineData("", 2.67949)]
    [InlineData("one-third-disc", 0.52408)]
    [InlineData("intermediate", 0.87489)]
    public void Assess_TenMetresAside_BandIsAsWideAsTheSpread(string part, double halfWidth)
    {
        // AC 20-128A: 15, 3 and 5 degrees about every plane; planes 0.08 and 0.22 m behind the nozzle at y = 4.
        Geometry area = Row1(With(Turbine, Compressor)).Single(z => z.Part == part).Area;

        foreach (double x in new[] { 3 - 10.0, 3 + 10.0 })
        {
            Assert.True(area.Covers(SiteGeometry.Line([new(x, 3.78 - halfWidth), new(x, 3.92 + halfWidth)])));
            Assert.False(area.Covers(SiteGeometry.Point(new(x, 3.92 + halfWidth + 0.05))));
            Assert.False(area.Covers(SiteGeometry.Point(new(x, 3.78 - halfWidth - 0.05))));
        }
    }

    [Fact]
    public void Assess_AnyEngine_ReachesAsFarAsTheFarthestPiece()
    {
        DebrisAssessment found = DebrisAssessor.Assess(With(Turbine, Compressor));
        double farthest = found.Pieces.Max(p => Math.Min(p.FlatFireDistance.Planning, p.LandingDistance.Planning));
        Zone zone = found.Zones[0];

        Assert.Equal(farthest, zone.Reach!.Planning, 1e-9);
        Assert.True(zone.Area.Covers(SiteGeometry.Point(new(3 + farthest, 3.85))));
        Assert.True(zone.Area.Covers(SiteGeometry.Point(new(3 - farthest, 3.85))));
    }

    [Fact]
    public void Assess_AnyHeading_IsValidSymmetricAndHoldsTheWheels() =>
        Gen.Double[0, 360]
            .Sample(
                heading =>
                {
                    Engine engine = With(heading, Turbine, Compressor).Engines[0];
                    Geometry area = Row1(With(heading, Turbine, Compressor))[0].Area;
                    PlanPoint wheel = engine.Place.Along(heading + 180, 0.08);
                    PlanPoint left = wheel.Along(heading - 90, 0.038);
                    PlanPoint right = wheel.Along(heading + 90, 0.038);
                    PlanPoint axis = engine.Place.Along(heading, 1);
                    Geometry mirrored = AffineTransformation
                        .ReflectionInstance(engine.Place.XMetres, engine.Place.YMetres, axis.XMetres, axis.YMetres)
                        .Transform(area);
                    return area.IsValid
                        && area.Covers(SiteGeometry.Line([left, right]))
                        && area.SymmetricDifference(mirrored).Area < 1e-6 * area.Area;
                },
                iter: 30
            );

    [Fact]
    public void Assess_TurnedEngine_TurnsItsZone() =>
        Gen.Double[0, 360]
            .Sample(
                heading =>
                {
                    Geometry north = Row1(With(0, Turbine))[0].Area;
                    Geometry turned = AffineTransformation
                        .RotationInstance(-heading * Math.PI / 180, 3, 4)
                        .Transform(north);
                    Geometry direct = Row1(With(heading, Turbine))[0].Area;
                    return direct.SymmetricDifference(turned).Area < 1e-6 * direct.Area;
                },
                iter: 20
            );

    [Fact]
    public void Assess_FasterWheel_NeverHasASmallerZone() =>
        Gen.Select(Gen.Double[30_000, 120_000], Gen.Double[1.01, 1.5])
            .Sample(
                (rpm, factor) =>
                {
                    Rotor slow = Turbine with
                    {
                        MaximumSpeedRevolutionsPerMinute = null,
                        TripSpeedRevolutionsPerMinute = Is(rpm),
                    };
                    Rotor fast = slow with { TripSpeedRevolutionsPerMinute = Is(rpm * factor) };
                    DebrisAssessment low = DebrisAssessor.Assess(With(slow));
                    DebrisAssessment high = DebrisAssessor.Assess(With(fast));
                    // The slanted edges of both zones lie on one line: rounding may put a corner a hair outside.
                    return low
                        .Zones.Zip(high.Zones)
                        .All(z =>
                            z.First.Area.Difference(z.Second.Area).Area < 1e-6 && z.First.Area.Area < z.Second.Area.Area
                        );
                },
                iter: 15
            );

    [Fact]
    public void Assess_LandingArea_IsARoundInformingZoneAroundEverything()
    {
        DebrisAssessment found = DebrisAssessor.Assess(With(Turbine, Compressor));
        Zone landing = Assert.Single(found.Zones, z => z.Row == ZoneRow.LandingArea);

        Assert.Equal(ZoneEffect.Informs, landing.Effect);
        Assert.Equal(found.Pieces.Max(p => p.LandingDistance.Planning), landing.Reach!.Planning, 1e-9);
        Assert.True(landing.Area.Covers(SiteGeometry.CircleAround(new(3, 3.85), landing.Reach.Planning * 0.999)));
    }

    [Fact]
    public void Assess_MoreWind_WidensTheLandingArea()
    {
        Plan calm = Windy(0);
        Plan windy = Windy(10);

        Assert.True(Landing(windy).Area.Covers(Landing(calm).Area));
        Assert.True(Landing(windy).Reach!.Planning > Landing(calm).Reach!.Planning + 10);
    }

    [Fact]
    public void Assess_OneRotorUnknown_StillDrawsTheOtherAndStops()
    {
        DebrisAssessment found = DebrisAssessor.Assess(With(Turbine, Compressor with { TipRadiusMetres = null }));

        Assert.NotEmpty(found.Zones);
        Assert.Contains(found.Findings, f => f is { Severity: Severity.Stop, CannotTell: true });
    }

    private static Plan Windy(double wind)
    {
        Plan plan = With(Turbine);
        return plan with { Site = plan.Site with { Weather = new() { HighestWindMetresPerSecond = Is(wind) } } };
    }

    private static Zone Landing(Plan plan) =>
        DebrisAssessor.Assess(plan).Zones.Single(z => z.Row == ZoneRow.LandingArea);

    private static Zone[] Row1(Plan plan) =>
        [.. DebrisAssessor.Assess(plan).Zones.Where(z => z.Row == ZoneRow.DirectFlight)];
}
