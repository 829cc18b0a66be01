using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors.Screens;

/// <summary>A point in space: a place on the plan and a height above the ground.</summary>
/// <param name="Place">The place.</param>
/// <param name="HeightMetres">Height above the ground, 0 or more.</param>
public readonly record struct RaisedPoint(PlanPoint Place, double HeightMetres)
{
    /// <summary>Straight distance in metres.</summary>
    public double DistanceMetres(RaisedPoint other)
    {
        double flat = Place.DistanceMetres(other.Place);
        double up = other.HeightMetres - HeightMetres;
        return Math.Sqrt((flat * flat) + (up * up));
    }
}

/// <summary>
/// The ways over and round the obstacles that stand between source and receiver: a tight string in the upright section,
/// and one on each side in plan, ISO 9613-2:1996 clause 7.4.
/// </summary>
public static class Detours
{
    /// <summary>The way over the tops, or null when nothing stands between.</summary>
    public static DetourPath? OverTop(RaisedPoint source, RaisedPoint receiver, IEnumerable<Obstacle> obstacles)
    {
        double length = source.Place.DistanceMetres(receiver.Place);
        SectionPoint[] tops =
        [
            .. obstacles.SelectMany(o =>
                o.Meets(source.Place, receiver.Place).Select(share => new SectionPoint(share * length, o.HeightMetres))
            ),
        ];
        if (tops.Length == 0)
        {
            return null;
        }

        var start = new SectionPoint(0, source.HeightMetres);
        var end = new SectionPoint(length, receiver.HeightMetres);
        IReadOnlyList<SectionPoint> edges = TightString.Over(start, end, tops);
        bool seesOver = edges.Count == 0;
        if (seesOver)
        {
            // The edge nearest to the line of sight is the one that still counts.
            edges = [tops.MinBy(t => start.DistanceMetres(t) + t.DistanceMetres(end))];
        }

        return new(
            start.DistanceMetres(edges[0]),
            TightString.LengthMetres(edges),
            edges[^1].DistanceMetres(end),
            AlongEdgeMetres: 0,
            source.DistanceMetres(receiver),
            seesOver
        );
    }

    /// <summary>
    /// The way round the obstacles on the left or on the right as seen from the source, or null when there is none.
    /// </summary>
    /// <param name="source">The source.</param>
    /// <param name="receiver">The receiver, not above or below the source.</param>
    /// <param name="between">Obstacles that stand between, at least one.</param>
    /// <param name="left">Whether it is the left side.</param>
    public static DetourPath? RoundSide(
        RaisedPoint source,
        RaisedPoint receiver,
        IReadOnlyList<Obstacle> between,
        bool left
    ) =>
        new WayRound(source.Place, receiver.Place, between, left).Shortest() is { } way
            ? new(
                way[0].DistanceMetres(way[1]),
                Enumerable.Range(1, way.Count - 2).Skip(1).Sum(i => way[i - 1].DistanceMetres(way[i])),
                way.Count > 2 ? way[^2].DistanceMetres(way[^1]) : 0,
                Math.Abs(receiver.HeightMetres - source.HeightMetres),
                source.DistanceMetres(receiver),
                SeesOver: false
            )
            : null;
}
