using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound.Sources;

public sealed class FittedReadingsTests
{
    // About the published table (memory: Heller and Franken) with up to a decibel of scatter.
    private static readonly SoundMeasurement[] Jet =
    [
        At("m1", 30, 11),
        At("m2", 60, 8.6),
        At("m3", 90, 0.7),
        At("m4", 135, -6.4),
        At("m5", 170, -9.5),
    ];

    private static SoundMeasurement At(string id, double angle, double overDb) =>
        Reading(id) with
        {
            AngleDegrees = angle,
            BandLevelsDb = Bands + overDb,
        };

    [Fact]
    public void LevelAt_TheMicrophonesOfAFit_GivesTheLargerOfReadingAndFit()
    {
        var field = SoundField.Build(Single(Jet));
        StateFit fit = field.Engines[0].State(Full)!.Fit!;

        Assert.True(fit.Holds);
        Assert.Contains(fit.Residuals, r => Math.Abs(r.LevelDb) > 0.1);
        Assert.All(
            Jet.Zip(fit.Residuals),
            pair =>
            {
                var place = new PlanPoint(0, 0).Along(pair.First.AngleDegrees!.Value, pair.First.DistanceMetres);
                PointLevel level = field.LevelAt(place, pair.First.MicrophoneHeightMetres, SoundPlans.At(Full))!;
                double read = FrequencyWeighting.LevelDbA(pair.First.BandLevelsDb!);
                Assert.Equal(pair.First.Id, pair.Second.MeasurementId);
                Assert.Equal(read - Math.Min(0, pair.Second.LevelDb), level.LevelDbA, 0.01);
            }
        );
    }

    [Fact]
    public void Build_Fit_IsSaidAndItsScatterJoinsTheUncertainty()
    {
        Plan plan = Single(Jet);
        var field = SoundField.Build(plan);
        StateSound state = field.Engines[0].State(Full)!;
        SoundAssessment assessment = SoundAssessor.Assess(plan, field);

        UncertaintyPart part = Assert.Single(state.Uncertainty, p => p.Key == "directivity-fit");
        Assert.Equal(state.Fit!.StandardDb, part.StandardDb, 1e-12);
        Assert.InRange(part.StandardDb, 0.1, 3);
        Assert.Contains(field.Findings, f => f is { Code: "sound.directivity-fitted", Severity: Severity.Note });
        Figure[] residuals = [.. assessment.Figures.Where(f => f.Key == "sound.fit-residual")];
        Assert.Equal(Jet.Select(r => r.Id), residuals.Select(f => f.PartId));
        Assert.Equal(state.Fit.Residuals.Select(r => r.LevelDb), residuals.Select(f => f.Value.Best));
    }

    [Fact]
    public void Build_ReadingFarOffTheFit_FallsBackToTheEnvelopeOverEveryReading()
    {
        SoundMeasurement[] readings = [.. Jet.Select(r => r.Id == "m4" ? r with { BandLevelsDb = Bands + 6 } : r)];
        var field = SoundField.Build(Single(readings));
        StateSound state = field.Engines[0].State(Full)!;

        Assert.False(state.Fit!.Holds);
        Assert.IsType<ReadingEnvelope>(state.Power);
        Assert.DoesNotContain(state.Uncertainty, p => p.Key == "directivity-fit");
        Finding said = Assert.Single(field.Findings, f => f.Code == "sound.directivity-not-fitted");
        Assert.Contains(said.Arguments, a => a is { Name: "measurement", Text: "m4" });
    }

    [Fact]
    public void Build_TwoDirections_AreNoFit() =>
        Assert.Null(SoundField.Build(Single([.. Jet.Take(2)])).Engines[0].State(Full)!.Fit);

    [Fact]
    public void Build_DeclaredOmnidirectional_IsNoFit()
    {
        Engine engine = Engine(Jet);
        engine = engine with { Sheet = engine.Sheet! with { Directivity = Directivity.DeclaredOmnidirectional } };

        Assert.IsType<UniformPower>(SoundField.Build(Plan(engine)).Engines[0].State(Full)!.Power);
    }

    [Fact]
    public void Build_StateBetweenFits_ShowsNoResidualsOfItsOwn()
    {
        SoundMeasurement[] idle = [.. Jet.Select(r => r with { Id = "i" + r.Id, StateId = Idle })];
        Plan plan = Single([.. Jet, .. idle]);
        var field = SoundField.Build(plan);

        Assert.Equal(StateOrigin.Interpolated, field.Engines[0].State(Mid)!.Origin);
        Assert.Null(field.Engines[0].State(Mid)!.Fit);
        Assert.Equal(10, SoundAssessor.Assess(plan, field).Figures.Count(f => f.Key == "sound.fit-residual"));
    }
}
