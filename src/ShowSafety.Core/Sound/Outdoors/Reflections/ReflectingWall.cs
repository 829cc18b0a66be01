using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound.Outdoors.Reflections;

/// <summary>
/// An upright flat surface that throws sound back, ISO 9613-2:1996 clause 7.5. For what takes sound away from what is
/// behind it use <see cref="Screens.Obstacle"/>; one wall is usually both.
/// </summary>
/// <param name="Id">Id of the structure.</param>
/// <param name="From">One end on the plan.</param>
/// <param name="To">The other end, elsewhere.</param>
/// <param name="HeightMetres">Height above the ground, above 0; null where unknown: as high as any sound reaches.</param>
/// <param name="SizeMetres">l_min: the smaller of height and length of the surface it is part of, above 0.</param>
/// <param name="Reflected">ρ, the share of the energy thrown back in each octave band, 0 to 1.</param>
public sealed record ReflectingWall(
    string Id,
    PlanPoint From,
    PlanPoint To,
    double? HeightMetres,
    double SizeMetres,
    BandValues Reflected
)
{
    // Pieces of a line that turn by less are one surface: a bent wall drawn in short pieces throws sound back as a whole.
    private const double FlatDegrees = 10;
    private const double ShortestMetres = 0.05;

    /// <summary>A wall standing alone.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="from">One end on the plan.</param>
    /// <param name="to">The other end, elsewhere.</param>
    /// <param name="heightMetres">Height above the ground, above 0, or null where unknown.</param>
    /// <param name="reflected">ρ, the share of the energy thrown back in each octave band, 0 to 1.</param>
    public static ReflectingWall Alone(
        string id,
        PlanPoint from,
        PlanPoint to,
        double? heightMetres,
        BandValues reflected
    ) => new(id, from, to, heightMetres, Smaller(from.DistanceMetres(to), heightMetres), reflected);

    /// <summary>
    /// The faces of a structure. A plan doesn't say what they are made of: ρ = 1, the flat hard wall of Table 4 (from
    /// memory), which no surface exceeds.
    /// </summary>
    public static IEnumerable<ReflectingWall> Of(Structure structure)
    {
        PlanPoint[] line = Corners(structure);
        double? height = structure.HeightMetres?.Value;
        double[] runs = Runs(line);
        for (int i = 0; i + 1 < line.Length; i++)
        {
            yield return new(
                structure.Id,
                line[i],
                line[i + 1],
                height,
                Smaller(runs[i], height),
                BandValues.Uniform(1)
            );
        }
    }

    private static double Smaller(double length, double? height) => Math.Min(length, height ?? length);

    // Corners too near to each other to give a direction are one.
    private static PlanPoint[] Corners(Structure structure)
    {
        bool ring = structure.Kind == StructureKind.Building && structure.Line.Count >= 3;
        var corners = new List<PlanPoint>();
        foreach (PlanPoint corner in ring ? structure.Line.Append(structure.Line[0]) : structure.Line)
        {
            if (corners.Count == 0 || corners[^1].DistanceMetres(corner) >= ShortestMetres)
            {
                corners.Add(corner);
            }
        }

        return [.. corners];
    }

    private static double[] Runs(PlanPoint[] line)
    {
        var runs = new double[Math.Max(0, line.Length - 1)];
        int first = 0;
        for (int i = 1; i <= runs.Length; i++)
        {
            bool goesOn = i < runs.Length && TurnDegrees(line[i - 1], line[i], line[i + 1]) < FlatDegrees;
            if (!goesOn)
            {
                double length = Enumerable.Range(first, i - first).Sum(k => line[k].DistanceMetres(line[k + 1]));
                Array.Fill(runs, length, first, i - first);
                first = i;
            }
        }

        return runs;
    }

    private static double TurnDegrees(PlanPoint before, PlanPoint corner, PlanPoint after) =>
        Heading.Between(before.BearingDegrees(corner), corner.BearingDegrees(after));
}
