using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound.Sources;

public sealed class LowBandReadingTests
{
    private static SoundMeasurement TwoLevels(double levelDbC) =>
        Reading() with
        {
            BandLevelsDb = null,
            LevelDbA = 104,
            LevelDbC = levelDbC,
        };

    [Fact]
    public void LevelAt_DbAAndDbCRead_GivesBothBackAtTheMicrophone()
    {
        var field = SoundField.Build(Single(TwoLevels(107)));
        PointLevel level = field.LevelAt(new PlanPoint(0, 0).Along(90, 5), 1.5, At(Full))!;

        Assert.Equal(104, FrequencyWeighting.LevelDbA(level.BandsDb), 0.01);
        Assert.Equal(107, FrequencyWeighting.LevelDbC(level.BandsDb), 0.01);
        Assert.Contains(field.Findings, f => f is { Code: "sound.low-bands-raised", Severity: Severity.Note });
    }

    [Theory]
    [InlineData(125, true)]
    [InlineData(107, false)]
    [InlineData(103, false)]
    [InlineData(101.9, true)]
    public void Build_LevelsNoJetGives_AreDoubtful(double levelDbC, bool doubtful)
    {
        var field = SoundField.Build(Single(TwoLevels(levelDbC)));

        Assert.Equal(doubtful, field.Findings.Any(f => f.Code == "sound.levels-doubtful"));
        Assert.Equal(doubtful, field.Engines[0].State(Full)!.Uncertainty.Contains(LevelUncertainty.LevelsDoubtful));
    }

    // IEC 61672-1:2013 Table 3: A exceeds C the most at 4 kHz, 1.0 - (-0.8), and at 8 kHz, -1.1 - (-3.0).
    [Fact]
    public void LeastCOverADb_IsUnderAnyBand() =>
        Assert.True((FrequencyWeighting.CBandsDb - FrequencyWeighting.ABandsDb).Min() > SpectrumGate.LeastCOverADb);
}
