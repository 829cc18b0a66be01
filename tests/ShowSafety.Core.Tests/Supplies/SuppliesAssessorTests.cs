using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Supplies;
using static ShowSafety.Core.Tests.Supplies.SupplyPlans;

namespace ShowSafety.Core.Tests.Supplies;

public sealed class SuppliesAssessorTests
{
    [Fact]
    public void Assess_EverythingThere_FindsNothing() => Assert.Empty(Codes(Complete));

    [Fact]
    public void Assess_EmptyPlan_StopsForWantOfAnExtinguisher()
    {
        SuppliesAssessment assessment = SuppliesAssessor.Assess(new Plan());

        Finding finding = Assert.Single(assessment.Findings);
        Assert.True(finding is { Code: "supplies.extinguisher-none", Severity: Severity.Stop, CannotTell: true });
        Assert.Empty(assessment.Zones);
    }

    [Fact]
    public void Assess_EngineAloneOnThePlan_AsksForFuelSpillAndExtinguisher()
    {
        var plan = new Plan { Engines = [new() { Id = "bare" }] };

        Assert.Equal(
            [
                "supplies.fuel-not-on-plan",
                "supplies.extinguisher-none",
                "supplies.spill-amount-missing",
                "supplies.spill-fuel-missing",
            ],
            Codes(plan)
        );
    }

    [Fact]
    public void Assess_SamePlanTwice_GivesEqualAssessments() =>
        Assert.Equal(SuppliesAssessor.Assess(Complete), SuppliesAssessor.Assess(Complete));

    [Fact]
    public void Assess_AnyPlaces_NeverFails() =>
        Gen.Select(Gen.Double[-5000, 5000], Gen.Double[-5000, 5000], Gen.Double[0, 1000])
            .Sample(
                (x, y, kilograms) =>
                {
                    SuppliesAssessment assessment = SuppliesAssessor.Assess(InHall(WithGas(new(x, y), kilograms)));
                    Assert.All(assessment.Figures, f => Assert.True(double.IsFinite(f.Value.Planning)));
                    Assert.All(assessment.Zones, z => Assert.True(z.Area.IsValid && !z.Area.IsEmpty));
                },
                iter: 200
            );

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    public void Assess_UnusableAmounts_CannotTell(double value)
    {
        Plan plan = With(s =>
            s with
            {
                Fuel = [s.Fuel[0] with { Litres = Measured(value) }],
                SpillLitres = Measured(value),
            }
        );

        Assert.Equal(["supplies.fuel-amount-missing", "supplies.spill-amount-missing"], Codes(plan));
    }
}
