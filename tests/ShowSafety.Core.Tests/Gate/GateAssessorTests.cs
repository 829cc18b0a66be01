using ShowSafety.Core.Gate;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Gate.GatePlans;

namespace ShowSafety.Core.Tests.Gate;

public sealed class GateAssessorTests
{
    [Fact]
    public void Assess_EverythingThere_FindsNothing()
    {
        GateAssessment assessment = GateAssessor.Assess(Complete);

        Assert.Empty(assessment.Findings);
        Assert.Equal(
            ["gate.bench-tips-load", "gate.bench-tips-hold", "gate.bench-slides-load", "gate.bench-slides-hold"],
            assessment.Figures.Select(f => f.Key)
        );
    }

    [Fact]
    public void Assess_EmptyPlan_AsksForDaysPermissionsAndMeansOfStopping()
    {
        GateAssessment assessment = GateAssessor.Assess(new Plan());

        Assert.Equal(
            [
                "gate.event-days-missing",
                "gate.permission-missing-venue-or-organiser",
                "gate.permission-missing-insurer",
                "gate.fuel-cut-time-missing",
                "gate.fuel-cut-independence-missing",
                "gate.stop-people-few",
                "gate.stop-triggers-missing",
            ],
            assessment.Findings.Select(f => f.Code)
        );
        Assert.All(assessment.Findings.SkipLast(1), f => Assert.Equal(Severity.Stop, f.Severity));
    }

    [Fact]
    public void Assess_BareEngine_StopsOnEveryMissingFact()
    {
        var plan = Complete with
        {
            Engines = [new() { Id = "bare" }],
            Gate = Complete.Gate! with { EngineEvidence = [] },
        };

        var stops = GateAssessor.Assess(plan).Findings.Where(f => f.ElementId == "bare").ToList();

        Assert.Equal(
            [
                "gate.fuel-unknown",
                "gate.running-hours-missing",
                "gate.crack-check-missing",
                "gate.trip-proof-missing",
                "gate.rated-runs-missing",
                "gate.restraint-unknown-thrust",
                "gate.restraint-unknown-mass",
                "gate.restraint-unknown-arm",
                "gate.restraint-unknown-height",
            ],
            stops.Select(f => f.Code)
        );
        Assert.All(stops, f => Assert.True(f is { Severity: Severity.Stop, CannotTell: true, Field: not null }));
    }

    [Fact]
    public void Assess_SamePlanTwice_GivesEqualAssessments() =>
        Assert.Equal(GateAssessor.Assess(Complete), GateAssessor.Assess(Complete));
}
