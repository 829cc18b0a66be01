using ShowSafety.Core.Gate;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Gate.GatePlans;

namespace ShowSafety.Core.Tests.Gate;

public sealed class StoppingCheckTests
{
    private static Finding Only(Func<Stopping, Stopping> change) =>
        Assert.Single(GateAssessor.Assess(WithStopping(change)).Findings);

    // Shut-down within 2 s: guidelines of the Canadian national body for model gas turbines.
    [Fact]
    public void Assess_CutInTwoSeconds_IsAcceptedAndLongerIsNot()
    {
        Assert.Empty(GateAssessor.Assess(WithStopping(s => s with { FuelCutSeconds = Measured(2) })).Findings);
        Assert.Equal("gate.fuel-cut-slow", Only(s => s with { FuelCutSeconds = Measured(2.01) }).Code);
    }

    [Fact]
    public void Assess_CutTimeMissing_CannotTellAndStops()
    {
        Finding finding = Only(s => s with { FuelCutSeconds = null });

        Assert.True(finding is { CannotTell: true, Severity: Severity.Stop, Field: "Stopping.FuelCutSeconds" });
    }

    [Fact]
    public void Assess_CutThroughTheController_Stops()
    {
        Assert.Equal("gate.fuel-cut-dependent", Only(s => s with { Independent = false }).Code);
        Assert.True(Only(s => s with { Independent = null }).CannotTell);
    }

    [Fact]
    public void Assess_OnePersonWhoCanStop_Stops()
    {
        Finding finding = Only(s => s with { StopPosts = [new() { Id = "a" }] });

        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal("1", finding.Arguments.Single().Text);
    }

    [Fact]
    public void Assess_NoTriggers_IsToBeClosed() =>
        Assert.Equal(Severity.Act, Only(s => s with { Triggers = " " }).Severity);
}
