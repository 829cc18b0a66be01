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
    private const int Bisections = 12;

    // Spreading alone is 20 dB a decade; near the engine a turn towards a lobe may raise the level faster.
    private const double FallsDbPerDecade = 30;
    private const double RisesDbPerDecade = 60;

    // How far under the threshold, and how far beyond the boundary as a share of distance, the outer end may be.
    private const double CloseDb = 0.04;
    private const double BeyondShare = 0.001;

    /// <summary>The star-shaped area, empty when no ray finds anything.</summary>
    public Geometry Area(Func<PlanPoint, double> marginAt)
    {
        var reach = new double[Rays];
        Parallel.For(0, Rays, ray => reach[ray] = Reach(headingDegrees + ray, marginAt));
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

    // The first place outside along the ray beyond the near field. Near the engine the slant changes the angle from the
    // axis, so that a level may fall and rise again: there the farthest place inside counts. The farther the level is
    // from the threshold, the longer the step; a step over a gap makes the area larger, never smaller.
    private double Reach(double heading, Func<PlanPoint, double> marginAt)
    {
        double MarginAt(double metres) => marginAt(centre.Along(heading, metres));
        (double Metres, double Db) within = default;
        (double Metres, double Db) beyond = default;
        double at = FirstMetres;
        double margin = MarginAt(at);
        while (at < reachMetres && (margin >= 0 || at < NearFieldMetres))
        {
            double step = Math.Pow(10, margin >= 0 ? margin / FallsDbPerDecade : -margin / RisesDbPerDecade);
            bool inside = margin >= 0;
            within = inside ? (at, margin) : within;
            at *= Math.Max(Growth, step);
            margin = MarginAt(at);
            beyond = inside ? (at, margin) : beyond;
        }

        return within.Metres > 0 ? Crossing(within, beyond, MarginAt) : 0;
    }

    // Along the straight line between the margins over the logarithm of distance, a little beyond, every second time
    // by halves, until the outer end is near the boundary.
    private static double Crossing(
        (double Metres, double Db) within,
        (double Metres, double Db) beyond,
        Func<double, double> marginAt
    )
    {
        for (int step = 0; step < Bisections && beyond.Db < -CloseDb; step++)
        {
            double share = step % 2 == 0 ? within.Db / (within.Db - beyond.Db) : 0.5;
            double metres = within.Metres * Math.Pow(beyond.Metres / within.Metres, share) * (1 + BeyondShare);
            if (metres >= beyond.Metres)
            {
                break;
            }

            double margin = marginAt(metres);
            (within, beyond) = margin >= 0 ? ((metres, margin), beyond) : (within, (metres, margin));
        }

        return beyond.Metres;
    }
}
