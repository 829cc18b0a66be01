using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors.Screens;

/// <summary>
/// The shortest way in plan from one place to another that passes a set of obstacles on one side: a tight string from
/// corner to corner. The other side is barred by a ray from where the straight line first meets an obstacle.
/// </summary>
internal sealed class WayRound
{
    // A corner is looked at from this far outside, so that nothing is seen through the wall at its own corner. Lengths
    // are taken to the corner itself: a longer way would promise too much.
    private const double AsideMetres = 0.001;
    private const double FarMetres = 1e5;

    // A corner that lengthens a way by less does not turn it.
    private const double StraightMetres = 1e-6;

    private readonly (PlanPoint From, PlanPoint To)[] _edges;
    private readonly (PlanPoint From, PlanPoint To) _bar;
    private readonly PlanPoint[] _corners;
    private readonly PlanPoint[] _seenFrom;

    /// <summary>Prepares the ways from one place to another.</summary>
    /// <param name="from">The start.</param>
    /// <param name="to">The end, elsewhere.</param>
    /// <param name="obstacles">What stands between; the straight line meets one at least.</param>
    /// <param name="left">Whether they are passed on the left as seen from the start.</param>
    public WayRound(PlanPoint from, PlanPoint to, IReadOnlyList<Obstacle> obstacles, bool left)
    {
        _edges = [.. obstacles.SelectMany(Edges)];
        (PlanPoint At, PlanPoint Aside)[] corners = [.. obstacles.SelectMany(Corners)];
        _corners = [from, .. corners.Select(c => c.At), to];
        _seenFrom = [from, .. corners.Select(c => c.Aside), to];
        PlanPoint first = PlanLines.Between(from, to, obstacles.SelectMany(o => o.Meets(from, to)).Min());
        double side = (left ? FarMetres : -FarMetres) / from.DistanceMetres(to);
        _bar = (
            first,
            new(
                first.XMetres + (side * (to.YMetres - from.YMetres)),
                first.YMetres - (side * (to.XMetres - from.XMetres))
            )
        );
    }

    /// <summary>The corners on the way, its ends included, or null when there is no way.</summary>
    public IReadOnlyList<PlanPoint>? Shortest()
    {
        var distance = new double[_corners.Length];
        var before = new int[_corners.Length];
        Array.Fill(distance, double.PositiveInfinity);
        distance[0] = 0;
        var open = new PriorityQueue<int, double>([(0, 0)]);
        var done = new bool[_corners.Length];
        while (open.TryDequeue(out int at, out _))
        {
            if (done[at])
            {
                continue;
            }

            done[at] = true;
            for (int next = 1; next < _corners.Length; next++)
            {
                double way = distance[at] + _corners[at].DistanceMetres(_corners[next]);
                if (!done[next] && way < distance[next] && Sees(_seenFrom[at], _seenFrom[next]))
                {
                    distance[next] = way;
                    before[next] = at;
                    open.Enqueue(next, way);
                }
            }
        }

        return double.IsFinite(distance[^1]) ? Trace(before) : null;
    }

    private PlanPoint[] Trace(int[] before)
    {
        var way = new List<PlanPoint>();
        for (int at = _corners.Length - 1; at != 0; at = before[at])
        {
            way.Add(_corners[at]);
        }

        way.Add(_corners[0]);
        way.Reverse();
        return Bent(way);
    }

    // A corner that the way passes without a turn is no edge: whether it was seen past is rounding, and to count it would
    // promise the loss of one edge more.
    private static PlanPoint[] Bent(List<PlanPoint> way)
    {
        for (int i = way.Count - 2; i > 0 && way.Count > 3; i--)
        {
            double past = way[i - 1].DistanceMetres(way[i]) + way[i].DistanceMetres(way[i + 1]);
            if (past - way[i - 1].DistanceMetres(way[i + 1]) < StraightMetres)
            {
                way.RemoveAt(i);
            }
        }

        return [.. way];
    }

    // A corner may lie on the bar itself, when the wall does: to touch the bar is to cross it.
    private bool Sees(PlanPoint from, PlanPoint to) =>
        PlanLines.Meeting(from, to, _bar.From, _bar.To) is null
        && !Array.Exists(_edges, e => PlanLines.Crossing(from, to, e.From, e.To) is not null);

    private static IEnumerable<(PlanPoint, PlanPoint)> Edges(Obstacle obstacle) =>
        Enumerable
            .Range(0, obstacle.IsRing ? obstacle.Line.Count : obstacle.Line.Count - 1)
            .Select(i => (obstacle.Line[i], obstacle.Line[(i + 1) % obstacle.Line.Count]));

    private static IEnumerable<(PlanPoint, PlanPoint)> Corners(Obstacle obstacle)
    {
        ValueList<PlanPoint> line = obstacle.Line;
        for (int i = 0; i < line.Count; i++)
        {
            bool end = !obstacle.IsRing && (i == 0 || i == line.Count - 1);
            PlanPoint before = line[(i + line.Count - 1) % line.Count];
            PlanPoint after = line[(i + 1) % line.Count];
            (double x, double y) =
                end && i == 0 ? Away(line[i], after)
                : end ? Away(line[i], before)
                : Sum(Away(line[i], before), Away(line[i], after));
            double size = Math.Sqrt((x * x) + (y * y));
            // A corner that is none can't hold a string.
            if (size > 1e-9)
            {
                yield return (
                    line[i],
                    new(line[i].XMetres + (AsideMetres * x / size), line[i].YMetres + (AsideMetres * y / size))
                );
            }
        }
    }

    private static (double X, double Y) Away(PlanPoint corner, PlanPoint neighbour)
    {
        double length = corner.DistanceMetres(neighbour);
        return length > 0
            ? ((corner.XMetres - neighbour.XMetres) / length, (corner.YMetres - neighbour.YMetres) / length)
            : (0, 0);
    }

    private static (double X, double Y) Sum((double X, double Y) a, (double X, double Y) b) => (a.X + b.X, a.Y + b.Y);
}
