using CsCheck;
using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Exhaust.ExhaustPlans;

namespace ShowSafety.Core.Tests.Exhaust;

public sealed class ExhaustAssessorTests
{
    // 7.0 √(T/ρ)/8.9 with 150 N (Fischer et al. 1979, memory) is 8.8 m in air of 1.2 kg/m³; here the air is of 25 °C.
    [Fact]
    public void Assess_FullSheet_GivesReachOfTheThrustLaw()
    {
        ExhaustAssessment assessment = ExhaustAssessor.Assess(Outdoors);

        Quantity reach = Figure(assessment, "exhaust.speed-reach-public");
        Assert.Equal(8.8 * Math.Sqrt(1.2 / 1.184), reach.Best, 0.02);
        // Band end 6.6, gusts 1.5, attached √2.
        Assert.Equal(reach.Best * 6.6 / 6.2036 * 1.5 * Math.Sqrt(2), reach.Planning, 0.01);
        Assert.DoesNotContain(assessment.Findings, f => f.CannotTell);
    }

    [Fact]
    public void Assess_FullSheet_HasEveryRowOnce()
    {
        ExhaustAssessment assessment = ExhaustAssessor.Assess(Outdoors);

        ZoneRow[] rows = [.. assessment.Zones.Select(z => z.Row).Distinct().Order()];
        Assert.Equal(Enumerable.Range(3, 7).Select(r => (ZoneRow)r), rows);
        Assert.All(assessment.Zones, z => Assert.True(z.Area.IsValid && !z.Area.IsEmpty));
        Assert.All(assessment.Zones, z => Assert.Equal(ZoneFrame.Engine, z.Frame));
        Assert.Equal(Audience.Crew, assessment.Zones.Single(z => z.Row == ZoneRow.JetHeatCrew).Whom);
        Assert.Equal(Audience.Everyone, assessment.Zones.Single(z => z.Row == ZoneRow.StartFlame).Whom);
    }

    [Fact]
    public void Assess_EngineTurned_TurnsTheZones()
    {
        Plan turned = Outdoors with { Engines = [Turbine with { Place = new(10, 3), ExhaustHeadingDegrees = 90 }] };

        Zone zone = ExhaustAssessor.Assess(turned).Zones.First(z => z.Row == ZoneRow.JetSpeedPublic);

        Assert.Equal(10, zone.Area.EnvelopeInternal.MinX, 1e-6);
        Assert.Equal(10 + zone.Reach!.Planning, zone.Area.EnvelopeInternal.MaxX, 1e-6);
        Assert.Equal(3, zone.Area.Centroid.Y, 1e-6);
    }

    [Fact]
    public void Assess_Intake_LiesAgainstTheExhaust()
    {
        Zone zone = ExhaustAssessor.Assess(Outdoors).Zones.First(z => z.Row == ZoneRow.Intake);

        Assert.Equal(-0.3, zone.Area.Centroid.Y, 1e-6);
        Assert.True(zone.Area.EnvelopeInternal.MaxX >= ExhaustThresholds.IntakeArmMetres);
    }

    [Fact]
    public void Assess_NoSheet_CannotTellAndStops()
    {
        Plan plan = Outdoors with { Engines = [new() { Id = "unknown" }] };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(plan);

        Finding[] stops = [.. assessment.Findings.Where(f => f.Severity == Severity.Stop)];
        Assert.Equal([ZoneRow.JetSpeedPublic, ZoneRow.JetSpeedCrew], stops.Select(f => f.Row!.Value));
        Assert.All(stops, f => Assert.True(f.CannotTell && f.Field == "ThrottleState.ThrustNewtons"));
        Assert.Null(assessment.Jets.Single().Thrust);
    }

