using ShowSafety.Core.Gate;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Gate.GatePlans;

namespace ShowSafety.Core.Tests.Gate;

public sealed class TentCheckTests
{
    private static IReadOnlyList<Finding> Findings(EnclosureKind kind, TentPapers? papers, double? wind = null)
    {
        Plan plan = Under(kind);
        plan = plan with
        {
            Gate = plan.Gate! with { Tent = papers },
            Site = plan.Site with
            {
                Weather = wind is { } w ? new() { HighestWindMetresPerSecond = Measured(w) } : null,
            },
        };
        return [.. GateAssessor.Assess(plan).Findings.Where(f => f.ElementId == "roof")];
    }

    [Fact]
    public void Assess_Hall_AsksForTheMakersWordOnly() =>
        Assert.Equal(["gate.indoors-practice"], Findings(EnclosureKind.Hall, null).Select(f => f.Code));

    [Fact]
    public void Assess_TentWithoutPapers_StopsOnTheCertificate()
    {
        var findings = Findings(EnclosureKind.Tent, null);

        Assert.Equal(
            [
                ("gate.indoors-practice", Severity.Act),
                ("gate.tent-fabric-certificate-missing", Severity.Stop),
                ("gate.tent-wind-limit-missing", Severity.Act),
            ],
            findings.Select(f => (f.Code, f.Severity))
        );
    }

    [Theory]
    [InlineData(10, 5.0, false)]
    [InlineData(5, 5.0, true)]
    [InlineData(8, null, true)]
    [InlineData(9, null, false)]
    public void Assess_WindLimitWithinThePlannedBand_IsToBeClosed(double limit, double? wind, bool expected)
    {
        var papers = new TentPapers { FabricCertificate = "invented 12", ClearAtWindMetresPerSecond = Measured(limit) };

        Assert.Equal(
            expected,
            Findings(EnclosureKind.Tent, papers, wind).Any(f => f.Code == "gate.tent-wind-within-plan")
        );
    }
}
