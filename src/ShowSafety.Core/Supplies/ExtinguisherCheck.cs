using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>
/// Extinguishers: at every engine one that doesn't hold powder, with at least 2 kg, and another one on the site.
/// </summary>
internal static class ExtinguisherCheck
{
    /// <summary>Farthest an engine's extinguisher stands from the engine in m; this project's choice.</summary>
    public const double WithinReachMetres = 5;

    private const double LeastKilograms = 2;

    public static IEnumerable<Finding> Findings(Plan plan)
    {
        ValueList<Extinguisher> all = plan.Supplies?.Extinguishers ?? [];
        return all.Count == 0
            ? [None(plan)]
            : plan.Engines.SelectMany(engine => AtEngine(engine, all)).Concat(OnSite(plan, all));
    }

    /// <summary>Extinguishers within reach of an engine.</summary>
    public static IEnumerable<Extinguisher> WithinReach(Engine engine, ValueList<Extinguisher> all) =>
        all.Where(e => EngineBody.Axis(engine).Distance(SiteGeometry.Point(e.Place)) <= WithinReachMetres);

    private static Finding None(Plan plan) =>
        new("supplies.extinguisher-none", Severity.Stop)
        {
            CannotTell = plan.Supplies is null,
            Field = $"{nameof(SupplyList)}.{nameof(SupplyList.Extinguishers)}",
            Citations = [SiteSources.SuppliesExtinguisher],
        };

    private static IEnumerable<Finding> AtEngine(Engine engine, ValueList<Extinguisher> all)
    {
        var suited = WithinReach(engine, all).Where(IsSuited).ToList();
        if (suited.Any(e => e.Kilograms.NotNegative() >= LeastKilograms))
        {
            yield break;
        }

        Extinguisher? unknown = suited.FirstOrDefault(e => e.Kilograms.NotNegative() is null);
        Finding finding = unknown is null
            ? new("supplies.extinguisher-not-at-engine", Severity.Act)
            : CannotTell.Without(
                typeof(Extinguisher),
                "supplies.extinguisher-content-missing",
                Severity.Act,
                nameof(Extinguisher.Kilograms)
            );
        yield return finding with
        {
            ElementId = engine.Id,
            Place = engine.Place,
            Arguments =
            [
                FindingArgument.Of("reach", Quantity.Plain(WithinReachMetres, Unit.Metre)),
                FindingArgument.Of("least", Quantity.Plain(LeastKilograms, Unit.Kilogram)),
            ],
            Citations = [SiteSources.SuppliesExtinguisher, SiteSources.SuppliesExtinguisherReach],
        };
    }

    private static bool IsSuited(Extinguisher extinguisher) =>
        extinguisher.Kind is ExtinguisherKind.CarbonDioxide or ExtinguisherKind.Foam;

    private static IEnumerable<Finding> OnSite(Plan plan, ValueList<Extinguisher> all)
    {
        if (all.All(e => e.Kind == ExtinguisherKind.Powder))
        {
            yield return new("supplies.extinguisher-powder-only", Severity.Note)
            {
                Citations = [SiteSources.SuppliesPowder],
            };
        }

        if (all.All(e => e.Kind == ExtinguisherKind.CarbonDioxide))
        {
            yield return new("supplies.extinguisher-no-ordinary", Severity.Act)
            {
                Citations = [SiteSources.SuppliesOrdinaryExtinguisher],
            };
        }

        if (plan.Site.Enclosure is { Footprint.Count: > 2 } enclosure)
        {
            foreach (Finding finding in ClassA(enclosure, all))
            {
                yield return finding;
            }
        }
    }

    private static IEnumerable<Finding> ClassA(Enclosure enclosure, ValueList<Extinguisher> all)
    {
        double wanted = FireRating.ClassAPerSquareMetre * SiteGeometry.Polygon(enclosure.Footprint).Area;
        int there = all.Sum(e => FireRating.ClassA(e.Rating) ?? 0);
        if (there < wanted)
        {
            yield return new("supplies.extinguisher-class-a-short", Severity.Act)
            {
                ElementId = enclosure.Id,
                Arguments =
                [
                    FindingArgument.Of("wanted", (int)Math.Min(int.MaxValue, Math.Ceiling(wanted))),
                    FindingArgument.Of("there", there),
                ],
                Citations = [SiteSources.SuppliesClassA],
            };
        }
    }
}
