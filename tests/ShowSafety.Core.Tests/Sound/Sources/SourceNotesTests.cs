using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound.Sources;

public sealed class SourceNotesTests
{
    [Theory]
    [InlineData(false, "sound.state-interpolated")]
    [InlineData(true, "sound.state-interpolated-by-shaft")]
    public void Build_StateBetween_SaysByWhichSpeed(bool byShaft, string code)
    {
        ThrottleState[] states = byShaft
            ? [State(Idle, shaft: 40000), State(Mid, shaft: 80000), State(Full, shaft: 120000)]
            : [State(Idle, 120), State(Mid, 200), State(Full, 300)];
        Engine engine = Engine(Reading(), Reading("m2", Idle) with { BandLevelsDb = Bands - 20 });
        engine = engine with { Sheet = engine.Sheet! with { States = [.. states] } };
        var field = SoundField.Build(Plan(engine));

        Assert.Single(field.Findings, f => f.Code.StartsWith("sound.state-interpolated", StringComparison.Ordinal));
        Assert.Contains(field.Findings, f => f.Code == code);
    }

    // Shares of the way in the logarithm: lg(200/120)/lg(300/120) = 0.5575, lg 2/lg 3 = 0.6309 (derived).
    [Theory]
    [InlineData(false, 0.5575)]
    [InlineData(true, 0.6309)]
    public void Build_StateBetween_LiesThatShareOfTheWayInDecibels(bool byShaft, double share)
    {
        ThrottleState[] states = byShaft
            ? [State(Idle, shaft: 40000), State(Mid, shaft: 80000), State(Full, shaft: 120000)]
            : [State(Idle, 120), State(Mid, 200), State(Full, 300)];
        Engine engine = Engine(Reading(), Reading("m2", Idle) with { BandLevelsDb = Bands - 20 });
        engine = engine with { Sheet = engine.Sheet! with { States = [.. states] } };
        EngineSound sound = SoundField.Build(Plan(engine)).Engines[0];

        double full = sound.State(Full)!.Power!.LevelsDb(90)[4];
        Assert.Equal(full - (20 * (1 - share)), sound.State(Mid)!.Power!.LevelsDb(90)[4], 0.002);
    }

    // 110 000 rpm and 12 blades: 22 000 Hz; 30 000 rpm and 11 blades: 5500 Hz. The 8 kHz band ends at 11 220 Hz
    // (IEC 61260-1, base ten: 7943 Hz times 10^0.15; memory).
    [Theory]
    [InlineData(110000, 12, "sound.blade-tone-above-bands", 22000)]
    [InlineData(30000, 11, "sound.blade-tone", 5500)]
    public void Build_CountedBlades_NameTheirTone(double shaft, int blades, string code, double hertz)
    {
        Engine engine = Engine(Reading());
        Rotor rotor = new()
        {
            Id = "wheel",
            Kind = RotorKind.Compressor,
            BladeCount = blades,
        };
        engine = engine with
        {
            Sheet = engine.Sheet! with { States = [State(Full, 300, shaft), State(Idle, 120, 9000)], Rotors = [rotor] },
        };

        Finding tone = Assert.Single(
            SoundField.Build(Plan(engine)).Findings,
            f => f.Code.StartsWith("sound.blade-tone", StringComparison.Ordinal)
        );
        Assert.Equal(code, tone.Code);
        Assert.Equal(hertz, tone.Arguments.Single(a => a.Name == "tone").Quantity!.Best, 1e-6);
    }

    [Fact]
    public void LastBandEdgeHertz_IsHalfABandOverTheLastMidband() =>
        Assert.Equal(11220.18, BladeTones.LastBandEdgeHertz, 0.01);

    [Fact]
    public void Assess_PeakNotMeasured_EstimatesItAndLeavesItCannotTell()
    {
        Plan plan = Single(Reading() with { PeakDbC = null });
        var field = SoundField.Build(plan);
        SoundAssessment assessment = SoundAssessor.Assess(plan, field);

        Quantity estimate = assessment
            .Findings.First(f => f.Code == "sound.peak-estimated")
            .Arguments.Single(a => a.Name == "estimate")
            .Quantity!;

        // Loudest is 40 degrees behind the engine, 14 dB over the reading at 90 degrees; peaks of Gaussian noise reach
        // 14 to 16 dB over the level (memory).
        double loudest = FrequencyWeighting.LevelDbC(
            field.Engines[0].State(Full)!.Power!.LevelsDb(40) + field.OpenPathDb(10, 1, 1.6)
        );
        Assert.Equal(loudest + 16, estimate.Best, 0.01);
        Assert.True(estimate.Planning > estimate.Best + 1);
        Assert.Equal(Pedigree.Assumed, estimate.Pedigree);
        Assert.Null(field.PeakDbCAt(new(0, 10), 1.6, At(Full)));
        Assert.False(assessment.Sources.First(s => s.StateId == Full).HasPeak);
    }

    [Fact]
    public void Assess_PeakMeasured_EstimatesNone()
    {
        Plan plan = Single(Reading(), Reading("m2", Mid), Reading("m3", Idle));

        Assert.DoesNotContain(
            SoundAssessor.Assess(plan, SoundField.Build(plan)).Findings,
            f => f.Code == "sound.peak-estimated"
        );
    }
}