    [Fact]
    public void Assess_ThrustMissingButDerivable_IsDerivedAndSaid()
    {
        ExhaustAssessment assessment = ExhaustAssessor.Assess(WithStates(Full with { ThrustNewtons = null }));

        Assert.Contains(assessment.Findings, f => f.Code == "exhaust.thrust-derived");
        Assert.DoesNotContain(assessment.Findings, f => f.Severity == Severity.Stop);
        Assert.Equal((0.368 + 0.0068) * 400, assessment.Jets.Single().Thrust!.Best, 1e-9);
    }

    [Fact]
    public void Assess_ThrustOfOneStateMissing_StopsThoughTheOtherIsDrawn()
    {
        ThrottleState unknown = new() { Id = "boost", ShaftSpeedRevolutionsPerMinute = Value(120000) };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(WithStates(Full, unknown));

        Assert.Contains(assessment.Findings, f => f.Code == "exhaust.thrust-missing" && f.CannotTell);
        Assert.Contains(assessment.Zones, z => z.Row == ZoneRow.JetSpeedPublic);
        Assert.False(assessment.Jets.Single().EveryStateKnown);
    }

    [Fact]
    public void Assess_SlowerStateWithoutThrust_IsBoundedByTheFaster()
    {
        ThrottleState slower = Idle with { ThrustNewtons = null, ExhaustSpeedMetresPerSecond = null };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(WithStates(Full, slower));

        Assert.DoesNotContain(assessment.Findings, f => f.Code == "exhaust.thrust-missing");
        Assert.Contains(assessment.Findings, f => f.Code == "exhaust.thrust-bounded");
        Assert.True(assessment.Jets.Single().EveryStateKnown);
    }

    [Fact]
    public void Assess_TemperatureMissing_CannotTellHeatOnly()
    {
        ExhaustAssessment assessment = ExhaustAssessor.Assess(
            WithStates(Full with { ExhaustTotalTemperatureCelsius = null })
        );

        Assert.Equal(
            [ZoneRow.JetHeatPublic, ZoneRow.JetHeatCrew, ZoneRow.JetHeatMaterials],
            assessment.Findings.Where(f => f.CannotTell).Select(f => f.Row!.Value)
        );
        Assert.DoesNotContain(assessment.Zones, z => z.Row == ZoneRow.JetHeatPublic);
        Assert.Contains(assessment.Zones, z => z.Row == ZoneRow.JetSpeedPublic);
    }

    [Fact]
    public void Assess_SheetDisagrees_PlansWithTheLargerThrust()
    {
        ExhaustAssessment assessment = ExhaustAssessor.Assess(WithStates(Full with { ThrustNewtons = Value(50) }));

        Assert.Equal(50, assessment.Jets.Single().Thrust!.Best);
        Assert.Equal((0.368 + 0.0068) * 400, assessment.Jets.Single().Thrust!.Planning, 1e-9);
    }

    [Fact]
    public void Assess_IdleHotterPerThrust_SetsTheHeatZone()
    {
        ThrottleState hotIdle = Idle with { ExhaustTotalTemperatureCelsius = Value(750), ThrustNewtons = Value(1) };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(WithStates(hotIdle, Full));

        Assert.Equal("idle", assessment.Figures.Single(f => f.Key == "exhaust.heat-reach-public").PartId);
        Assert.Equal("full", assessment.Figures.Single(f => f.Key == "exhaust.speed-reach-public").PartId);
    }

    [Fact]
    public void Assess_DayAsHotAsTheLimit_IsSaid()
    {
        Plan hot = Outdoors with { Site = Field with { Weather = new() { HighestTemperatureCelsius = Value(40) } } };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(hot);

        Finding finding = assessment.Findings.Single(f => f.Code == "exhaust.day-as-hot-as-limit");
        Assert.True(finding.CannotTell);
        Assert.Equal(ZoneRow.JetHeatPublic, finding.Row);
    }

