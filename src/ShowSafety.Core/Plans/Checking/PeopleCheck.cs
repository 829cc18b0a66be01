using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Plans.CheckFinding;

namespace ShowSafety.Core.Plans;

/// <summary>Whether the groups of people are somewhere, at some time, and not inside the engine.</summary>
internal static class PeopleCheck
{
    public static IEnumerable<Finding> Findings(Plan plan) => plan.People.SelectMany(group => Findings(plan, group));

    private static IEnumerable<Finding> Findings(Plan plan, PersonGroup group) =>
        [
            .. Times(group),
            .. Numbers(group),
            .. Where(group) is { } place
                ? Place(plan, group, place)
                :
                [
                    Act("plan.group-without-place", group.Id) with
                    {
                        CannotTell = true,
                        Field = $"{nameof(PersonGroup)}.{nameof(PersonGroup.Area)}",
                    },
                ],
        ];

    private static IEnumerable<Finding> Times(PersonGroup group) =>
        group
            .Presence.Where(p => p.To <= p.From)
            .Select(p =>
                Act(
                    "plan.presence-backwards",
                    group.Id,
                    Text("from", p.From.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)),
                    Text("to", p.To.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture))
                )
            );

    private static IEnumerable<Finding> Numbers(PersonGroup group) =>
        group is { Adults: 0, Children: 0 or null } or { Children: 0, Adults: 0 or null }
            ? [Note("plan.group-of-nobody", group.Id)]
            : [];

    private static IEnumerable<Finding> Place(Plan plan, PersonGroup group, Geometry place)
    {
        foreach (Engine engine in plan.Engines)
        {
            Geometry body = Shapes.Ring(BenchShape.Of(engine)) ?? (Geometry)SiteGeometry.Point(engine.Place);
            if (body.Intersects(place))
            {
                yield return Act("plan.people-in-bench", group.Id, Text("engine", engine.Name ?? engine.Id));
            }
        }

        if (
            group.Role != PersonRole.Neighbour
            && Shapes.Ring(plan.Site.Outline) is { } outline
            && !Shapes.Covers(outline, place)
        )
        {
            yield return Note("plan.group-off-site", group.Id);
        }
    }

    private static Geometry? Where(PersonGroup group) =>
        Shapes.Ring(group.Area) is { } area ? area
        : group.Place is { } place ? SiteGeometry.Point(place)
        : null;
}
