using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>Every zone with what sets it, how far it reaches, whom it binds and when, and where that comes from.</summary>
internal static class ZonesSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return Sections.Head(BriefLabels.ZonesSection);
        yield return new Paragraph(BriefLabels.ZonesLead);
        if (input.Layout is { LineSetBy: { } row })
        {
            yield return new Paragraph($"The suggested crowd line is set by: {RowLabels.Of(row)}.");
        }

        yield return new Table(
            [
                new("Zone", 3.2),
                new("Reaches", 1.2, ColumnAlignment.Right),
                new("Set by", 1.4, ColumnAlignment.Right),
                new("What it does", 3.4),
                new("Sources", 1),
            ],
            Sections.Grouped(
                input.Zones.OrderBy(zone => zone.Row),
                zone => $"From {input.Words.Name(zone.ElementId)}",
                zone => Row(input, zone)
            ),
            "No zone could be worked out from what is known: see the findings."
        );
    }

    private static string Part(Zone zone) =>
        zone.Part.Length == 0 ? "" : $" ({RuleSetLibrary.Find(zone.Part)?.Title ?? zone.Part.Replace('-', ' ')})";

    private static ValueList<RichText> Row(BriefInput input, Zone zone) =>
        [
            Sections.Sentence(RowLabels.Of(zone.Row)) + Part(zone),
            zone.Reach is { } reach ? RichText.Strong(ValueFormat.Planning(reach)) : "by place",
            zone.Boundary is { } boundary ? ValueFormat.Planning(boundary) : "a choice",
            $"{BriefLabels.Of(zone.Effect)} {BriefLabels.Of(zone.Whom)}; {BriefLabels.Of(zone.When)}",
            input.Sources.Quoted(zone.Citations),
        ];
}