    [Fact]
    public void Assess_WeatherUnstated_IsAssumedAndMarked()
    {
        Plan plan = Outdoors with { Site = Field with { Weather = null } };

        Quantity reach = Figure(ExhaustAssessor.Assess(plan), "exhaust.heat-reach-public");

        Assert.Equal(Pedigree.Assumed, reach.Pedigree);
        Assert.True(reach.Planning > Figure(ExhaustAssessor.Assess(Outdoors), "exhaust.heat-reach-public").Planning);
    }

    [Theory]
    [InlineData(BurnableKind.DryVegetation, Severity.Stop, "exhaust.thing-in-heat")]
    [InlineData(BurnableKind.TentFabric, Severity.Stop, "exhaust.thing-in-heat")]
    [InlineData(BurnableKind.Wood, Severity.Act, "exhaust.thing-in-heat")]
    [InlineData(BurnableKind.Paper, Severity.Act, "exhaust.thing-in-heat")]
    [InlineData(BurnableKind.LooseItems, Severity.Act, "exhaust.loose-things-in-jet")]
    public void Assess_ThingBehindTheNozzle_IsAFinding(BurnableKind kind, Severity severity, string code)
    {
        Burnable near = new()
        {
            Id = "thing",
            Kind = kind,
            Outline = [new(-1, 1), new(1, 1), new(1, 2)],
        };
        Burnable aside = near with { Id = "other", Outline = [new(-30, 1), new(-29, 1), new(-29, 2)] };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(
            Outdoors with
            {
                Site = Field with { Burnables = [near, aside] },
            }
        );

        Finding finding = assessment.Findings.Single(f => f.Code == code);
        Assert.Equal("thing", finding.ElementId);
        Assert.Equal(severity, finding.Severity);
        Assert.DoesNotContain(assessment.Findings, f => f.ElementId == "other");
    }

    [Fact]
    public void Assess_TentWallBehindTheNozzle_Stops()
    {
        Enclosure near = Tent with { Footprint = [new(-5, -5), new(5, -5), new(5, 1.5), new(-5, 1.5)] };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(Outdoors with { Site = Field with { Enclosure = near } });

        Finding finding = assessment.Findings.Single(f => f.Code == "exhaust.fabric-wall-too-hot");
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Contains(assessment.Findings, f => f.Code == "exhaust.fabric-wall-load");
        Quantity pressure = Figure(assessment, "exhaust.wall-pressure");
        // 31.8 T/H² (Beltaos and Rajaratnam 1974, memory), 150 N at 1.5 m; planning times 1.5².
        Assert.Equal(31.83 * 150 / 2.25, pressure.Best, 5.0);
        Assert.Equal(1.5, Figure(assessment, "exhaust.wall-distance").Best, 1e-9);
    }

