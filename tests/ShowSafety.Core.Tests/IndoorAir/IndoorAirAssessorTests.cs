using CsCheck;
using ShowSafety.Core.IndoorAir;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Exhaust.ExhaustPlans;

namespace ShowSafety.Core.Tests.IndoorAir;

public sealed class IndoorAirAssessorTests
{
    [Fact]
    public void Assess_Outdoors_SaysNothing()
    {
        IndoorAirAssessment assessment = IndoorAirAssessor.Assess(Outdoors);

        Assert.Empty(assessment.Findings);
        Assert.Empty(assessment.Zones);
        Assert.Empty(assessment.Figures);
    }

    [Fact]
    public void Assess_EngineOutsideTheTent_SaysNothing()
    {
        Plan plan = Inside with { Engines = [Turbine with { Place = new(40, 40) }] };

        Assert.Empty(IndoorAirAssessor.Assess(plan).Findings);
    }

    [Fact]
    public void Assess_EngineBlowingIn_CountsAsInside()
    {
        Plan plan = Inside with { Engines = [Turbine with { Place = new(0, -10) }] };

        IndoorAirAssessment assessment = IndoorAirAssessor.Assess(plan);

        Assert.Contains(assessment.Findings, f => f.Code == "indoor-air.engine-blows-in");
        Assert.NotEmpty(assessment.Series);
    }

    // 500 m³, 0.5 · 2 m³/s: 60 s of 0.14 g/s and 120 s of 0.272 g/s of CO, solved step by step by hand.
    [Fact]
    public void Assess_RunInATent_GivesTheRoomBalance()
    {
        IndoorAirAssessment assessment = IndoorAirAssessor.Assess(Inside);

        double idle = 140 * (1 - Math.Exp(-60.0 / 500));
        double full = (272 * (1 - Math.Exp(-120.0 / 500))) + (idle * Math.Exp(-120.0 / 500));
        Quantity peak = assessment.Figures.Single(f => f.Key == "indoor-air.peak-carbon-monoxide").Value;
        Assert.Equal(full, peak.Planning, 1e-6);
        Assert.True(peak.Best < peak.Planning);
        Assert.Equal(
            full,
            assessment.Series.Single(p => p.Minutes == 3).CarbonMonoxideMilligramsPerCubicMetre!.Value,
            1e-6
        );
        Assert.Equal(new TimeOnly(11, 0), assessment.FirstLightUp);
    }

    [Fact]
    public void Assess_RunInATent_SendsVisitorsOut()
    {
        IndoorAirAssessment assessment = IndoorAirAssessor.Assess(Inside);

        Zone zone = assessment.Zones.Single();
        Assert.Equal(ZoneRow.IndoorAir, zone.Row);
        Assert.Equal(ZoneEffect.Excludes, zone.Effect);
        Assert.Equal(200, zone.Area.Area, 1e-9);
        Finding over = assessment.Findings.First(f => f.Code == "indoor-air.visitors-over");
        Assert.Equal(Severity.Stop, over.Severity);
        double moment = assessment.Figures.Single(f => f.Key == "indoor-air.visitors-out-from").Value.Planning;
        Assert.InRange(moment, 0.01, 3);
        Assert.Contains(assessment.Figures, f => f.Key == "indoor-air.time-to-clear");
        Assert.True(assessment.CanTell);
    }

    [Fact]
    public void Assess_HotRun_SaysItsRangeEnds()
    {
        ThrottleStep step = new() { StateId = "full", Seconds = 1200 };
        Plan plan = Inside with { Programme = new() { Runs = [Run("long", 11, 0, step)] } };

        IndoorAirAssessment assessment = IndoorAirAssessor.Assess(plan);

        Finding range = assessment.Findings.Single(f => f.Code == "indoor-air.rise-out-of-range");
        Assert.True(range.CannotTell);
        Assert.DoesNotContain(assessment.Figures, f => f.Key == "indoor-air.peak-temperature");
        Assert.Null(assessment.Series.Single(p => p.Minutes == 20).TemperatureCelsius);
        Assert.Contains(assessment.Findings, f => f.Code == "indoor-air.workers-over");
    }

    [Fact]
    public void Assess_NoFreshAirAtAll_NeverClears()
    {
        Plan plan = With(Tent with { FreshAirCubicMetresPerSecond = Value(0) });

        IndoorAirAssessment assessment = IndoorAirAssessor.Assess(plan);

        Assert.Contains(assessment.Findings, f => f.Code == "indoor-air.never-clears" && f.Severity == Severity.Stop);
        Assert.DoesNotContain(assessment.Figures, f => f.Key == "indoor-air.time-to-clear");
    }

    [Theory]
    [InlineData("indoor-air.fresh-air-missing")]
    [InlineData("indoor-air.volume-missing")]
    [InlineData("indoor-air.footprint-odd")]
    [InlineData("indoor-air.programme-missing")]
    [InlineData("indoor-air.fuel-flow-missing")]
    [InlineData("indoor-air.carbon-monoxide-missing")]
    [InlineData("indoor-air.nitrogen-oxides-missing")]
    [InlineData("indoor-air.state-unknown")]
    public void Assess_SomethingMissing_CannotTellStopsAndNeverPasses(string code)
    {
        IndoorAirAssessment assessment = IndoorAirAssessor.Assess(Lacking(code));

        Finding finding = assessment.Findings.First(f => f.Code == code);
        Assert.True(finding.CannotTell);
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal(ZoneRow.IndoorAir, finding.Row);
        Assert.False(assessment.CanTell);
        Assert.DoesNotContain(assessment.Findings, f => f.Code == "indoor-air.guidance-kept");
    }

