using System.Text.Json;
using Json.Schema;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

public sealed class SiteTemplateTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(
        PlanSchema.Write().Replace("urn:showsafety:plan:1", "urn:showsafety:plan:templates", StringComparison.Ordinal)
    );

    public static TheoryData<string> Names => Templates.Names;

    [Fact]
    public void Folder_Templates_AreTheFour() =>
        Assert.Equal(
            Names.Select(row => row.Data).Order(StringComparer.Ordinal),
            Directory
                .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "site-templates"), "*.json")
                .Select(file => Path.GetFileNameWithoutExtension(file))
                .Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void Template_ReadWrittenAndReadAgain_IsEqual(string name)
    {
        Plan plan = Templates.Plan(name);

        Assert.Equal(plan, PlanReader.Read(PlanWriter.Write(plan)).Plan);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Template_AgainstTheSchema_IsValid(string name)
    {
        using JsonDocument document = JsonDocument.Parse(Templates.Bytes(name));

        Assert.True(Schema.Evaluate(document.RootElement, new() { OutputFormat = OutputFormat.Flag }).IsValid);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Template_EveryStatedValue_IsAnExample(string name)
    {
        Plan plan = Templates.Plan(name);

        Assert.True(PlanExamples.IsExample(plan));
        Assert.DoesNotContain(AssumptionList.Of(plan), a => a.Pedigree is not (Pedigree.Example or Pedigree.Assumed));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Template_Check_FindsNothingOdd(string name) =>
        Assert.Empty(
            PlanCheck
                .Check(Templates.Plan(name))
                .Select(f => f.Code)
                .Except(name == "closed-marquee" ? ["plan.people-in-bench"] : [])
        );

    // Momentum: a convergent nozzle at ambient pressure gives F = (air + fuel) V. Common practice, no source.
    [Theory]
    [MemberData(nameof(Names))]
    public void Template_ThrustOfEveryState_IsMassFlowTimesSpeed(string name)
    {
        foreach (ThrottleState state in Templates.Plan(name).Engines.SelectMany(e => e.Sheet!.States))
        {
            double flow = state.AirMassFlowKilogramsPerSecond!.Value + state.FuelFlowKilogramsPerSecond!.Value;
            double thrust = flow * state.ExhaustSpeedMetresPerSecond!.Value;
            Assert.Equal(1, thrust / state.ThrustNewtons!.Value, 0.02);
        }
    }
}
