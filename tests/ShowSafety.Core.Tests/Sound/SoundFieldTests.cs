using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound;

public sealed class SoundFieldTests
{
    private static readonly Gen<SoundMeasurement> AnyReading = Gen.Select(
        Gen.Double[0.5, 50],
        Gen.Double[0, 180],
        Gen.Double[0, 4],
        Gen.Double[0.1, 2],
        Gen.Double[40, 130].Array[8],
        (distance, angle, microphone, source, bands) =>
            Reading() with
            {
                DistanceMetres = distance,
                AngleDegrees = angle,
                MicrophoneHeightMetres = microphone,
                SourceHeightMetres = source,
                BandLevelsDb = BandValues.Of(bands),
                BackgroundDbA = null,
            }
    );

    [Fact]
    public void LevelAt_TheMicrophone_GivesTheReadingBackOverItsGround() =>
        Gen.Select(AnyReading, Gen.Enum<GroundKind>())
            .Sample(
                (read, ground) =>
                {
                    SoundMeasurement reading = read with { Ground = ground };
                    Engine engine = Engine(reading) with { ShaftHeightMetres = Stated(reading.SourceHeightMetres) };
                    Plan plan = Plan(engine);
                    var field = SoundField.Build(plan with { Site = plan.Site with { Ground = ground } });
                    var microphone = engine.Place.Along(reading.AngleDegrees!.Value, reading.DistanceMetres);

                    PointLevel level = field.LevelAt(microphone, reading.MicrophoneHeightMetres, At(Full))!;

                    Assert.All(
                        Enumerable.Range(0, 8),
                        b => Assert.Equal(reading.BandLevelsDb![b], level.BandsDb[b], 0.01)
                    );
                }
            );

    [Fact]
    public void LevelAt_TheMicrophonesOfFourReadings_GivesEachBack()
    {
        SoundMeasurement[] readings =
        [
            .. new[] { 30.0, 70, 110, 170 }.Select(
                (angle, i) =>
                    Reading("m" + i) with
                    {
                        AngleDegrees = angle,
                        // One of them follows no jet, so there is no fit.
                        BandLevelsDb = Bands - (i == 2 ? -8 : 4 * i),
                        DistanceMetres = 4 + i,
                    }
            ),
        ];
        var field = SoundField.Build(Single(readings));

        Assert.All(
            readings,
            r =>
            {
                var place = new PlanPoint(0, 0).Along(r.AngleDegrees!.Value, r.DistanceMetres);
                PointLevel level = field.LevelAt(place, r.MicrophoneHeightMetres, At(Full))!;
                Assert.Equal(FrequencyWeighting.LevelDbA(r.BandLevelsDb!), level.LevelDbA, 0.01);
            }
        );
    }

    [Fact]
    public void LevelAt_LevelInDbAOnly_GivesItBackAtTheMicrophone() =>
        Assert.Equal(
            104,
            SoundField
                .Build(Single(Reading() with { BandLevelsDb = null, LevelDbA = 104 }))
                .LevelAt(new(5, 0), 1.5, At(Full))!
                .LevelDbA,
            0.01
        );

    [Fact]
    public void LevelAt_FartherAlongARay_IsLowerOutdoors() =>
        Gen.Select(Gen.Double[0, 360], Gen.Double[3, 200], Gen.Double[1.02, 3])
            .Sample(
                (heading, near, factor) =>
                {
                    var field = SoundField.Build(Single(Reading() with { AngleDegrees = 40 }));
                    double at = field.LevelAt(new PlanPoint(0, 0).Along(heading, near), 1, At(Full))!.LevelDbA;
                    double beyond = field
                        .LevelAt(new PlanPoint(0, 0).Along(heading, near * factor), 1, At(Full))!
                        .LevelDbA;
                    Assert.True(beyond < at);
                }
            );

