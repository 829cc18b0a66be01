using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound.Outdoors.Screens;

/// <summary>Something upright that takes sound away from what is behind it.</summary>
/// <param name="Id">Id of the structure.</param>
/// <param name="Line">Its line, or its outline if <paramref name="IsRing"/>.</param>
/// <param name="IsRing">Whether the line closes.</param>
/// <param name="HeightMetres">Height above the ground, above 0.</param>
public sealed record Obstacle(string Id, ValueList<PlanPoint> Line, bool IsRing, double HeightMetres)
{
    /// <summary>Least mass in kg/m² of a surface that counts, ISO 9613-2:1996 clause 7.4.</summary>
    public const double LeastMassKilogramsPerSquareMetre = 10;

    /// <summary>
    /// A structure as an obstacle, or null when it does not count: height or mass not stated, lighter than 10 kg/m², or
    /// no closed surface. What does not count takes nothing off: the cautious side.
    /// </summary>
    public static Obstacle? Of(Structure structure) =>
        structure
            is {
                Kind: StructureKind.Wall or StructureKind.Building or StructureKind.SoundScreen,
                HeightMetres.Value: var height,
                MassKilogramsPerSquareMetre.Value: >= LeastMassKilogramsPerSquareMetre,
            }
            ? new(
                structure.Id,
                structure.Line,
                structure.Kind == StructureKind.Building && structure.Line.Count >= 3,
                height
            )
            : null;

    // Nearer than this to it somebody is at it, not behind it: rounding must not put an ear at a façade behind the façade.
    private const double AtItMetres = 0.001;

    /// <summary>
    /// Shares, from 0 at the start to 1 at the end, at which the straight line from one place to another meets it clear of
    /// both places.
    /// </summary>
    public IEnumerable<double> Meets(PlanPoint from, PlanPoint to)
    {
        double clear = AtItMetres / from.DistanceMetres(to);
        int edges = IsRing ? Line.Count : Line.Count - 1;
        for (int i = 0; i < edges; i++)
        {
            if (
                PlanLines.Crossing(from, to, Line[i], Line[(i + 1) % Line.Count]) is { } share
                && share > clear
                && 1 - share > clear
            )
            {
                yield return share;
            }
        }
    }

    /// <summary>How wide it is, in metres, seen along the line from one place to another.</summary>
    public double WidthAcross(PlanPoint from, PlanPoint to)
    {
        double length = from.DistanceMetres(to);
        double x = (to.XMetres - from.XMetres) / length;
        double y = (to.YMetres - from.YMetres) / length;
        double[] across = [.. Line.Select(p => (p.YMetres * x) - (p.XMetres * y))];
        return across.Max() - across.Min();
    }
}
