using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Documents;

/// <summary>What is missing or unsure, what not knowing it costs, and how to find it out; the costliest first.</summary>
internal static class FindOutSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return Sections.Head(BriefLabels.FindOutSection);
        yield return new Table(
            [new("What", 4), new("Of what", 2), new("How", 3), new("Not knowing it costs", 2.4)],
            input
                .FindOut.Select(row =>
                    (ValueList<RichText>)[Sections.Sentence(row.What), row.Where, Sections.Sentence(row.How), row.Cost]
                )
                .ToValueList(),
            "Nothing is left to be found out."
        );
    }
}