    [Fact]
    public void LevelAt_ReadingRaised_RisesAlikeEverywhere() =>
        Gen.Select(Gen.Double[-25, 25], Gen.Double[-25, 25], Gen.Double[0, 20])
            .Sample(
                (x, y, rise) =>
                {
                    SoundMeasurement reading = Reading();
                    Plan quiet = Single(reading).Within(Hall());
                    Plan loud = Single(reading with { BandLevelsDb = Bands + rise }).Within(Hall());
                    double low = SoundField.Build(quiet).LevelAt(new(x, y), 1.6, At(Full))!.LevelDbA;
                    double high = SoundField.Build(loud).LevelAt(new(x, y), 1.6, At(Full))!.LevelDbA;
                    Assert.Equal(rise, high - low, 1e-6);
                }
            );

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void LevelAt_TwoEqualEnginesAtOnePlace_IsThreeDecibelsUp(bool indoors)
    {
        Engine first = Engine(Reading());
        Plan plan = Plan(first, first with { Id = "e2" });
        plan = indoors ? plan.Within(Hall()) : plan;
        var field = SoundField.Build(plan);

        double one = field.LevelAt(new(4, 6), 1.6, At(Full))!.LevelDbA;
        double two = field
            .LevelAt(new(4, 6), 1.6, new Dictionary<string, string> { [EngineId] = Full, ["e2"] = Full })!
            .LevelDbA;

        // 10 lg 2; ISO 1996 and any textbook: +3 dB.
        Assert.Equal(3.01, two - one, 0.005);
    }

