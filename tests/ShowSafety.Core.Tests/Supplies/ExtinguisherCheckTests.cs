using ShowSafety.Core.Plans;
using ShowSafety.Core.Supplies;
using static ShowSafety.Core.Tests.Supplies.SupplyPlans;

namespace ShowSafety.Core.Tests.Supplies;

public sealed class ExtinguisherCheckTests
{
    private static Plan AtEngine(Func<Extinguisher, Extinguisher> change) =>
        With(s => s with { Extinguishers = [change(s.Extinguishers[0]), s.Extinguishers[1]] });

    [Fact]
    public void Assess_NoneAtAll_Stops()
    {
        Finding finding = SuppliesAssessor
            .Assess(With(s => s with { Extinguishers = [] }))
            .Findings.Single(f => f.Code == "supplies.extinguisher-none");

        Assert.True(finding is { Severity: Severity.Stop, CannotTell: false });
    }

    [Theory]
    [InlineData(5.0, false)]
    [InlineData(5.1, true)]
    public void Assess_ExtinguisherFartherThanFiveMetres_IsNotAtTheEngine(double distance, bool missing) =>
        Assert.Equal(
            missing,
            Codes(AtEngine(e => e with { Place = new(distance, 0) })).Contains("supplies.extinguisher-not-at-engine")
        );

    // Carbon dioxide of at least 2 kg: an adviser's page on model gas turbines.
    [Theory]
    [InlineData(2.0, ExtinguisherKind.CarbonDioxide, true)]
    [InlineData(1.9, ExtinguisherKind.CarbonDioxide, false)]
    [InlineData(6.0, ExtinguisherKind.Foam, true)]
    [InlineData(6.0, ExtinguisherKind.Powder, false)]
    [InlineData(6.0, ExtinguisherKind.Water, false)]
    public void Assess_AtTheEngine_KindAndContentCount(double kilograms, ExtinguisherKind kind, bool enough) =>
        Assert.Equal(
            enough,
            !Codes(AtEngine(e => e with { Kind = kind, Kilograms = Measured(kilograms) }))
                .Contains("supplies.extinguisher-not-at-engine")
        );

    [Fact]
    public void Assess_ContentUnknown_CannotTell() =>
        Assert.Equal(["supplies.extinguisher-content-missing"], Codes(AtEngine(e => e with { Kilograms = null })));

    [Fact]
    public void Assess_PowderOnly_IsNotedAndMissingAtTheEngine()
    {
        Plan plan = With(s => s with { Extinguishers = [s.Extinguishers[0] with { Kind = ExtinguisherKind.Powder }] });

        Assert.Equal(["supplies.extinguisher-not-at-engine", "supplies.extinguisher-powder-only"], Codes(plan));
    }

    [Fact]
    public void Assess_CarbonDioxideOnly_WantsAnOrdinaryOne() =>
        Assert.Equal(
            ["supplies.extinguisher-no-ordinary"],
            Codes(With(s => s with { Extinguishers = [s.Extinguishers[0]] }))
        );

    // A hall of 10 m by 10 m asks for 6.5A: one 13A for 200 m².
    [Theory]
    [InlineData("13A 144B", false)]
    [InlineData("7A", false)]
    [InlineData("6A", true)]
    [InlineData("144B", true)]
    public void Assess_Hall_AsksForClassA(string rating, bool isShort)
    {
        Plan plan = With(s =>
            s with
            {
                Extinguishers = [s.Extinguishers[0], s.Extinguishers[1] with { Rating = rating }],
            }
        );

        Assert.Equal(isShort, Codes(InHall(plan)).Contains("supplies.extinguisher-class-a-short"));
    }

    [Theory]
    [InlineData("34B", 34, null)]
    [InlineData("13A 113B", 113, 13)]
    [InlineData("21a/144b/C", 144, 21)]
    [InlineData("8A-75F-183B", 183, 8)]
    [InlineData("none", null, null)]
    [InlineData(null, null, null)]
    [InlineData("B", null, null)]
    public void Class_Labels_AreRead(string? label, int? classB, int? classA)
    {
        Assert.Equal(classB, FireRating.ClassB(label));
        Assert.Equal(classA, FireRating.ClassA(label));
    }
}
