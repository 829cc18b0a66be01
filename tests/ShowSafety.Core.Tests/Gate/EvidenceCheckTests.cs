using ShowSafety.Core.Gate;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Gate.GatePlans;

namespace ShowSafety.Core.Tests.Gate;

public sealed class EvidenceCheckTests
{
    private static Finding Only(Plan plan) => Assert.Single(GateAssessor.Assess(plan).Findings);

    [Fact]
    public void Assess_RunningHoursMissing_Stops() =>
        AssertStop("gate.running-hours-missing", WithEvidence(e => e with { RunningHours = null }));

    [Fact]
    public void Assess_CrackCheckMissing_Stops() =>
        AssertStop("gate.crack-check-missing", WithEvidence(e => e with { CrackCheckOn = null }));

    [Fact]
    public void Assess_TripNeverProven_Stops() =>
        AssertStop("gate.trip-proof-missing", WithEvidence(e => e with { TripProvenOn = null }));

    [Fact]
    public void Assess_RatedRunsMissing_Stops() =>
        AssertStop("gate.rated-runs-missing", WithEvidence(e => e with { RatedRuns = null }));

    // Three consecutive ten-minute runs: published code of a hobby association (issue 9, 2001; issue 10, 2022).
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public void Assess_FewerThanThreeRatedRuns_Stops(int runs) =>
        AssertStop("gate.rated-runs-few", WithEvidence(e => e with { RatedRuns = runs }));

    [Fact]
    public void Assess_ChecksDatedAfterTheEventBegins_Stop()
    {
        AssertStop("gate.crack-check-late", WithEvidence(e => e with { CrackCheckOn = new(2031, 6, 8) }));
        AssertStop("gate.trip-proof-late", WithEvidence(e => e with { TripProvenOn = new(2032, 1, 1) }));
    }

    [Fact]
    public void Assess_HoursShorterThanTheRatedRuns_Stops() =>
        AssertStop("gate.evidence-contradicts", WithEvidence(e => e with { RunningHours = Measured(0.4) }));

    [Fact]
    public void Assess_HoursOfExactlyTheRatedRuns_AreAccepted() =>
        Assert.Empty(GateAssessor.Assess(WithEvidence(e => e with { RunningHours = Measured(0.5) })).Findings);

    [Fact]
    public void Assess_AssumedEvidence_Stops() =>
        AssertStop("gate.evidence-assumed", WithEvidence(e => e with { Pedigree = Pedigree.Assumed }));

    [Fact]
    public void Assess_OverhaulAndContainment_AreNoted()
    {
        Plan plan = WithEvidence(e => e with { Overhaul = "shop, 2030", ContainmentTest = "report 3" });

        var findings = GateAssessor.Assess(plan).Findings;

        Assert.Equal(["gate.overhaul-recorded", "gate.containment-recorded"], findings.Select(f => f.Code));
        Assert.All(findings, f => Assert.Equal(Severity.Note, f.Severity));
    }

    [Fact]
    public void Assess_EvidenceForAnUnknownEngine_IsNotedAndCountsForNone()
    {
        var codes = GateAssessor
            .Assess(WithEvidence(e => e with { EngineId = "two" }))
            .Findings.Select(f => f.Code)
            .ToList();

        Assert.Contains("gate.evidence-without-engine", codes);
        Assert.Contains("gate.crack-check-missing", codes);
    }

    [Fact]
    public void Assess_TwoEntriesForOneEngine_TheWorseOneCounts()
    {
        EngineEvidence good = Complete.Gate!.EngineEvidence[0];
        Plan plan = Complete with
        {
            Gate = Complete.Gate with { EngineEvidence = [good, good with { RatedRuns = 1 }] },
        };

        AssertStop("gate.rated-runs-few", plan);
    }

    private static void AssertStop(string code, Plan plan)
    {
        Finding finding = Only(plan);
        Assert.Equal(code, finding.Code);
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal("one", finding.ElementId);
    }
}