    [Fact]
    public void LevelAt_HallWithHardFloor_IsNeverUnderOpenHardGround() =>
        Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], Gen.Double[0.5, 2.2], Gen.Double[3, 12], Gen.Bool)
            .Sample(
                (x, y, ear, height, tent) =>
                {
                    Plan open = Single(Reading());
                    Enclosure enclosure = tent ? Tent() : Hall(height: height);
                    double inside = SoundField
                        .Build(open.Within(enclosure))
                        .LevelAt(new(x, y), ear, At(Full))!
                        .LevelDbA;
                    double outside = SoundField.Build(open).LevelAt(new(x, y), ear, At(Full))!.LevelDbA;
                    Assert.True(inside >= outside - 1e-9);
                }
            );

    [Fact]
    public void LevelAt_WallBehindTheEngine_AddsAtMostThreeDecibels() =>
        Gen.Select(Gen.Double[-20, 20], Gen.Double[-20, 20])
            .Sample(
                (x, y) =>
                {
                    SoundMeasurement reading = Reading();
                    Engine engine = Engine(reading);
                    engine = engine with
                    {
                        Sheet = engine.Sheet! with { Directivity = Directivity.DeclaredOmnidirectional },
                    };
                    Plan open = Plan(engine);
                    Structure wall = new()
                    {
                        Id = "w",
                        Kind = StructureKind.Wall,
                        Line = [new(-5, 6), new(5, 6)],
                    };
                    Plan walled = open with { Site = open.Site with { Structures = [wall] } };
                    double without = SoundField.Build(open).LevelAt(new(x, y), 1.6, At(Full))!.LevelDbA;
                    double with = SoundField.Build(walled).LevelAt(new(x, y), 1.6, At(Full))!.LevelDbA;
                    Assert.InRange(with - without, -1e-9, 3.0104);
                }
            );

    [Fact]
    public void LevelAt_StateNobodyMeasuredAboveTheFastest_IsCannotTell() =>
        Assert.Null(SoundField.Build(Single(Reading(state: Mid))).LevelAt(new(5, 5), 1.6, At(Full)));

    [Fact]
    public void LevelAt_StateUnderTheSlowestMeasured_TakesTheSlowestMeasured()
    {
        var field = SoundField.Build(Single(Reading(state: Mid)));

        Assert.Equal(
            field.LevelAt(new(5, 5), 1.6, At(Mid))!.LevelDbA,
            field.LevelAt(new(5, 5), 1.6, At(Idle))!.LevelDbA
        );
        Assert.Contains(field.Findings, f => f.Code == "sound.state-takes-lowest");
    }

    [Fact]
    public void LevelAt_StateBetweenMeasuredStates_InterpolatesInTheLogarithmOfSpeed()
    {
        SoundMeasurement idle = Reading("m0", Idle) with { BandLevelsDb = Bands - 30 };
        var field = SoundField.Build(Single(idle, Reading()));
        double share = Math.Log(200.0 / 120) / Math.Log(300.0 / 120);
        double low = field.LevelAt(new(5, 5), 1.6, At(Idle))!.LevelDbA;

        Assert.Equal(low + (30 * share), field.LevelAt(new(5, 5), 1.6, At(Mid))!.LevelDbA, 0.01);
    }

    [Theory]
    [InlineData("nobody", Full)]
    [InlineData(EngineId, "unknown")]
    public void LevelAt_UnknownEngineOrState_IsCannotTell(string engine, string state)
    {
        var field = SoundField.Build(Single(Reading()));
        var asked = new Dictionary<string, string> { [engine] = state };

        Assert.Null(field.LevelAt(new(5, 5), 1.6, asked));
        Assert.Null(field.PeakDbCAt(new(5, 5), 1.6, asked));
        Assert.Null(field.Grid(new(0, 0), 1, 2, 2, 1.6, asked));
        Assert.Null(field.ContourAt(85, 1.6, asked));
    }

    [Fact]
    public void LevelAt_NothingRuns_IsSilence() =>
        Assert.True(
            SoundField.Build(Single(Reading())).LevelAt(new(1, 1), 1, new Dictionary<string, string>())!.LevelDbA < -100
        );

    [Fact]
    public void LevelAt_OnTheEngineItself_IsFinite()
    {
        PointLevel level = SoundField.Build(Single(Reading())).LevelAt(new(0, 0), 1, At(Full))!;

        Assert.True(double.IsFinite(level.PlanningDbA));
    }

    [Fact]
    public void LevelAt_ExpandedUncertaintyOfACarefulReading_IsTheTable()
    {
        PointLevel level = SoundField.Build(Single(Reading())).LevelAt(new(9, 3), 1.6, At(Full))!;

        // Class 1 0.7, position 1.0 (ISO 9612:2009, memory), outdoors 1.5 dB (ISO 9613-2:1996 Table 5, memory).
        Assert.Equal(1.65 * Math.Sqrt(0.49 + 1 + 2.25), level.ExpandedUncertaintyDb, 1e-9);
    }

    [Fact]
    public void LevelAt_ReadingOverGrass_ComesOutNoLowerThanOverHardGround()
    {
        double hard = SoundField.Build(Single(Reading())).LevelAt(new(10, 0), 1.6, At(Full))!.LevelDbA;
        SoundMeasurement grass = Reading() with { Ground = GroundKind.Grass };
        double soft = SoundField.Build(Single(grass)).LevelAt(new(10, 0), 1.6, At(Full))!.LevelDbA;

        Assert.InRange(soft - hard, 0, 12);
    }

    [Fact]
    public void PeakDbCAt_TheMicrophone_GivesThePeakBack()
    {
        Quantity peak = SoundField.Build(Single(Reading())).PeakDbCAt(new(5, 0), 1.5, At(Full))!;

        Assert.Equal(120, peak.Best, 0.01);
        Assert.True(peak.Planning > 123);
    }

    [Fact]
    public void PeakDbCAt_NotMeasured_IsCannotTell() =>
        Assert.Null(SoundField.Build(Single(Reading() with { PeakDbC = null })).PeakDbCAt(new(5, 0), 1.5, At(Full)));

    [Fact]
    public void Grid_AnyCell_IsTheLevelAtItsPlace()
    {
        var field = SoundField.Build(Single(Reading()).Within(Tent()));
        LevelGrid grid = field.Grid(new(-12, -8), 1.5, 15, 11, 1.6, At(Full))!;
        PointLevel level = field.LevelAt(new(-12 + (7 * 1.5), -8 + (4 * 1.5)), 1.6, At(Full))!;

        Assert.Equal(level.LevelDbA, grid.BestDbAAt(7, 4), 1e-9);
        Assert.Equal(level.PlanningDbA, grid.PlanningDbAAt(7, 4), 1e-9);
    }

    [Theory]
    [InlineData(0.0, 10, 10)]
    [InlineData(1.0, 0, 10)]
    [InlineData(1.0, 100_000, 100_000)]
    [InlineData(double.NaN, 10, 10)]
    public void Grid_NoGridOrTooLarge_Throws(double step, int columns, int rows) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            SoundField.Build(Single(Reading())).Grid(new(0, 0), step, columns, rows, 1.6, At(Full))
        );

    [Fact]
    public void Build_SamePlanTwice_GivesTheSameLevelsBitForBit()
    {
        Plan plan = Single(Reading(), Reading("m2") with { AngleDegrees = 30 }).Within(Tent());

        Assert.Equal(
            SoundField.Build(plan).Grid(new(-5, -5), 0.7, 20, 20, 1.6, At(Full)),
            SoundField.Build(plan).Grid(new(-5, -5), 0.7, 20, 20, 1.6, At(Full))
        );
    }
}