    [Fact]
    public void Assess_TentSideWhollyOpen_IsNoWall()
    {
        Enclosure open = Tent with
        {
            Footprint = [new(-20, -20), new(20, -20), new(20, 1.5), new(-20, 1.5)],
            Sides = [new() { Side = 2, OpenShare = Value(1) }],
        };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(Outdoors with { Site = Field with { Enclosure = open } });

        Assert.DoesNotContain(
            assessment.Findings,
            f => f.Code.StartsWith("exhaust.fabric-wall", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Assess_WallAlongTheJet_ReachesFartherAndStandsOnTheSite()
    {
        Structure wall = new()
        {
            Id = "wall",
            Kind = StructureKind.Wall,
            Line = [new(0.5, 1), new(0.5, 20)],
        };

        ExhaustAssessment with = ExhaustAssessor.Assess(Outdoors with { Site = Field with { Structures = [wall] } });

        Quantity free = Figure(ExhaustAssessor.Assess(Outdoors), "exhaust.speed-reach-public");
        Quantity beside = Figure(with, "exhaust.speed-reach-public");
        Assert.Equal(free.Planning * Math.Sqrt(2), beside.Planning, 1e-9);
        Assert.Equal(ZoneFrame.Site, with.Zones.First(z => z.Row == ZoneRow.JetSpeedPublic).Frame);
        Assert.Contains(with.Findings, f => f.Code == "exhaust.beside-wall");
    }

    [Fact]
    public void Assess_HighShaft_StaysAFreeJet()
    {
        Plan high = Outdoors with { Engines = [Turbine with { ShaftHeightMetres = Value(5) }] };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(high);

        Assert.DoesNotContain(assessment.Findings, f => f.Code == "exhaust.meets-floor");
    }

    [Fact]
    public void Assess_ShaftHeightUnknown_CountsAsOnTheFloor()
    {
        Plan unknown = Outdoors with { Engines = [Turbine with { ShaftHeightMetres = null }] };

        Assert.Equal(
            Figure(ExhaustAssessor.Assess(Outdoors), "exhaust.speed-reach-public").Planning,
            Figure(ExhaustAssessor.Assess(unknown), "exhaust.speed-reach-public").Planning,
            1e-9
        );
    }

    // Under about 3.4 N the exhaust of this mass flow is slower than 8.9 m/s at the nozzle itself: no zone at all.
    [Fact]
    public void Assess_MoreThrust_NeverShortensTheSpeedZone() =>
        Gen.Select(Gen.Double[0.5, 1500], Gen.Double[1.01, 2])
            .Sample(
                (thrust, factor) =>
                {
                    Quantity less = Reach(thrust, "exhaust.speed-reach-public");
                    Quantity more = Reach(thrust * factor, "exhaust.speed-reach-public");
                    bool blows = thrust > 4;
                    return blows
                        ? more.Best > less.Best && more.Planning > less.Planning
                        : more.Best >= less.Best && more.Planning >= less.Planning;
                }
            );

    [Fact]
    public void Assess_MoreThrustAtFixedHeat_NeverLengthensTheHeatZone() =>
        Gen.Select(Gen.Double[0.5, 1500], Gen.Double[1.01, 2])
            .Sample(
                (thrust, factor) =>
                {
                    Quantity less = Reach(thrust, "exhaust.heat-reach-public");
                    Quantity more = Reach(thrust * factor, "exhaust.heat-reach-public");
                    return more.Best < less.Best && more.Planning < less.Planning;
                }
            );

    [Fact]
    public void Assess_OddPlans_NeverThrowAndNeverGiveNonsense()
    {
        Engine odd = Turbine with { Id = "", Sheet = Sheet with { LengthMetres = null, NozzleDiameterMetres = null } };
        Site site = Field with
        {
            Outline = [],
            Enclosure = Tent with { Footprint = [new(0, 0), new(0, 0), new(0, 0)] },
            Structures = [new() { Id = "s", Line = [new(0, 0)] }, new() { Id = "t", Line = [new(0, 0), new(0, 0)] }],
            Burnables = [new() { Id = "b", Outline = [] }, new() { Id = "c", Outline = [new(0, 1), new(0, 1)] }],
        };
        ThrottleState cold = Full with { Id = "cold", ExhaustTotalTemperatureCelsius = Value(20) };

        ExhaustAssessment assessment = ExhaustAssessor.Assess(
            Outdoors with
            {
                Site = site,
                Engines = [odd, Turbine with { Sheet = Sheet with { States = [cold] } }, odd],
            }
        );

        Assert.All(assessment.Zones, z => Assert.True(z.Area.IsValid));
        Assert.Empty(ExhaustAssessor.Assess(new Plan()).Findings);
    }

    private static Quantity Reach(double thrust, string key) =>
        Figure(
            ExhaustAssessor.Assess(
                WithStates(Full with { ThrustNewtons = Value(thrust), ExhaustSpeedMetresPerSecond = null })
            ),
            key
        );

    private static Quantity Figure(ExhaustAssessment assessment, string key) =>
        assessment.Figures.First(f => f.Key == key).Value;
}
