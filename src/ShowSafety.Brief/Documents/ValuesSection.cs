using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>Calculated values that belong to no group of people: those of the air indoors, and all others.</summary>
internal static class ValuesSection
{
    private const string AirPrefix = "indoor-air.";

    public static IEnumerable<Block> Air(BriefInput input) =>
        [Sections.Head(BriefLabels.AirSection), FigureTable.Of(input, Figures(input, true), WithoutAir(input.Plan))];

    public static IEnumerable<Block> Others(BriefInput input) =>
        [
            Sections.Head(BriefLabels.ValuesSection),
            FigureTable.Of(input, Figures(input, false), "No other value could be worked out from what is known."),
        ];

    private static IEnumerable<Figure> Figures(BriefInput input, bool air)
    {
        HashSet<string> people = [.. input.Plan.People.Select(group => group.Id)];
        return input.Figures.Where(figure =>
            (figure.ElementId is null || !people.Contains(figure.ElementId))
            && figure.Key.StartsWith(AirPrefix, StringComparison.Ordinal) == air
        );
    }

    private static string WithoutAir(Plan plan) =>
        plan.Site.Enclosure is null
            ? "The plan has no hall and no tent: indoor air is not a question."
            : "The air of the enclosure could not be told from what is known: see the findings.";
}
