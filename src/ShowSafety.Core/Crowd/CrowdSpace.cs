using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Crowd;

/// <summary>A space people leave together: the hall or tent, or the open ground.</summary>
/// <param name="ElementId">Id of the hall or tent, or null for the open ground.</param>
/// <param name="Visitors">Groups of visitors in it.</param>
/// <param name="Others">Crew and exhibitors in it; they use the exits too.</param>
/// <param name="Exits">Its ways out.</param>
internal sealed record CrowdSpace(
    string? ElementId,
    ValueList<PersonGroup> Visitors,
    ValueList<PersonGroup> Others,
    ValueList<SiteExit> Exits
)
{
    /// <summary>How far the middle of an exit may lie from the wall it is in, in m.</summary>
    private const double ExitInWallMetres = 1;

    /// <summary>Whether the space is a hall or tent.</summary>
    public bool IsEnclosed => ElementId is not null;

    /// <summary>The spaces of a plan that hold visitors; the hall or tent first.</summary>
    public static ValueList<CrowdSpace> Of(Plan plan)
    {
        if (plan.Site.Enclosure is not { Footprint.Count: > 2 } enclosure)
        {
            return [.. Space(null, plan.People, plan.Site.Exits)];
        }

        Polygon footprint = SiteGeometry.Polygon(enclosure.Footprint);
        var inside = plan.People.Where(g => IsInside(footprint, g)).ToList();
        var exits = plan
            .Site.Exits.Where(e => footprint.ExteriorRing.Distance(SiteGeometry.Point(e.Place)) <= ExitInWallMetres)
            .ToList();
        return
        [
            .. Space(enclosure.Id, inside, exits),
            .. Space(null, plan.People.Except(inside), plan.Site.Exits.Except(exits)),
        ];
    }

    private static IEnumerable<CrowdSpace> Space(
        string? elementId,
        IEnumerable<PersonGroup> people,
        IEnumerable<SiteExit> exits
    )
    {
        var groups = people.Where(g => g.Role != PersonRole.Neighbour).ToList();
        ValueList<PersonGroup> visitors = [.. groups.Where(g => g.Role == PersonRole.Visitor)];
        return visitors.Count == 0
            ? []
            : [new(elementId, visitors, [.. groups.Where(g => g.Role != PersonRole.Visitor)], [.. exits])];
    }

    private static bool IsInside(Polygon footprint, PersonGroup group) =>
        Where(group) is { } place && footprint.Distance(place) <= 0;

    private static Geometry? Where(PersonGroup group) =>
        group.Area.Count > 2 ? SiteGeometry.Polygon(group.Area)
        : group.Place is { } place ? SiteGeometry.Point(place)
        : null;
}
