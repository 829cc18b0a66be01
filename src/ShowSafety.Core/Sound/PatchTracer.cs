using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Finds the area where a value may be at or above a threshold, from what the value can be at most over a patch of
/// ground. About each engine, in sectors a degree wide, the outermost patch that may reach the threshold is sought from
/// outside in; every patch beyond it is shown to stay below. So the area holds every such place, whatever is between
/// the patches: it is an outer bound, not a sample. Each engine answers for the ground nearer to it than to the others.
/// </summary>
/// <remarks>What is asked about patches is asked from several threads at once. Nothing farther from every engine than <see cref="SectorReach.LargestMetres"/> is looked at.</remarks>
internal sealed class PatchTracer((PlanPoint Place, double HeadingDegrees)[] engines)
{
    private const int Sectors = 360;
    private const double SectorDegrees = 360.0 / Sectors;

    // Arcs are sought side by side, always the same ones, so that the answer is too whatever the machine.
    private const int Arcs = 4;
    private const int SectorsOfAnArc = Sectors / Arcs;

    // The reach is first sought where the last two point to, by at most so much of a turn between sectors.
    private const double LargestTurn = 1.1;

    /// <summary>The area; valid, possibly empty, never less than where the value is at or above the threshold.</summary>
    /// <param name="highest">A value that no place of a patch exceeds.</param>
    /// <param name="threshold">The threshold.</param>
    public Geometry AreaAtOrAbove(Func<Patch, double> highest, double threshold) =>
        SiteGeometry.Union(Enumerable.Range(0, engines.Length).Select(engine => Star(engine, highest, threshold)));

    private Geometry Star(int engine, Func<Patch, double> highest, double threshold)
    {
        (PlanPoint place, double heading) = engines[engine];
        var reach = new double[Sectors];
        Parallel.For(
            0,
            Arcs,
            arc => SeekArc(engine, highest, threshold, reach.AsMemory(arc * SectorsOfAnArc, SectorsOfAnArc), arc)
        );
        return reach.Max() > 0 ? Outline(place, heading, reach) : SiteGeometry.Empty;
    }

    private void SeekArc(int engine, Func<Patch, double> highest, double threshold, Memory<double> reach, int arc)
    {
        (PlanPoint place, double heading) = engines[engine];
        var search = new SectorReach();
        for (int i = 0; i < reach.Length; i++)
        {
            double from = ((arc * SectorsOfAnArc) + i) * SectorDegrees;
            var sector = new Sector(place, heading, from, from + SectorDegrees);
            reach.Span[i] = search.Farthest(
                (near, far) =>
                {
                    var patch = new Patch(sector, near, far);
                    return IsNearerToAnother(patch, engine) ? double.NegativeInfinity : highest(patch) - threshold;
                },
                Guess(reach.Span, i)
            );
        }
    }

    private static double Guess(ReadOnlySpan<double> reach, int sector)
    {
        double last = sector > 0 ? reach[sector - 1] : 0;
        double turn = sector > 1 && reach[sector - 2] > 0 ? last / reach[sector - 2] : 1;
        return last * Math.Clamp(turn, 1 / LargestTurn, LargestTurn);
    }

    private bool IsNearerToAnother(in Patch patch, int engine)
    {
        for (int other = 0; other < engines.Length; other++)
        {
            if (other != engine && patch.DistancesMetres(engines[other].Place).Most < patch.NearMetres)
            {
                return true;
            }
        }

        return false;
    }

    // A corner on each side of a sector, so far out that the chord between them clears the sector's arc.
    private static Polygon Outline(PlanPoint place, double heading, double[] reach)
    {
        double chord = 1 / Math.Cos(Heading.ToRadians(SectorDegrees / 2));
        return SiteGeometry.Polygon(
            Enumerable
                .Range(0, Sectors)
                .Select(sector =>
                {
                    double farther = Math.Max(reach[sector], reach[(sector + Sectors - 1) % Sectors]);
                    return place.Along(
                        heading + (sector * SectorDegrees),
                        Math.Max(SectorReach.FirstMetres, farther) * chord
                    );
                })
        );
    }
}
