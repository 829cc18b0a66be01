using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Layout;

/// <summary>Somebody or something that must not be in a zone: a group, a post, a stand, an exit.</summary>
/// <param name="ElementId">Id of the plan's element.</param>
/// <param name="Name">Name people know it by.</param>
/// <param name="Kind">What it is, which decides the finding's code.</param>
/// <param name="Audience">Whose zones bind it.</param>
/// <param name="Area">Where it is.</param>
/// <param name="Presence">When people are there; empty for the whole day.</param>
internal sealed record Occupant(
    string ElementId,
    string Name,
    OccupantKind Kind,
    Audience Audience,
    Geometry Area,
    ValueList<Presence> Presence
);

/// <summary>What an occupant is.</summary>
internal enum OccupantKind
{
    People,
    Post,
    Stand,
    Exit,
}

/// <summary>Collects everybody and everything of a plan that a zone could cover.</summary>
internal static class Occupants
{
    // A person takes up a circle of half a metre: shoulders, a turn of the body, an outstretched arm not counted.
    private const double PersonRadiusMetres = 0.5;

    public static ValueList<Occupant> Of(Plan plan) =>
        [.. plan.People.Select(Group).OfType<Occupant>(), .. Posts(plan), .. Stands(plan), .. Exits(plan)];

    /// <summary>The area a group keeps to, or null when the plan does not say where it is.</summary>
    public static Geometry? AreaOf(PersonGroup group) =>
        group switch
        {
            { Area.Count: >= 3 } => SiteGeometry.Polygon(group.Area),
            { Place: { } place } => SiteGeometry.CircleAround(place, PersonRadiusMetres),
            _ => null,
        };

    private static Occupant? Group(PersonGroup group) =>
        AreaOf(group) is { } area
            ? new(group.Id, group.Name ?? group.Id, OccupantKind.People, AudienceOf(group), area, group.Presence)
            : null;

    /// <summary>Whether children may be in a group: stated, or not stated of people who come as they are.</summary>
    public static bool MayHoldChildren(PersonGroup group) =>
        group.Children is { } stated ? stated > 0 : group.Role is PersonRole.Visitor or PersonRole.Neighbour;

    private static Audience AudienceOf(PersonGroup group) =>
        (MayHoldChildren(group) ? Audience.Children : Audience.None)
        | group.Role switch
        {
            PersonRole.Crew => Audience.Crew,
            PersonRole.Exhibitor => Audience.Exhibitors,
            PersonRole.Neighbour => Audience.Neighbours,
            _ => Audience.Visitors,
        };

    private static IEnumerable<Occupant> Posts(Plan plan) =>
        [
            .. (plan.Gate?.Stopping?.StopPosts ?? []).Select(p => Post(p, Audience.Crew)),
            .. (plan.Viewing?.StewardPosts ?? []).Select(p => Post(p, Audience.Crew)),
            .. (plan.Viewing?.WheelchairPlaces ?? []).Select(p => Post(p, Audience.Visitors)),
        ];

    private static Occupant Post(MarkedPlace post, Audience audience) =>
        new(
            post.Id,
            post.Name ?? post.Id,
            OccupantKind.Post,
            audience,
            SiteGeometry.CircleAround(post.Place, PersonRadiusMetres),
            []
        );

    private static IEnumerable<Occupant> Stands(Plan plan) =>
        plan.Site.Stands.Select(s => new Occupant(
            s.Id,
            s.Name ?? s.Id,
            OccupantKind.Stand,
            Audience.Exhibitors,
            SiteGeometry.Polygon(s.Outline),
            []
        ));

    private static IEnumerable<Occupant> Exits(Plan plan) =>
        plan.Site.Exits.Select(e => new Occupant(
            e.Id,
            e.Name ?? e.Id,
            OccupantKind.Exit,
            Audience.Visitors,
            SiteGeometry.CircleAround(e.Place, Math.Max(PersonRadiusMetres, (e.WidthMetres?.Value ?? 0) / 2)),
            []
        ));
}
