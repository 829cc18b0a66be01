using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Layout;

/// <summary>Finds the people, posts, stands and exits inside a zone that excludes them while it applies.</summary>
internal static class PeopleCheck
{
    // An overlap thinner than this is a touch of two edges, not somebody inside.
    private const double TouchSquareMetres = 1e-4;

    public static IEnumerable<Finding> Check(Plan plan, ValueList<Zone> zones, IndexedAreas areas)
    {
        var clock = new RunClock(plan);
        foreach (Occupant occupant in Occupants.Of(plan))
        {
            foreach (
                IGrouping<ZoneRow, Zone> row in Binding(occupant, zones, clock)
                    .Where(z => Overlap(areas.Of(z.Area), z.Area, occupant.Area))
                    .GroupBy(z => z.Row)
            )
            {
                yield return Inside(occupant, row.Key, [.. row], areas);
            }
        }

        foreach (PersonGroup group in plan.People.Where(g => Occupants.AreaOf(g) is null))
        {
            yield return new("layout.group-without-place", Severity.Act)
            {
                ElementId = group.Id,
                CannotTell = true,
                Field = "PersonGroup.Area",
                Arguments = [FindingArgument.Of("who", group.Name ?? group.Id)],
            };
        }
    }

    private static IEnumerable<Zone> Binding(Occupant occupant, ValueList<Zone> zones, RunClock clock) =>
        zones.Where(z =>
            z.Effect == ZoneEffect.Excludes
            && (z.Whom & occupant.Audience) != 0
            && clock.Applies(z.When, occupant.Presence)
        );

    // Most occupants are wholly outside a zone or wholly inside it, which is cheaper to ask than to cut.
    private static bool Overlap(IndexedArea index, Geometry zone, Geometry occupant) =>
        index.Meets(occupant)
        && (index.Covers(occupant) ? occupant : zone.Intersection(occupant)).Area > TouchSquareMetres;

    private static Finding Inside(Occupant occupant, ZoneRow row, ValueList<Zone> zones, IndexedAreas areas)
    {
        Geometry inside = zones.Any(z => areas.Of(z.Area).Covers(occupant.Area))
            ? occupant.Area
            : SiteGeometry.Union(zones.Select(z => z.Area)).Intersection(occupant.Area);
        return new(CodeOf(occupant.Kind), KeepOut.SeverityOf(row))
        {
            ElementId = occupant.ElementId,
            Row = row,
            Place = SiteGeometry.PlanPoint(inside.InteriorPoint.Coordinate),
            Arguments = [FindingArgument.Of("who", occupant.Name), FindingArgument.Of("engine", zones[0].ElementId)],
            Citations = [.. zones.SelectMany(z => z.Citations).Distinct()],
        };
    }

    private static string CodeOf(OccupantKind kind) =>
        kind switch
        {
            OccupantKind.Post => "layout.post-in-zone",
            OccupantKind.Stand => "layout.stand-in-zone",
            OccupantKind.Exit => "layout.exit-in-zone",
            _ => "layout.people-in-zone",
        };
}
