using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Documents;

/// <summary>What the rules chosen ask for, group by group.</summary>
internal static class RulesSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return Sections.Head(BriefLabels.RulesSection);
        foreach (RuleSet set in DutyRows.Sets(input.Plan))
        {
            yield return new Paragraph($"{set.Title}, {set.Source.Edition}. {set.Confirm}", TextStyles.Note);
        }

        yield return new Table(
            [
                new("Clause", 4),
                new("Planning value", 1.5, ColumnAlignment.Right),
                new("Limit", 1.5, ColumnAlignment.Right),
                new("Asks for", 3),
            ],
            Sections.Grouped(input.Duties, duty => duty.Who, Row),
            input.Plan.RuleSets.Count == 0
                ? "No rules were chosen, so nothing was compared. Choose the rule sets that hold for this place."
                : "No clause of the rules chosen covers anybody the plan names."
        );
    }

    private static ValueList<RichText> Row(DutyRow duty) => [duty.Rule, duty.Value, duty.Limit, duty.Asks];
}
