using NetTopologySuite.Geometries;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>What stands too near to a store of fuel or gas.</summary>
internal static class SeparationCheck
{
    public static IEnumerable<Finding> Findings(Plan plan) =>
        Store.Of(plan).SelectMany(store => IgnitionSources(plan, store).Concat(store.IsGas ? Gas(plan, store) : []));

    private static IEnumerable<Finding> IgnitionSources(Plan plan, Store store)
    {
        foreach (Engine engine in plan.Engines)
        {
            double gap = Gap(store, EngineBody.Axis(engine)) - EngineBody.RadiusMetres(engine);
            if (gap < store.SeparationMetres)
            {
                yield return Near(store, "engine", engine.Id, gap, store.SeparationMetres);
            }
        }

        foreach (MarkedPlace battery in plan.Supplies?.Batteries ?? [])
        {
            double gap = store.Place.DistanceMetres(battery.Place);
            if (gap < store.SeparationMetres)
            {
                yield return Near(store, "battery", battery.Id, gap, store.SeparationMetres);
            }
        }
    }

    private static IEnumerable<Finding> Gas(Plan plan, Store store) =>
        Around(plan)
            .Select(other => (Other: other, Gap: Gap(store, other.Shape)))
            .Where(pair => pair.Other.Id != store.Id)
            .Where(pair => pair.Gap < (pair.Other.Metres ?? store.SeparationMetres))
            .Select(pair =>
                Near(store, pair.Other.What, pair.Other.Id, pair.Gap, pair.Other.Metres ?? store.SeparationMetres)
            );

    // A thing without a distance of its own takes the separation of the stock.
    private static IEnumerable<(string What, string Id, Geometry Shape, double? Metres)> Around(Plan plan)
    {
        foreach (Burnable thing in plan.Site.Burnables.Where(b => b.Outline.Count > 2))
        {
            yield return ("burnable", thing.Id, SiteGeometry.Polygon(thing.Outline), LiquefiedGas.CombustibleMetres);
        }

        foreach (FuelStore fuel in plan.Supplies?.Fuel ?? [])
        {
            yield return ("fuel", fuel.Id, SiteGeometry.Point(fuel.Place), LiquefiedGas.CombustibleMetres);
        }

        foreach (SiteExit exit in plan.Site.Exits)
        {
            double half = (exit.WidthMetres.Positive() ?? 0) / 2;
            yield return ("opening", exit.Id, SiteGeometry.Point(exit.Place), LiquefiedGas.OpeningMetres + half);
        }

        foreach (Structure structure in plan.Site.Structures.Where(s => s.Line.Count > 1))
        {
            yield return ("building", structure.Id, SiteGeometry.Line(structure.Line), null);
        }

        if (plan.Site.Enclosure is { Footprint.Count: > 2 } enclosure)
        {
            yield return ("building", enclosure.Id, SiteGeometry.Polygon(enclosure.Footprint).ExteriorRing, null);
        }

        if (plan.Site.Outline.Count > 2)
        {
            yield return ("boundary", "", SiteGeometry.Polygon(plan.Site.Outline).ExteriorRing, null);
        }
    }

    private static double Gap(Store store, Geometry other) => SiteGeometry.Point(store.Place).Distance(other);

    private static Finding Near(Store store, string what, string otherId, double gap, double needed)
    {
        double shown = Math.Max(0, gap);
        return new($"supplies.{(store.IsGas ? "gas" : "fuel")}-near-{what}", Severity.Act)
        {
            ElementId = store.Id,
            Place = store.Place,
            Row = ZoneRow.FuelAndGas,
            Arguments =
            [
                FindingArgument.Of("other", otherId),
                FindingArgument.Of("gap", Quantity.CautiousLow(shown, shown, Unit.Metre)),
                FindingArgument.Of("needed", Quantity.CautiousHigh(needed, needed, Unit.Metre)),
            ],
            Citations = store.Citations,
        };
    }
}
