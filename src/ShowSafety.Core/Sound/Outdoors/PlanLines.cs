using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>Straight lines on the plan.</summary>
internal static class PlanLines
{
    /// <summary>
    /// Share of the way, above 0 and below 1, at which the line from one place to another crosses an edge, ends of the
    /// edge included; null when it does not or when they are parallel.
    /// </summary>
    public static double? Crossing(PlanPoint from, PlanPoint to, PlanPoint edgeFrom, PlanPoint edgeTo) =>
        Meeting(from, to, edgeFrom, edgeTo) is > 0 and < 1 and var share ? share : null;

    /// <summary>The same, with both ends of the way included: 0 to 1.</summary>
    public static double? Meeting(PlanPoint from, PlanPoint to, PlanPoint edgeFrom, PlanPoint edgeTo)
    {
        double px = to.XMetres - from.XMetres;
        double py = to.YMetres - from.YMetres;
        double ex = edgeTo.XMetres - edgeFrom.XMetres;
        double ey = edgeTo.YMetres - edgeFrom.YMetres;
        double cross = (px * ey) - (py * ex);
        if (cross == 0)
        {
            return null;
        }

        double x = edgeFrom.XMetres - from.XMetres;
        double y = edgeFrom.YMetres - from.YMetres;
        double along = ((x * ey) - (y * ex)) / cross;
        double onEdge = ((x * py) - (y * px)) / cross;
        return along is >= 0 and <= 1 && onEdge is >= 0 and <= 1 ? along : null;
    }

    /// <summary>The place at a share of the way.</summary>
    public static PlanPoint Between(PlanPoint from, PlanPoint to, double share) =>
        new(from.XMetres + (share * (to.XMetres - from.XMetres)), from.YMetres + (share * (to.YMetres - from.YMetres)));
}
