using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

public sealed class PlanExamplesTests
{
    private static readonly Plan Field = Templates.Plan("field-with-neighbour");

    [Fact]
    public void IsExample_SmallestPlan_IsFalse() =>
        Assert.False(PlanExamples.IsExample(PlanJson.Plan(PlanJson.Smallest)));

    [Fact]
    public void IsExample_OneInventedValueDeepInside_IsTrue()
    {
        Plan small = PlanJson.Plan(PlanJson.Smallest);
        Stated invented = new() { Value = 20, Pedigree = Pedigree.Example };

        Assert.True(
            PlanExamples.IsExample(
                small with
                {
                    Site = small.Site with { Air = new() { TemperatureCelsius = invented } },
                }
            )
        );
    }

    [Fact]
    public void StartFrom_Template_ClearsSheetEvidencePermissionsAndNames()
    {
        Plan mine = PlanExamples.StartFrom(Field);

        Assert.All(mine.Engines, e => Assert.Null(e.Sheet));
        Assert.All(
            mine.Engines,
            e => Assert.Null(e.Bench!.MassKilograms ?? e.Bench.TippingArmMetres ?? e.Bench.Friction)
        );
        Assert.All(mine.Engines, e => Assert.NotNull(e.Bench!.LengthMetres));
        Assert.All(mine.Protectors, p => Assert.Null(p.SnrDb));
        Assert.Empty(mine.Gate!.Permissions);
        Assert.Empty(mine.Gate.EngineEvidence);
        Assert.Null(mine.Gate.Stopping!.FuelCutSeconds);
        Assert.Null(mine.Gate.Stopping.Independent);
        Assert.Null(mine.Decisions);
        Assert.Null(mine.Event);
        Assert.Null(mine.Prepared);
        Assert.Null(mine.Notes);
    }

    [Fact]
    public void StartFrom_Template_KeepsTheDrawing()
    {
        Plan mine = PlanExamples.StartFrom(Field);

        Assert.Equal(Field.Site, mine.Site);
        Assert.Equal(Field.People, mine.People);
        Assert.Equal(Field.CrowdLine, mine.CrowdLine);
        Assert.Equal(Field.Gate!.Stopping!.StopPosts, mine.Gate!.Stopping!.StopPosts);
        Assert.True(PlanExamples.IsExample(mine), "what stays of a template is still invented");
    }

    [Fact]
    public void StartFrom_StartedPlan_ChangesNothingMore() =>
        Assert.Equal(PlanExamples.StartFrom(Field), PlanExamples.StartFrom(PlanExamples.StartFrom(Field)));
}
