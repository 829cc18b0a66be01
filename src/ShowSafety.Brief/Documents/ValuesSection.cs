using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>Indoor air first, then every other calculated value that belongs to no group of people.</summary>
internal static class ValuesSection
{
    private const string AirPrefix = "indoor-air.";

    public static IEnumerable<Block> Compose(BriefInput input)
    {
        HashSet<string> people = [.. input.Plan.People.Select(group => group.Id)];
        ILookup<bool, Figure> figures = input
            .Figures.Where(figure => figure.ElementId is null || !people.Contains(figure.ElementId))
            .ToLookup(figure => figure.Key.StartsWith(AirPrefix, StringComparison.Ordinal));
        yield return Sections.Head(BriefLabels.AirSection);
        yield return FigureTable.Of(input, figures[true], WithoutAir(input.Plan));
        yield return Sections.Head(BriefLabels.ValuesSection);
        yield return FigureTable.Of(input, figures[false], "No other value could be worked out from what is known.");
    }

    private static string WithoutAir(Plan plan) =>
        plan.Site.Enclosure is null
            ? "The plan has no hall and no tent: indoor air is not a question."
            : "The air of the enclosure could not be told from what is known: see the findings.";
}
