using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// An engine or its mirror image in an upright wall: place, exhaust axis, and the half-plane it is heard in. An image
/// mirrors the axis as well.
/// </summary>
/// <param name="Place">Place on the plan.</param>
/// <param name="AxisX">x of the unit vector the exhaust blows along.</param>
/// <param name="AxisY">y of that vector.</param>
/// <param name="Side">The line of the mirror it is heard on the engine's side of, or null: heard everywhere.</param>
public sealed record Emitter(PlanPoint Place, double AxisX, double AxisY, MirrorLine? Side)
{
    /// <summary>The engine and its first-order images in the structures of a site.</summary>
    public static Emitter[] All(PlanPoint place, double headingDegrees, IEnumerable<Structure> structures)
    {
        (double sin, double cos) = Math.SinCos(Heading.ToRadians(headingDegrees));
        var engine = new Emitter(place, sin, cos, null);
        return [engine, .. structures.SelectMany(s => MirrorLine.Of(s, place)).Select(line => line.Image(engine))];
    }

    /// <summary>Whether sound from here reaches a place.</summary>
    public bool Reaches(PlanPoint place) => Side is null || Side.HasOnEngineSide(place);

    /// <summary>Whether sound from here reaches any place of a patch, or for the lowest bound every place.</summary>
    public bool Reaches(in Patch patch, Bound bound) => Side is null || Side.HasOnEngineSide(patch, bound);
}

/// <summary>
/// The endless line of a wall's face as a perfect mirror, with the engine on its positive side: a cautious stand-in for
/// a finite wall, which reflects less and in fewer directions.
/// </summary>
/// <param name="NormalX">x of the unit normal towards the engine.</param>
/// <param name="NormalY">y of that normal.</param>
/// <param name="Offset">Normal times a point on the line.</param>
public sealed record MirrorLine(double NormalX, double NormalY, double Offset)
{
    private const double ShortestMetres = 0.05;
    private const double RoundingMetres = 1e-9;

    /// <summary>The faces of a structure that an engine sees: both faces of a wall, the outer ones of a building.</summary>
    public static IEnumerable<MirrorLine> Of(Structure structure, PlanPoint engine)
    {
        bool ring = structure.Kind == StructureKind.Building && structure.Line.Count >= 3;
        double turn = ring ? Math.Sign(TwiceArea(structure.Line)) : 0;
        int count = ring ? structure.Line.Count : structure.Line.Count - 1;
        for (int i = 0; i < count; i++)
        {
            PlanPoint from = structure.Line[i];
            PlanPoint to = structure.Line[(i + 1) % structure.Line.Count];
            if (Of(from, to, engine, turn) is { } line)
            {
                yield return line;
            }
        }
    }

    /// <summary>Whether a place is on the engine's side.</summary>
    public bool HasOnEngineSide(PlanPoint place) => Distance(place) >= 0;

    /// <summary>Whether any place of a patch is on the engine's side, or for the lowest bound every place.</summary>
    public bool HasOnEngineSide(in Patch patch, Bound bound)
    {
        Span<PlanPoint> corners = stackalloc PlanPoint[Patch.CornerCount];
        patch.WriteCorners(corners);
        double least = double.MaxValue;
        double most = double.MinValue;
        foreach (PlanPoint corner in corners)
        {
            double distance = Distance(corner);
            least = Math.Min(least, distance);
            most = Math.Max(most, distance);
        }

        return bound == Bound.Highest ? most >= -RoundingMetres : least >= RoundingMetres;
    }

    /// <summary>The image of an emitter in this line.</summary>
    public Emitter Image(Emitter source)
    {
        double away = 2 * Distance(source.Place);
        double along = 2 * ((source.AxisX * NormalX) + (source.AxisY * NormalY));
        return new(
            new(source.Place.XMetres - (away * NormalX), source.Place.YMetres - (away * NormalY)),
            source.AxisX - (along * NormalX),
            source.AxisY - (along * NormalY),
            this
        );
    }

    private static MirrorLine? Of(PlanPoint from, PlanPoint to, PlanPoint engine, double turn)
    {
        double length = from.DistanceMetres(to);
        if (!(length >= ShortestMetres))
        {
            return null;
        }

        double x = (to.YMetres - from.YMetres) / length;
        double y = (from.XMetres - to.XMetres) / length;
        var right = new MirrorLine(x, y, (x * from.XMetres) + (y * from.YMetres));
        double distance = right.Distance(engine);

        // Right of the way round a ring that turns left is outside.
        bool hidden = turn * distance < 0 || Math.Abs(distance) < ShortestMetres;
        return hidden ? null
            : distance > 0 ? right
            : new(-right.NormalX, -right.NormalY, -right.Offset);
    }

    private double Distance(PlanPoint place) => (place.XMetres * NormalX) + (place.YMetres * NormalY) - Offset;

    private static double TwiceArea(ValueList<PlanPoint> ring) =>
        Enumerable
            .Range(0, ring.Count)
            .Sum(i =>
            {
                PlanPoint a = ring[i];
                PlanPoint b = ring[(i + 1) % ring.Count];
                return (a.XMetres * b.YMetres) - (b.XMetres * a.YMetres);
            });
}
