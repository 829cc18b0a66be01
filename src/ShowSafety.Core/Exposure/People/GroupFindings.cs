using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.People;

/// <summary>What is missing or odd about a group, whatever it hears.</summary>
public static class GroupFindings
{
    /// <summary>
    /// The parts of a group to assess: adults unless the plan says there are none; children when stated, or when nobody says how many
    /// there are among the public.
    /// </summary>
    public static IEnumerable<PersonPart> Parts(PersonGroup group)
    {
        bool hasChildren = group.Children > 0 || (group.Children is null && RuleCover.IsPublic(group.Role));
        if (group.Adults is not 0)
        {
            yield return PersonPart.Adults;
        }

        if (hasChildren)
        {
            yield return PersonPart.Children;
        }
    }

    /// <summary>The findings, in a fixed order.</summary>
    public static IEnumerable<Finding> Of(PersonGroup group, IReadOnlyCollection<RuleSet> chosen)
    {
        if (RuleCover.ClassOf(group) is null && chosen.Count > 0)
        {
            yield return new("exposure.legal-class-unknown", Severity.Act)
            {
                ElementId = group.Id,
                CannotTell = true,
                Field = "PersonGroup.LegalClass",
            };
        }

        if (group.Children is null && RuleCover.IsPublic(group.Role))
        {
            yield return new("exposure.children-assumed", Severity.Note)
            {
                ElementId = group.Id,
                Field = "PersonGroup.Children",
            };
        }

        if (group.EarHeightMetres is null && group.Adults is not 0)
        {
            yield return new("exposure.ear-height-assumed", Severity.Note)
            {
                ElementId = group.Id,
                Field = "PersonGroup.EarHeightMetres",
                Arguments =
                [
                    FindingArgument.Of("lowest", Quantity.Plain(Ears.OfAdults[0], Unit.Metre)),
                    FindingArgument.Of("highest", Quantity.Plain(Ears.OfAdults[^1], Unit.Metre)),
                ],
            };
        }

        if (group.Presence.Any(presence => presence.To <= presence.From))
        {
            yield return new("exposure.presence-backwards", Severity.Act)
            {
                ElementId = group.Id,
                Field = "PersonGroup.Presence",
            };
        }
    }
}
