using System.Globalization;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>Every input that was not measured, with where it comes from.</summary>
internal static class AssumptionsSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return Sections.Head(BriefLabels.AssumptionsSection);
        yield return new Paragraph(BriefLabels.AssumptionsLead);
        yield return new Table(
            [new("What", 5), new("Value", 1.6, ColumnAlignment.Right), new("Where it comes from", 3)],
            Sections.Grouped(
                input.Assumptions,
                assumption => input.Words.Place(assumption.ElementId, assumption.PartId),
                Row
            ),
            "Every input was measured."
        );
    }

    private static ValueList<RichText> Row(Assumption assumption) =>
        [
            Sections.Sentence(assumption.Meaning),
            assumption.Value is { } value ? ValueFormat.Number(value, assumption.Unit) : "",
            string.IsNullOrWhiteSpace(assumption.Note)
                ? PedigreeLabels.Of(assumption.Pedigree)
                : $"{PedigreeLabels.Of(assumption.Pedigree)}: {assumption.Note}",
        ];
}

/// <summary>Sources with edition, clause, and how well we know them.</summary>
internal static class SourcesSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return Sections.Head(BriefLabels.SourcesSection);
        yield return new Table(
            [new("No.", 0.5), new("Source", 4), new("Clause", 1.8), new("Used for", 2.4), new("Basis", 1.5)],
            input.Sources.Sources.Select(Row).ToValueList(),
            "No value, zone or finding of this brief rests on a source."
        );
    }

    private static ValueList<RichText> Row(Citation citation, int index) =>
        [
            (index + 1).ToString(CultureInfo.InvariantCulture),
            EditionLabels.Of(citation) is { Length: > 0 } edition ? $"{citation.Title}, {edition}" : citation.Title,
            citation.Clause,
            citation.Use,
            BasisLabels.Of(citation.Basis),
        ];
}

/// <summary>Lines to sign on. Nothing the plan knows is ever filled in here.</summary>
internal static class SignaturesSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        Block[] barred = input.NotToRun ? [new Paragraph(RichText.Strong(BriefLabels.SignaturesBarred))] : [];
        yield return new KeepTogether([
            Sections.Head(BriefLabels.SignaturesSection),
            new Paragraph(BriefLabels.SignaturesLead),
            .. barred,
            new SignatureLines(BriefLabels.SignatureRoles, BriefLabels.SignatureFields),
        ]);
    }
}
