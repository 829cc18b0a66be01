using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;
using ShowSafety.Core.Sums;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound;

public sealed class SoundAssessorTests
{
    private static SoundAssessment Assess(Plan plan) => SoundAssessor.Assess(plan, SoundField.Build(plan));

    public static TheoryData<string> LapseCodes => [.. Lapses.Keys];

    private static readonly Dictionary<string, Func<SoundMeasurement, SoundMeasurement>> Lapses = new()
    {
        ["sound.meter-unclassed"] = r => r with { MeterClass = MeterClass.Unclassed },
        ["sound.measured-too-near"] = r => r with { DistanceMetres = 2.49 },
        ["sound.measured-in-wind"] = r => r with { WindMetresPerSecond = 5 },
        ["sound.wind-unknown"] = r => r with { WindMetresPerSecond = null },
        ["sound.measured-indoors"] = r => r with { Outdoors = false },
        ["sound.room-incomplete"] = r =>
            r with
            {
                Outdoors = false,
                Room = new() { VolumeCubicMetres = 3000 },
            },
        ["sound.room-taken-off"] = r => r with { Outdoors = false, Room = Room(0.8) },
        ["sound.room-live"] = r => r with { Outdoors = false, Room = Room(2) },
        ["sound.room-too-live"] = r => r with { Outdoors = false, Room = Room(15) },
        ["sound.levels-doubtful"] = r => r with { BandLevelsDb = null, LevelDbA = 104, LevelDbC = 125 },
        ["sound.not-calibrated"] = r => r with { Calibrated = null },
        ["sound.level-from-maker"] = r => r with { Pedigree = Pedigree.Maker },
        ["sound.level-estimated"] = r => r with { Pedigree = Pedigree.Estimated },
        ["sound.background-close"] = r => r with { BandLevelsDb = BandValues.Uniform(20), LevelDbA = 54 },
        ["sound.background-unknown"] = r => r with { BackgroundDbA = null },
        ["sound.spectrum-flat"] = r => r with { BandLevelsDb = null, LevelDbA = 104, StateId = "other" },
        ["sound.spectrum-jet-shape"] = r => r with { BandLevelsDb = null, LevelDbA = 104 },
    };

    private static MeasurementRoom Room(double seconds) =>
        new() { VolumeCubicMetres = 3000, ReverberationSeconds = seconds };

    [Theory]
    [MemberData(nameof(LapseCodes))]
    public void Assess_LapseOfAMeasurement_IsAFindingAndWidensTheUncertainty(string code)
    {
        SoundMeasurement lapsed = Lapses[code](Reading());
        SoundAssessment careful = Assess(Single(Reading()));
        SoundAssessment assessment = Assess(Single(lapsed));
        double before = LevelUncertainty.ExpandedDb(careful.Sources.First(s => s.StateId == Full).Uncertainty);
        double after = LevelUncertainty.ExpandedDb(
            assessment.Sources.First(s => s.StateId == lapsed.StateId).Uncertainty
        );

        Assert.DoesNotContain(careful.Findings, f => f.Code == code);
        Assert.Contains(assessment.Findings, f => f.Code == code && f.ElementId == EngineId);
        Assert.True(after > before);
    }

    [Fact]
    public void Assess_BackgroundTooHigh_IsCannotTellAndAStop()
    {
        SoundAssessment assessment = Assess(Single(Reading() with { BackgroundDbA = 104 }));

        Assert.Contains(assessment.Findings, f => f is { Code: "sound.background-too-high", CannotTell: true });
        Assert.Contains(
            assessment.Findings,
            f => f is { Code: "sound.level-cannot-tell", CannotTell: true, Severity: Severity.Stop }
        );
    }

    [Fact]
    public void Assess_EngineWithoutSheet_IsAStop() =>
        Assert.Contains(
            Assess(Plan(new Engine { Id = "bare" })).Findings,
            f => f is { Code: "sound.engine-cannot-tell", CannotTell: true, Severity: Severity.Stop }
        );

    [Fact]
    public void Assess_ProgrammeUsesAStateNobodyMeasured_IsAStopForThatStateOnly()
    {
        Run run = new()
        {
            Id = "r",
            EngineId = EngineId,
            Steps = [new() { StateId = "boost", Seconds = 60 }],
        };
        Plan plan = Single(Reading()) with { Programme = new() { Runs = [run] } };

        Finding stop = Assert.Single(Assess(plan).Findings, f => f.Severity == Severity.Stop);

        Assert.Equal("sound.level-cannot-tell", stop.Code);
        Assert.Equal("boost", Assert.Single(stop.Arguments).Text);
    }

    [Fact]
    public void Assess_PeakNotMeasured_IsCannotTellAndAnAct() =>
        Assert.Contains(
            Assess(Single(Reading() with { PeakDbC = null })).Findings,
            f => f is { Code: "sound.peak-not-measured", CannotTell: true, Severity: Severity.Act }
        );