    [Fact]
    public void Assess_HugeAiryHallAndAMoment_KeepsTheGuidance()
    {
        Enclosure hall = Tent with
        {
            Kind = EnclosureKind.Hall,
            Footprint = [new(-100, -100), new(100, -100), new(100, 100), new(-100, 100)],
            EavesHeightMetres = Value(20),
            FreshAirCubicMetresPerSecond = Value(200),
        };
        ThrottleStep step = new() { StateId = "idle", Seconds = 60 };
        Plan plan = With(hall) with { Programme = new() { Runs = [Run("short", 11, 0, step)] } };

        IndoorAirAssessment assessment = IndoorAirAssessor.Assess(plan);

        Assert.Contains(assessment.Findings, f => f.Code == "indoor-air.guidance-kept");
        Assert.Empty(assessment.Zones);
    }

    [Fact]
    public void Assess_EngineAirFlow_NeverDilutes()
    {
        ThrottleState airy = Full with { AirMassFlowKilogramsPerSecond = Value(5) };
        Plan plan = Inside with { Engines = [Turbine with { Sheet = Sheet with { States = [Idle, airy] } }] };

        Assert.Equal(IndoorAirAssessor.Assess(Inside).Series, IndoorAirAssessor.Assess(plan).Series);
    }

    [Fact]
    public void Assess_OpenSides_DoNotDilute()
    {
        Plan open = With(
            Tent with
            {
                Sides = [new() { Side = 0, OpenShare = Value(1) }, new() { Side = 2, OpenShare = Value(1) }],
            }
        );

        Assert.Equal(IndoorAirAssessor.Assess(Inside).Series, IndoorAirAssessor.Assess(open).Series);
    }

    [Fact]
    public void Assess_SeveralDays_TakesTheWorst()
    {
        DateOnly first = new(2026, 6, 6);
        ThrottleStep shortRun = new() { StateId = "idle", Seconds = 30 };
        ThrottleStep longRun = new() { StateId = "full", Seconds = 240 };
        Plan plan = Inside with
        {
            Programme = new()
            {
                Runs =
                [
                    Run("a", 10, 0, shortRun) with
                    {
                        Day = first,
                    },
                    Run("b", 10, 0, longRun) with
                    {
                        Day = first.AddDays(1),
                    },
                ],
            },
        };

        Assert.Equal(first.AddDays(1), IndoorAirAssessor.Assess(plan).Day);
    }

    [Fact]
    public void Assess_MoreFreshAir_NeverRaisesAMean() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[0, 20])
            .Sample(
                (fresh, more) =>
                {
                    ValueList<AirComparison> little = Fresh(fresh);
                    ValueList<AirComparison> much = Fresh(fresh + more);
                    return little
                        .Zip(much)
                        .All(p => p.Second.LargestMean.Planning <= p.First.LargestMean.Planning * (1 + 1e-9));
                },
                iter: 50
            );

    [Fact]
    public void Assess_RoofDetectorsUnknown_IsToBeClosed()
    {
        Assert.Contains(IndoorAirAssessor.Assess(Inside).Findings, f => f.Code == "indoor-air.heat-detectors");
        Assert.DoesNotContain(
            IndoorAirAssessor.Assess(With(Tent with { HeatDetectors = false })).Findings,
            f => f.Code == "indoor-air.heat-detectors"
        );
    }

    [Fact]
    public void Assess_OddPlans_NeverThrow()
    {
        ThrottleStep[] steps = [new() { StateId = "full", Seconds = 0 }, new() { StateId = "", Seconds = -5 }];
        Plan plan = Inside with { Programme = new() { Runs = [Run("odd", 0, 0, steps), Run("none", 23, 59)] } };

        Assert.NotEmpty(IndoorAirAssessor.Assess(plan).Findings);
        Assert.NotEmpty(IndoorAirAssessor.Assess(Inside with { Engines = [new() { Id = "bare" }] }).Findings);
    }

    private static ValueList<AirComparison> Fresh(double cubicMetresPerSecond) =>
        IndoorAirAssessor
            .Assess(With(Tent with { FreshAirCubicMetresPerSecond = Value(cubicMetresPerSecond) }))
            .Comparisons;

    private static Plan With(Enclosure enclosure) => Inside with { Site = Field with { Enclosure = enclosure } };

    private static Plan Lacking(string code)
    {
        return code switch
        {
            "indoor-air.fresh-air-missing" => With(Tent with { FreshAirCubicMetresPerSecond = null }),
            "indoor-air.volume-missing" => With(Tent with { EavesHeightMetres = null }),
            "indoor-air.footprint-odd" => With(Tent with { Footprint = [new(0, 0), new(1, 1)] }),
            "indoor-air.programme-missing" => Inside with { Programme = null },
            "indoor-air.fuel-flow-missing" => State(Full with { FuelFlowKilogramsPerSecond = null }),
            "indoor-air.carbon-monoxide-missing" => State(Full with { CarbonMonoxideGramsPerKilogram = null }),
            "indoor-air.nitrogen-oxides-missing" => State(Full with { NitrogenOxidesGramsPerKilogram = null }),
            _ => State(Full with { Id = "other" }),
        };

        static Plan State(ThrottleState full) =>
            Inside with
            {
                Engines = [Turbine with { Sheet = Sheet with { States = [Idle, full] } }],
            };
    }
}
