using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Supplies;

/// <summary>The fire of one spill in numbers.</summary>
/// <param name="Area">Area that burns.</param>
/// <param name="HeatRelease">Heat release rate.</param>
/// <param name="FlameHeight">Mean height of the flame.</param>
/// <param name="RadiationDistance">Distance from its middle at which clothed people stand without limit of time.</param>
internal sealed record SpillFire(Quantity Area, Quantity HeatRelease, Quantity FlameHeight, Quantity RadiationDistance)
{
    /// <summary>
    /// The fire of an area: best with the usual row of the table and the usual radiant share, planning with the row
    /// that burns fastest and the larger share.
    /// </summary>
    public static SpillFire Of(ValueList<PoolFuel> rows, double areaSquareMetres, Pedigree pedigree)
    {
        double best = PoolFire.HeatReleaseKilowatts(rows[0], areaSquareMetres);
        double planning = rows.Max(row => PoolFire.HeatReleaseKilowatts(row, areaSquareMetres));
        double diameter = PoolFire.DiameterMetres(areaSquareMetres);
        return new(
            High(areaSquareMetres, areaSquareMetres, Unit.SquareMetre, "spill-area", SiteSources.SuppliesSpill),
            High(best, planning, Unit.Kilowatt, "pool-fire", SiteSources.SuppliesPoolFire),
            High(
                PoolFire.FlameHeightMetres(best, diameter),
                PoolFire.FlameHeightMetres(planning, diameter),
                Unit.Metre,
                "pool-fire",
                SiteSources.SuppliesPoolFire
            ),
            High(
                Distance(best, PoolFire.UsualRadiantFraction),
                Distance(planning, PoolFire.PlanningRadiantFraction),
                Unit.Metre,
                "fire-radiation-distance",
                SiteSources.SuppliesPointSource
            )
        );

        Quantity High(double bestValue, double planningValue, Unit unit, string sum, string source) =>
            Quantity.CautiousHigh(bestValue, planningValue, unit) with
            {
                Pedigree = pedigree,
                Sum = sum,
                Citations = [source],
            };
    }

    private static double Distance(double kilowatts, double radiantFraction) =>
        PoolFire.RadiationDistanceMetres(
            kilowatts,
            radiantFraction,
            PoolFire.ContinuousExposureKilowattsPerSquareMetre
        );
}