    [Theory]
    [InlineData(0.4, false)]
    [InlineData(0.6, true)]
    [InlineData(-0.6, true)]
    public void Assess_BandsAndLevelApart_SaysSoFromHalfADecibel(double difference, bool said)
    {
        double level = FrequencyWeighting.LevelDbA(Bands) + difference;
        SoundAssessment assessment = Assess(Single(Reading() with { LevelDbA = level }));

        Assert.Equal(said, assessment.Findings.Any(f => f.Code == "sound.bands-and-level-disagree"));
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(14, true)]
    [InlineData(-14, true)]
    public void Assess_ReadingFarFromTheJetEstimate_SaysSo(double off, bool said)
    {
        // 80 N class (memory: Bies and Hansen): 0.23 kg/s at 355 m/s and 850 K make about 124 dB.
        ThrottleState state = State(Full, 355) with
        {
            AirMassFlowKilogramsPerSecond = Stated(0.23),
            ExhaustTotalTemperatureCelsius = Stated(577),
        };
        double unweighted = Decibels.Sum(Bands);
        double wanted = 124 - 6 - 20 * Math.Log10(5) - 8 + off; // at 90 degrees the table has -6 dB
        Engine engine = Engine(Reading() with { BandLevelsDb = Bands + (wanted - unweighted) });
        engine = engine with { Sheet = engine.Sheet! with { States = [state] } };

        Assert.Equal(said, Assess(Plan(engine)).Findings.Any(f => f.Code == "sound.jet-power-far-off"));
    }

    [Fact]
    public void Assess_DeclaredOmnidirectional_IsHonouredAndSaid()
    {
        Engine engine = Engine(Reading());
        engine = engine with { Sheet = engine.Sheet! with { Directivity = Directivity.DeclaredOmnidirectional } };
        SoundAssessment assessment = Assess(Plan(engine));

        Assert.Contains(assessment.Findings, f => f.Code == "sound.declared-omnidirectional");
        Assert.DoesNotContain(assessment.Findings, f => f.Code == "sound.table-adds");
        Assert.Equal(0, assessment.Sources.First(s => s.StateId == Full).TableAddsDb, 1e-6);
    }

    [Fact]
    public void Assess_SingleReadingAt90_SaysWhatTheTableAdds()
    {
        SourceSummary source = Assess(Single(Reading())).Sources.First(s => s.StateId == Full);

        // 6.25 dB over the sphere for a reading at 90 degrees (memory: Heller and Franken's table).
        Assert.Equal(6.25, source.TableAddsDb, 0.05);
    }

    [Fact]
    public void Assess_Hall_GivesFiguresThatAreKnownEverywhere()
    {
        SoundAssessment assessment = Assess(Single(Reading()).Within(Hall()));

        Assert.Contains(assessment.Figures, f => f.Key == "sound.critical-distance");
        Assert.All(
            assessment.Figures,
            f =>
            {
                Assert.NotNull(SumRegistry.Find(f.Value.Sum!));
                Assert.All(f.Value.Citations, id => Assert.NotNull(CitationRegistry.Get(id)));
            }
        );
    }

    [Fact]
    public void Assess_TwoEqualPlans_AreEqual() =>
        Assert.Equal(
            Assess(Single(Reading()).Within(Tent())).Findings,
            Assess(Single(Reading()).Within(Tent())).Findings
        );

    [Fact]
    public void Assess_OddPlans_NeverFailAndNeverGiveNonsense()
    {
        SoundMeasurement[] odd =
        [
            Reading("a") with
            {
                BandLevelsDb = null,
            },
            Reading("b") with
            {
                DistanceMetres = 0,
            },
            Reading("c") with
            {
                DistanceMetres = double.NaN,
            },
            Reading("d") with
            {
                AngleDegrees = double.NaN,
            },
            Reading("e") with
            {
                AngleDegrees = null,
                StateId = "ghost",
            },
            Reading("f") with
            {
                BandLevelsDb = BandValues.Uniform(1e6),
            },
            Reading("g") with
            {
                LevelDbA = double.PositiveInfinity,
            },
            Reading("h") with
            {
                PeakDbC = double.NaN,
            },
        ];
        Plan[] plans =
        [
            new(),
            Plan(),
            Single(),
            Plan(Engine(odd), Engine(odd)),
            Plan(Engine(Reading()) with { Place = new(double.NaN, 0) }),
            Plan(Engine(Reading()) with { ExhaustHeadingDegrees = double.NaN }),
            Single(Reading()).Within(Hall() with { Footprint = [new(0, 0), new(1, 1), new(1, 0), new(0, 1)] }),
            Single(Reading()).Within(Hall() with { EavesHeightMetres = null }),
            Single(Reading())
                .Within(Hall() with { Sides = [new() { Side = 99 }, new() { Side = 0, OpenShare = Stated(7) }] }),
            Single(Reading())
                .Within(
                    new Enclosure
                    {
                        Id = "x",
                        Footprint = Hall().Footprint,
                        EavesHeightMetres = Stated(4),
                    }
                ),
            Single(Reading())
                .Within(Hall() with { WallMaterial = "open", RoofMaterial = "open", FloorMaterial = "open" }),
        ];

        Assert.All(
            plans,
            plan =>
            {
                var field = SoundField.Build(plan);
                SoundAssessment assessment = SoundAssessor.Assess(plan, field);
                PointLevel? level = field.LevelAt(new(3, 4), 1.6, At(Full));
                Assert.True(level is null || double.IsFinite(level.PlanningDbA));
                Assert.NotNull(assessment.Findings);
            }
        );
    }

    [Fact]
    public void LevelAt_EnclosureCannotBeTold_IsCannotTell()
    {
        Plan plan = Single(Reading()).Within(Hall() with { EavesHeightMetres = null });

        Assert.Null(SoundField.Build(plan).LevelAt(new(1, 1), 1.6, At(Full)));
        Assert.Contains(
            Assess(plan).Findings,
            f => f is { Code: "sound.enclosure-cannot-tell", CannotTell: true, Severity: Severity.Stop }
        );
    }
}
