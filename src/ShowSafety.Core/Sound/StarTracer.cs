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
    private const double Growth = 1.35;
    private const int Bisections = 8;

    /// <summary>The star-shaped area, empty when no ray finds anything.</summary>
    public Geometry Area(Func<PlanPoint, bool> isIn)
    {
        double[] reach = [.. Enumerable.Range(0, Rays).Select(ray => Reach(headingDegrees + ray, isIn))];
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

    // The first place outside along the ray, at the outer end of the last step that was still inside.
    private double Reach(double heading, Func<PlanPoint, bool> isIn)
    {
        if (!isIn(centre.Along(heading, FirstMetres)))
        {
            return 0;
        }

        double low = FirstMetres;
        double high = low * Growth;
        while (high < reachMetres && isIn(centre.Along(heading, high)))
        {
            low = high;
            high *= Growth;
        }

        for (int step = 0; step < Bisections; step++)
        {
            double middle = (low + high) / 2;
            (low, high) = isIn(centre.Along(heading, middle)) ? (middle, high) : (low, middle);
        }

        return high;
    }
}
