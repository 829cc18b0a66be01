using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>Calculated values as a table: label, best estimate, planning value, what they rest on.</summary>
internal static class FigureTable
{
    public static Table Of(BriefInput input, IEnumerable<Figure> figures, string whenEmpty) =>
        new(
            [
                new("Value", 4),
                new("Best estimate", 1.5, ColumnAlignment.Right),
                new("Planning value", 1.5, ColumnAlignment.Right),
                new("Rests on", 2),
            ],
            Sections.Grouped(
                figures,
                figure => input.Words.Place(figure.ElementId, figure.PartId),
                figure => Row(input, figure)
            ),
            whenEmpty
        );

    private static ValueList<RichText> Row(BriefInput input, Figure figure) =>
        [
            // Element and part stand in the head of the group.
            input.Words.Label(figure with { ElementId = null, PartId = null }),
            ValueFormat.Best(figure.Value),
            RichText.Strong(ValueFormat.Planning(figure.Value)),
            Sections.WithSources(
                PedigreeLabels.Of(figure.Value.Pedigree),
                input.Sources.Quoted(figure.Value.Citations)
            ),
        ];
}
