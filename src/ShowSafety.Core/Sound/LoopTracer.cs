using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Turns a grid of inside and outside nodes into closed loops (marching squares). Each grid edge between an inside and
/// an outside node carries one point on the outer side of the boundary; in a cell with two inside nodes on a
/// diagonal they are joined.
/// </summary>
internal sealed class LoopTracer(MarginGrid margins, PlanPoint corner, double cell, Func<PlanPoint, double> marginAt)
{
    private const int Bisections = 6;

    // Share of an edge, what six bisections leave open.
    private const double Beyond = 1.0 / 64;

    private readonly Dictionary<(int I, int J, bool Upright), (int I, int J, bool Upright)> _next = [];

    /// <summary>The union of everything the loops enclose, holes filled.</summary>
    public Geometry Union()
    {
        for (int i = 0; i < margins.Side - 1; i++)
        {
            for (int j = 0; j < margins.Side - 1; j++)
            {
                Link(i, j);
            }
        }

        return SiteGeometry.Union(Loops());
    }

    // Edges are known by their lower left node and whether they are upright. Links run with the inside on the left, so
    // that each edge is left exactly once.
    private void Link(int i, int j)
    {
        (int, int, bool) bottom = (i, j, false);
        (int, int, bool) right = (i + 1, j, true);
        (int, int, bool) top = (i, j + 1, false);
        (int, int, bool) left = (i, j, true);
        int corners =
            (margins.IsIn(i, j) ? 1 : 0)
            | (margins.IsIn(i + 1, j) ? 2 : 0)
            | (margins.IsIn(i + 1, j + 1) ? 4 : 0)
            | (margins.IsIn(i, j + 1) ? 8 : 0);
        switch (corners)
        {
            case 1:
                _next[bottom] = left;
                break;
            case 2:
                _next[right] = bottom;
                break;
            case 3:
                _next[right] = left;
                break;
            case 4:
                _next[top] = right;
                break;
            case 5:
                _next[bottom] = right;
                _next[top] = left;
                break;
            case 6:
                _next[top] = bottom;
                break;
            case 7:
                _next[top] = left;
                break;
            case 8:
                _next[left] = top;
                break;
            case 9:
                _next[bottom] = top;
                break;
            case 10:
                _next[left] = bottom;
                _next[right] = top;
                break;
            case 11:
                _next[right] = top;
                break;
            case 12:
                _next[left] = right;
                break;
            case 13:
                _next[bottom] = right;
                break;
            case 14:
                _next[left] = bottom;
                break;
            default:
                break;
        }
    }

    private IEnumerable<Polygon> Loops()
    {
        while (_next.Count > 0)
        {
            (int I, int J, bool Upright) at = _next.Keys.First();
            var ring = new List<PlanPoint>();
            while (_next.Remove(at, out (int I, int J, bool Upright) next))
            {
                ring.Add(Crossing(at));
                at = next;
            }

            yield return SiteGeometry.Polygon(ring);
        }
    }

    // A little beyond where a straight line between the margins crosses, if that is outside; else bisected from there on.
    private PlanPoint Crossing((int I, int J, bool Upright) edge)
    {
        (int I, int J) first = (edge.I, edge.J);
        (int I, int J) second = edge.Upright ? (edge.I, edge.J + 1) : (edge.I + 1, edge.J);
        ((int I, int J) within, (int I, int J) beyond) = margins.IsIn(edge.I, edge.J)
            ? (first, second)
            : (second, first);
        double inner = margins[within.I, within.J];
        double outer = margins[beyond.I, beyond.J];
        PlanPoint from = Node(within.I, within.J);
        PlanPoint to = Node(beyond.I, beyond.J);

        // Never onto the node itself, so that two loops can't touch there.
        double low = 0;
        double high = 1 - 1e-3;
        if (double.IsFinite(inner) && double.IsFinite(outer))
        {
            double guess = Math.Min(high, (inner / (inner - outer)) + Beyond);
            if (marginAt(Between(from, to, guess)) < 0)
            {
                return Between(from, to, guess);
            }

            low = guess;
        }

        for (int step = 0; step < Bisections; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = marginAt(Between(from, to, middle)) >= 0 ? (middle, high) : (low, middle);
        }

        return Between(from, to, high);
    }

    private PlanPoint Node(int i, int j) => new(corner.XMetres + (i * cell), corner.YMetres + (j * cell));

    private static PlanPoint Between(PlanPoint a, PlanPoint b, double share) =>
        new(a.XMetres + (share * (b.XMetres - a.XMetres)), a.YMetres + (share * (b.YMetres - a.YMetres)));
}
