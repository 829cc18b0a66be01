using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Crowd;

/// <summary>Whether the plan says how many visitors there are and where.</summary>
internal static class CountCheck
{
    public static IEnumerable<Finding> Findings(Plan plan)
    {
        var visitors = plan.People.Where(g => g.Role == PersonRole.Visitor).ToList();
        if (visitors.Count == 0)
        {
            yield return CannotTell.Without(
                typeof(Plan),
                "crowd.visitors-not-on-plan",
                Severity.Act,
                nameof(Plan.People)
            );
        }

        foreach (Finding finding in visitors.SelectMany(OfGroup))
        {
            yield return finding;
        }
    }

    /// <summary>People in groups whose number is stated; the others have a finding of their own.</summary>
    public static long Known(IEnumerable<PersonGroup> groups) =>
        groups.Sum(g => Math.Max(0L, g.Adults ?? 0) + Math.Max(0L, g.Children ?? 0));

    private static IEnumerable<Finding> OfGroup(PersonGroup group)
    {
        if (group.Adults is null)
        {
            yield return Unknown("crowd.adults-missing", nameof(PersonGroup.Adults), group);
        }

        if (group.Children is null)
        {
            yield return Unknown("crowd.children-missing", nameof(PersonGroup.Children), group);
        }

        if (group.Area.Count < 3)
        {
            yield return Unknown("crowd.visitor-area-missing", nameof(PersonGroup.Area), group);
        }
    }

    private static Finding Unknown(string code, string member, PersonGroup group) =>
        CannotTell.Without(typeof(PersonGroup), code, Severity.Act, member, group.Id) with
        {
            Place = group.Place,
        };
}
