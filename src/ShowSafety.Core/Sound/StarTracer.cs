using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// The area about one engine found along rays a degree apart, from the exhaust axis round: a narrow lobe that slips
/// between the samples of a grid doesn't slip between rays. Each ray reaches as far as the farthest of its neighbours.
/// </summary>
internal sealed class StarTracer(PlanPoint centre, double headingDegrees, double reachMetres)
{
    private const int Rays = 360;
    private const double FirstMetres = 0.3;
    private const double Growth = 1.15;
    private const double NearFieldMetres = 6;
    private const int Bisections = 6;

    /// <summary>The star-shaped area, empty when no ray finds anything.</summary>
    public Geometry Area(Func<PlanPoint, bool> isIn)
    {
        var reach = new double[Rays];
        Parallel.For(0, Rays, ray => reach[ray] = Reach(headingDegrees + ray, isIn));
        if (reach.All(r => r <= 0))
        {
            return SiteGeometry.Empty;
        }

        // Never shorter than the first step, so that the outline doesn't fold at the centre.
        double chord = 1 / Math.Cos(Math.PI / Rays);
        return SiteGeometry.Polygon(
            Enumerable
                .Range(0, Rays)
                .Select(ray =>
                {
                    double before = reach[(ray + Rays - 1) % Rays];
                    double after = reach[(ray + 1) % Rays];
                    double farthest = Math.Max(reach[ray], Math.Max(before, after));
                    return centre.Along(headingDegrees + ray, Math.Max(FirstMetres, farthest) * chord);
                })
        );
    }

    // The first place outside along the ray beyond the near field, at the outer end of the last step still inside. Near
    // the engine the slant changes the angle from the axis, so that a level may fall and rise again: there the farthest
    // place inside counts.
    private double Reach(double heading, Func<PlanPoint, bool> isIn)
    {
        double low = 0;
        double high = FirstMetres;
        bool inside = isIn(centre.Along(heading, high));
        while (high < reachMetres && (inside || high < NearFieldMetres))
        {
            low = inside ? high : low;
            high *= Growth;
            inside = isIn(centre.Along(heading, high));
        }

        return low > 0 ? Crossing(heading, low, low * Growth, isIn) : 0;
    }

    private double Crossing(double heading, double low, double high, Func<PlanPoint, bool> isIn)
    {
        for (int step = 0; step < Bisections; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = isIn(centre.Along(heading, middle)) ? (middle, high) : (low, middle);
        }

        return high;
    }
}
