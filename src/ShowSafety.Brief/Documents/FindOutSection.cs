using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>What is missing or unsure, what not knowing it costs, and how to find it out; the costliest first.</summary>
internal static class FindOutSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return Sections.Head(BriefLabels.FindOutSection);
        yield return new Table(
            [new("What", 4), new("Of what", 2), new("How", 3), new("Not knowing it costs", 2.4)],
            input.FindOut.Select(item => Row(input, item)).ToValueList(),
            "Nothing is left to be found out."
        );
    }

    private static ValueList<RichText> Row(BriefInput input, FindOutItem item) =>
        [
            Sections.Sentence(item.Meaning),
            input.Words.Name(item.ElementId) ?? BriefLabels.WholePlan,
            Sections.Sentence(FindOutSentences.How(item)),
            FindOutSentences.Cost(item),
        ];
}
