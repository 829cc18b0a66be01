using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Supplies;
using static ShowSafety.Core.Tests.Supplies.SupplyPlans;

namespace ShowSafety.Core.Tests.Supplies;

public sealed class SpillFireTests
{
    private static Figure Of(Plan plan, string key) => SuppliesAssessor.Assess(plan).Figures.Single(f => f.Key == key);

    // Point source turned round: the flux at the distance it gives is the flux asked for.
    [Fact]
    public void RadiationDistance_AnyFire_GivesTheFluxBack() =>
        Gen.Select(Gen.Double[1, 50000], Gen.Double[0.05, 0.6], Gen.Double[0.5, 5])
            .Sample(
                (heat, share, flux) =>
                {
                    double r = PoolFire.RadiationDistanceMetres(heat, share, flux);
                    Assert.Equal(flux, share * heat / (4 * Math.PI * r * r), 9);
                }
            );

    [Fact]
    public void Assess_LargerSpill_NeverBurnsLess() =>
        Gen.Select(Gen.Double[0.01, 500], Gen.Double[0.01, 500])
            .Sample(
                (first, second) =>
                {
                    double small = Spill.AreaSquareMetres(Math.Min(first, second));
                    double large = Spill.AreaSquareMetres(Math.Max(first, second));
                    Assert.True(large >= small);
                    Assert.True(
                        PoolFire.HeatReleaseKilowatts(PoolFuel.Kerosene, large)
                            >= PoolFire.HeatReleaseKilowatts(PoolFuel.Kerosene, small)
                    );
                }
            );

    // 1.4 m² for each litre up to 95 L: SFPE handbook, from memory.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(10, 14)]
    [InlineData(95, 133)]
    [InlineData(96, 133)]
    [InlineData(1000, 360)]
    public void AreaSquareMetres_Litres_FollowTheHandbook(double litres, double expected) =>
        Assert.Equal(expected, Spill.AreaSquareMetres(litres), 9);

    [Fact]
    public void Assess_Tray_HoldsTheSpill()
    {
        Assert.Equal(0.5, Of(Complete, "supplies.spill-area").Value.Planning, 9);
        Assert.Equal(
            2.8,
            Of(With(s => s with { SpillTraySquareMetres = null }), "supplies.spill-area").Value.Planning,
            9
        );
    }

    [Fact]
    public void Assess_Kerosene_PlansWithTheFasterGradeAndTheLargerShare()
    {
        Quantity distance = Of(
            With(s => s with { SpillTraySquareMetres = null }),
            "supplies.spill-radiation-distance"
        ).Value;

        Assert.True(distance.Planning > distance.Best);
        Zone zone = SuppliesAssessor.Assess(Complete).Zones.Single(z => z.Row == ZoneRow.SpillFire);
        Assert.Equal(ZoneEffect.Informs, zone.Effect);
        Assert.True(zone.Area.Covers(SiteGeometry.Point(new(0, zone.Reach!.Planning))));
    }

    [Fact]
    public void Assess_SpillUnknown_CannotTell()
    {
        SuppliesAssessment assessment = SuppliesAssessor.Assess(With(s => s with { SpillLitres = null }));

        Finding finding = Assert.Single(assessment.Findings);
        Assert.True(finding is { CannotTell: true, Severity: Severity.Act, Row: ZoneRow.SpillFire });
        Assert.DoesNotContain(assessment.Zones, z => z.Row == ZoneRow.SpillFire);
    }

    [Fact]
    public void Assess_NothingCanSpill_BurnsNothing() =>
        Assert.Equal(
            0,
            Of(With(s => s with { SpillLitres = Measured(0) }), "supplies.spill-heat-release").Value.Planning
        );

    [Fact]
    public void Assess_SpillBeyondTheRating_IsToBeClosed() =>
        Assert.Equal(
            ["supplies.spill-beyond-rating"],
            Codes(With(s => s with { SpillTraySquareMetres = Measured(2.3), SpillLitres = Measured(5) }))
        );

    [Fact]
    public void Assess_GasFuel_IsNotCalculated()
    {
        Plan plan = Complete with
        {
            Engines = [Turbine with { Sheet = Turbine.Sheet! with { Fuel = FuelKind.LiquefiedGas } }],
        };

        Assert.Contains("supplies.spill-gas-not-calculated", Codes(plan));
    }

    [Fact]
    public void Assess_Cylinder_GivesTheMixtureOfTheHottestDay()
    {
        Plan plan = WithGas(new(0, 20), 1);

        // Ideal gas at 35 °C: 32.09 m³ at 20 °C times 308.15/293.15.
        Assert.Equal(33.73, Of(plan, "supplies.gas-mixture").Value.Planning, 2);
    }

    [Fact]
    public void FlameHeight_SmallHeatOnALargePool_IsNotNegative() => Assert.Equal(0, PoolFire.FlameHeightMetres(1, 10));
}
