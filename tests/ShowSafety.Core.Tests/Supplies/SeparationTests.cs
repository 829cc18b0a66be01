using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Supplies;
using static ShowSafety.Core.Tests.Supplies.SupplyPlans;

namespace ShowSafety.Core.Tests.Supplies;

public sealed class SeparationTests
{
    private static Plan FuelAt(PlanPoint place, double? litres = 20) =>
        With(s => s with { Fuel = [s.Fuel[0] with { Place = place, Litres = litres is { } l ? Measured(l) : null }] });

    private static double ReachOf(Plan plan, string id) =>
        SuppliesAssessor
            .Assess(plan)
            .Zones.Single(z => z.ElementId == id && z.Part == "no-ignition-source")
            .Reach!.Planning;

    // 2 m up to 1,000 L, 4 m above: HSG51, from memory.
    [Theory]
    [InlineData(20.0, 2)]
    [InlineData(1000.0, 2)]
    [InlineData(1001.0, 4)]
    [InlineData(null, 4)]
    public void Assess_Fuel_KeepsTheListedDistance(double? litres, double expected) =>
        Assert.Equal(expected, ReachOf(FuelAt(new(10, 0), litres), "can"));

    // 1 m up to 400 kg, 3 m above: published rules of a gas supplier.
    [Theory]
    [InlineData(0.4, 1)]
    [InlineData(400.0, 1)]
    [InlineData(401.0, 3)]
    [InlineData(null, 3)]
    public void Assess_Gas_KeepsTheListedDistance(double? kilograms, double expected) =>
        Assert.Equal(expected, ReachOf(WithGas(new(0, 20), kilograms), "gas"));

    [Fact]
    public void Assess_GasInSeveralCylinders_CountsTogether()
    {
        Plan plan = WithGas(new(0, 20), 250);
        plan = plan with
        {
            Supplies = plan.Supplies! with
            {
                Gas = [plan.Supplies.Gas[0], plan.Supplies.Gas[0] with { Id = "more", Place = new(0, 25) }],
            },
        };

        Assert.Equal(3, ReachOf(plan, "gas"));
    }

    [Fact]
    public void Assess_CompressedAir_HasNoZone()
    {
        Plan plan = With(s => s with { Gas = [new() { Id = "air", Gas = GasKind.CompressedAir }] });

        Assert.DoesNotContain(SuppliesAssessor.Assess(plan).Zones, z => z.ElementId == "air");
    }

    [Fact]
    public void Assess_FuelStore_KeepsVisitorsOutOfReach()
    {
        Zone zone = SuppliesAssessor.Assess(Complete).Zones.Single(z => z.Part == "reach");

        Assert.Equal(ZoneEffect.Excludes, zone.Effect);
        Assert.True(zone.Whom.HasFlag(Audience.Visitors));
        Assert.False(zone.Whom.HasFlag(Audience.Crew));
        Assert.Equal(Phases.Always, zone.When);
        Assert.True(zone.Area.Covers(SiteGeometry.Point(new(11.499, 0))));
    }

    // The exhaust blows up the sheet, so the engine lies below the origin: 0.4 m long, 0.06 m to each side.
    [Theory]
    [InlineData(2.0, 0.0, true)]
    [InlineData(2.1, 0.0, false)]
    [InlineData(0.0, -2.3, true)]
    [InlineData(0.0, -2.5, false)]
    public void Assess_FuelNearTheEngine_IsMeasuredFromItsBody(double x, double y, bool near) =>
        Assert.Equal(near, Codes(FuelAt(new(x, y))).Contains("supplies.fuel-near-engine"));

    [Fact]
    public void Assess_FuelNearABattery_IsToBeClosed()
    {
        Plan plan = With(s => s with { Batteries = [new() { Id = "cell", Place = new(11, 0) }] });

        Finding finding = Assert.Single(SuppliesAssessor.Assess(plan).Findings);
        Assert.True(finding is { Code: "supplies.fuel-near-battery", Severity: Severity.Act });
        Assert.Equal(1, finding.Arguments.Single(a => a.Name == "gap").Quantity!.Planning, 9);
    }

    [Fact]
    public void Assess_GasBesideEverything_NamesEach()
    {
        Plan plan = WithGas(new(49.5, 0));
        plan = plan with
        {
            Site = plan.Site with
            {
                Burnables = [new() { Id = "straw", Outline = [new(47, 1), new(48, 1), new(48, 2)] }],
                Structures = [new() { Id = "shed", Line = [new(49, -3), new(49, 3)] }],
                Exits = [new() { Id = "gate", Place = new(50, 2) }],
            },
            Supplies = plan.Supplies! with { Fuel = [plan.Supplies.Fuel[0] with { Place = new(47, 0) }] },
        };

        Assert.Equal(
            [
                "supplies.gas-near-burnable",
                "supplies.gas-near-fuel",
                "supplies.gas-near-building",
                "supplies.gas-near-boundary",
            ],
            Codes(plan).Where(c => c.StartsWith("supplies.gas-near", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void Assess_GasNearAWideExit_CountsHalfItsWidth()
    {
        Plan plan = WithGas(new(20, 20));
        plan = plan with
        {
            Site = plan.Site with
            {
                Exits =
                [
                    new()
                    {
                        Id = "gate",
                        Place = new(20, 23),
                        WidthMetres = Measured(3),
                    },
                ],
            },
        };

        Assert.Contains("supplies.gas-near-opening", Codes(plan));
    }

    [Fact]
    public void Assess_GasInAHall_Stops()
    {
        Finding finding = SuppliesAssessor
            .Assess(InHall(WithGas(new(3, 3))))
            .Findings.Single(f => f.Code == "supplies.gas-indoors");

        Assert.Equal(Severity.Stop, finding.Severity);
    }

    [Fact]
    public void Assess_FuelInAHall_IsToBeClosed() =>
        Assert.Contains("supplies.fuel-indoors", Codes(InHall(FuelAt(new(3, 3)))));

    // 30 L and 275 L: guidance of English fire and rescue services.
    [Theory]
    [InlineData(30, null)]
    [InlineData(31, "supplies.petrol-notice")]
    [InlineData(275, "supplies.petrol-notice")]
    [InlineData(276, "supplies.petrol-licence")]
    public void Assess_Petrol_AsksForNoticeOrLicence(double litres, string? expected)
    {
        Plan plan = With(s => s with { Fuel = [s.Fuel[0] with { Fuel = FuelKind.Petrol, Litres = Measured(litres) }] });

        Assert.Equal(expected is null ? [] : [expected], Codes(plan));
    }
}
