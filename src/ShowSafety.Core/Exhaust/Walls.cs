using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>What a wall is to a jet.</summary>
internal enum WallKind
{
    /// <summary>Side of a tent.</summary>
    Fabric,

    /// <summary>Side of a hall, a wall, a building or a sound screen.</summary>
    Solid,

    /// <summary>Deflector put up against the exhaust.</summary>
    Deflector,
}

/// <summary>A straight piece of wall on the plan.</summary>
/// <param name="OwnerId">Id of the enclosure or structure.</param>
/// <param name="Kind">What it is to a jet.</param>
/// <param name="From">One end.</param>
/// <param name="To">Other end.</param>
internal sealed record WallPiece(string OwnerId, WallKind Kind, PlanPoint From, PlanPoint To)
{
    /// <summary>The piece as a line; null when both ends coincide.</summary>
    public LineString? Line => From == To ? null : SiteGeometry.Line([From, To]);

    /// <summary>Whether it runs within 45° of a heading.</summary>
    public bool RunsAlong(double headingDegrees)
    {
        double turn = Heading.Between(From.BearingDegrees(To), headingDegrees);
        return Math.Min(turn, 180 - turn) < 45;
    }
}

/// <summary>The walls of a site.</summary>
internal static class Walls
{
    /// <summary>All pieces: structures, then the sides of the enclosure that are not wholly open.</summary>
    public static ValueList<WallPiece> Of(Site site) =>
        [.. site.Structures.SelectMany(OfStructure), .. site.Enclosure is { } enclosure ? OfEnclosure(enclosure) : []];

    private static IEnumerable<WallPiece> OfStructure(Structure structure)
    {
        WallKind kind = structure.Kind == StructureKind.BlastDeflector ? WallKind.Deflector : WallKind.Solid;
        bool ring = structure.Kind == StructureKind.Building && structure.Line.Count > 2;
        return Pieces(structure.Id, kind, structure.Line, ring);
    }

    private static IEnumerable<WallPiece> OfEnclosure(Enclosure enclosure)
    {
        WallKind kind = enclosure.Kind == EnclosureKind.Tent ? WallKind.Fabric : WallKind.Solid;
        return Pieces(enclosure.Id, kind, enclosure.Footprint, true)
            .Where((_, side) => !enclosure.Sides.Any(s => s.Side == side && s.OpenShare is { Value: >= 1 }));
    }

    private static IEnumerable<WallPiece> Pieces(string id, WallKind kind, ValueList<PlanPoint> line, bool closed)
    {
        int count = line.Count < 2 ? 0 : line.Count - (closed ? 0 : 1);
        return Enumerable.Range(0, count).Select(i => new WallPiece(id, kind, line[i], line[(i + 1) % line.Count]));
    }
}
