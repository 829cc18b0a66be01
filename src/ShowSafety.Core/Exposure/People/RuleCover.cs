using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.People;

/// <summary>A rule set applied to a person.</summary>
/// <param name="Set">The rule set.</param>
/// <param name="IsComparison">Whether it does not cover the person and is shown as a comparison.</param>
public readonly record struct AppliedRule(RuleSet Set, bool IsComparison);

/// <summary>
/// Which rule covers whom. Rules for work and rules for an audience are never crossed; a rule for work is shown to
/// volunteers, self-employed people and people of unknown class as a comparison, and a finding says so.
/// </summary>
public static class RuleCover
{
    /// <summary>Legal class of a group: as stated; visitors and neighbours are the public; otherwise null.</summary>
    public static LegalClass? ClassOf(PersonGroup group) =>
        group.LegalClass ?? (IsPublic(group.Role) ? LegalClass.Visitor : null);

    /// <summary>Whether a role is one of the public.</summary>
    public static bool IsPublic(PersonRole role) => role is PersonRole.Visitor or PersonRole.Neighbour;

    /// <summary>The chosen rule sets that apply to a part of a group, in the order chosen.</summary>
    public static ValueList<AppliedRule> For(PersonGroup group, PersonPart part, IEnumerable<RuleSet> chosen) =>
        [
            .. chosen
                .Where(set => part == PersonPart.Adults || set.Covers.Children)
                .Select(set => (Set: set, Comparison: Applies(set.Covers, group)))
                .Where(applied => applied.Comparison is not null)
                .Select(applied => new AppliedRule(applied.Set, applied.Comparison!.Value)),
        ];

    // Null: not at all; false: covered; true: shown as a comparison.
    private static bool? Applies(RuleCoverage covers, PersonGroup group)
    {
        LegalClass? legal = ClassOf(group);
        if (covers.Kind == RuleKind.Audience)
        {
            return legal is { } member && group.Role != PersonRole.Neighbour && covers.LegalClasses.Contains(member)
                ? false
                : null;
        }

        return legal switch
        {
            null => true,
            { } known when covers.LegalClasses.Contains(known) => false,
            { } known when covers.ComparisonFor.Contains(known) => true,
            _ => null,
        };
    }
}
