using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Finds the area where a value may be at or above a threshold, from what the value can be at most over a patch of
/// ground. About each engine, in sectors a degree wide, the outermost patch that may reach the threshold is sought from
/// outside in; every patch beyond it is shown to stay below. So the area holds every such place, whatever is between
/// the patches: it is an outer bound, not a sample. Each engine answers for the ground nearer to it than to the others.
/// </summary>
/// <remarks>Nothing farther from every engine than <see cref="LargestMetres"/> is looked at.</remarks>
internal sealed class PatchTracer((PlanPoint Place, double HeadingDegrees)[] engines)
{
    /// <summary>The largest distance from an engine looked at, in metres.</summary>
    public const double LargestMetres = 20_000;

    // A sector's reach is found to this share, outwards.
    private const double Tolerance = 0.001;

    // Nearer than this to an engine an area is not told apart from the engine.
    private const double FirstMetres = 0.3;
    private const int Sectors = 360;
    private const double SectorDegrees = 360.0 / Sectors;

    // A neighbour's reach shortens the search: it begins a little beyond and goes on inwards in growing steps.
    private const double BeyondNeighbour = 1.08;
    private const double FirstStep = 1.04;

    /// <summary>The area; valid, possibly empty, never less than where the value is at or above the threshold.</summary>
    /// <param name="highest">A value that no place of a patch exceeds.</param>
    /// <param name="threshold">The threshold.</param>
    public Geometry AreaAtOrAbove(Func<Patch, double> highest, double threshold) =>
        SiteGeometry.Union(Enumerable.Range(0, engines.Length).Select(engine => Star(engine, highest, threshold)));

    private Geometry Star(int engine, Func<Patch, double> highest, double threshold)
    {
        (PlanPoint place, double heading) = engines[engine];
        var reach = new double[Sectors];
        double neighbour = 0;
        for (int sector = 0; sector < Sectors; sector++)
        {
            double from = sector * SectorDegrees;
            reach[sector] = Reach(
                (near, far) =>
                {
                    var patch = new Patch(place, heading, from, from + SectorDegrees, near, far);
                    return !IsNearerToAnother(patch, engine) && highest(patch) >= threshold;
                },
                neighbour
            );
            neighbour = reach[sector];
        }

        return reach.Max() > 0 ? Outline(place, heading, reach) : SiteGeometry.Empty;
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

    // The far end of the outermost patch of a sector that may reach the threshold, 0 when none does.
    private static double Reach(Func<double, double, bool> mayReach, double neighbour)
    {
        double far = Math.Clamp(neighbour * BeyondNeighbour, FirstMetres, LargestMetres);
        double found = Outermost(mayReach, far, LargestMetres);
        for (double step = FirstStep; found <= 0 && far > FirstMetres; step *= step)
        {
            double near = Math.Max(FirstMetres, far / step);
            found = Outermost(mayReach, near, far);
            far = near;
        }

        return found > 0 ? found
            : mayReach(0, FirstMetres) ? FirstMetres
            : 0;
    }

    private static double Outermost(Func<double, double, bool> mayReach, double near, double far)
    {
        if (far <= near || !mayReach(near, far))
        {
            return 0;
        }

        if (far <= near * (1 + Tolerance))
        {
            return far;
        }

        double middle = Math.Sqrt(near * far);
        double outer = Outermost(mayReach, middle, far);
        return outer > 0 ? outer : Outermost(mayReach, near, middle);
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
                    return place.Along(heading + (sector * SectorDegrees), Math.Max(FirstMetres, farther) * chord);
                })
        );
    }
}
