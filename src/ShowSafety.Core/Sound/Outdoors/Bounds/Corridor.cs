using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors.Bounds;

/// <summary>All places within a distance of a straight line on the plan: it holds every way from its start into a circle.</summary>
/// <param name="From">Start of the line.</param>
/// <param name="To">Its end, the middle of the circle.</param>
/// <param name="RadiusMetres">Radius of the circle.</param>
internal readonly record struct Corridor(PlanPoint From, PlanPoint To, double RadiusMetres)
{
    /// <summary>Whether an edge comes into it.</summary>
    public bool Meets(PlanPoint edgeFrom, PlanPoint edgeTo) =>
        PlanLines.Meeting(From, To, edgeFrom, edgeTo) is not null
        || Distance(From, edgeFrom, edgeTo) <= RadiusMetres
        || Distance(To, edgeFrom, edgeTo) <= RadiusMetres
        || Distance(edgeFrom, From, To) <= RadiusMetres
        || Distance(edgeTo, From, To) <= RadiusMetres;

    /// <summary>Whether any edge of a line, or of a ring, comes into it.</summary>
    public bool MeetsLine(ValueList<PlanPoint> line, bool isRing)
    {
        for (int i = isRing ? 0 : 1; i < line.Count; i++)
        {
            if (Meets(line[i == 0 ? line.Count - 1 : i - 1], line[i]))
            {
                return true;
            }
        }

        return false;
    }

    private static double Distance(PlanPoint place, PlanPoint from, PlanPoint to)
    {
        double x = to.XMetres - from.XMetres;
        double y = to.YMetres - from.YMetres;
        double square = (x * x) + (y * y);
        double share =
            square > 0
                ? Math.Clamp(
                    (((place.XMetres - from.XMetres) * x) + ((place.YMetres - from.YMetres) * y)) / square,
                    0,
                    1
                )
                : 0;
        return place.DistanceMetres(PlanLines.Between(from, to, share));
    }
}
