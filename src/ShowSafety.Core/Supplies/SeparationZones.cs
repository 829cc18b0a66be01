using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>
/// Zones round every store: no ignition source within the listed separation, and no visitor within the longest reach
/// over a barrier.
/// </summary>
internal static class SeparationZones
{
    /// <summary>
    /// Longest reach over a barrier of at least 1 m (ISO 13857, table 2; from memory): visitors are kept that far from
    /// a store whatever stands between.
    /// </summary>
    private const double LongestReachMetres = 1.5;

    public static ValueList<Zone> Of(Plan plan) => [.. Store.Of(plan).SelectMany(Zones)];

    private static IEnumerable<Zone> Zones(Store store)
    {
        Quantity separation = Quantity.CautiousHigh(store.SeparationMetres, store.SeparationMetres, Unit.Metre) with
        {
            Pedigree = store.Pedigree,
            Citations = store.Citations,
            Sum = store.IsGas ? "gas-separation" : "fuel-separation",
        };
        yield return Zone(store, ZoneEffect.Requires, Audience.Everyone, separation) with
        {
            Part = "no-ignition-source",
            Citations = store.Citations,
        };

        Quantity reach = Quantity.CautiousHigh(LongestReachMetres, LongestReachMetres, Unit.Metre) with
        {
            Citations = [SiteSources.SuppliesReach],
        };
        yield return Zone(store, ZoneEffect.Excludes, Audience.Visitors | Audience.Children, reach) with
        {
            Part = "reach",
            Citations = [SiteSources.SuppliesReach],
        };
    }

    private static Zone Zone(Store store, ZoneEffect effect, Audience whom, Quantity reach) =>
        new(
            ZoneRow.FuelAndGas,
            store.Id,
            effect,
            whom,
            Phases.Always,
            ZoneFrame.Site,
            SiteGeometry.CircleAround(store.Place, reach.Planning)
        )
        {
            Boundary = reach,
            Reach = reach,
        };
}
