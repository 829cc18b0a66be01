namespace ShowSafety.Core.Sound.Outdoors.Screens;

/// <summary>A point of a section: how far along it and how far aside or up, in metres.</summary>
/// <param name="Along">Distance along the section.</param>
/// <param name="Aside">Distance to the side or height.</param>
internal readonly record struct SectionPoint(double Along, double Aside)
{
    /// <summary>Straight distance to another point.</summary>
    public double DistanceMetres(SectionPoint other)
    {
        double x = other.Along - Along;
        double y = other.Aside - Aside;
        return Math.Sqrt((x * x) + (y * y));
    }
}

/// <summary>A tight string over points: the upper convex hull between two ends.</summary>
internal static class TightString
{
    /// <summary>The corners of the string between its ends, in order; empty when nothing rises above the straight line.</summary>
    public static IReadOnlyList<SectionPoint> Over(
        SectionPoint start,
        SectionPoint end,
        IEnumerable<SectionPoint> points
    )
    {
        var corners = new List<SectionPoint> { start };
        foreach (SectionPoint point in points.OrderBy(p => p.Along).ThenByDescending(p => p.Aside).Append(end))
        {
            while (corners.Count > 1 && !TurnsDown(corners[^2], corners[^1], point))
            {
                corners.RemoveAt(corners.Count - 1);
            }

            corners.Add(point);
        }

        return corners[1..^1];
    }

    /// <summary>Length of a string through points.</summary>
    public static double LengthMetres(IReadOnlyList<SectionPoint> points) =>
        Enumerable.Range(1, Math.Max(0, points.Count - 1)).Sum(i => points[i - 1].DistanceMetres(points[i]));

    private static bool TurnsDown(SectionPoint a, SectionPoint b, SectionPoint c) =>
        ((b.Along - a.Along) * (c.Aside - a.Aside)) - ((b.Aside - a.Aside) * (c.Along - a.Along)) < 0;
}
