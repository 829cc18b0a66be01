using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Sound.Outdoors.Bounds;

/// <summary>
/// What the ways of <see cref="OpenAirSite.Paths"/> from one engine can bring at least or at most over a patch of ground,
/// for areas that hold every place at or above a level. The most counts no screen and the hardest ground on the way; the
/// least counts the largest loss of a screen wherever one may stand between, the softest ground, and no wall.
/// </summary>
internal sealed class OpenAirBound
{
    private readonly OpenAirSite _site;
    private readonly Emitter _source;
    private readonly double _heightMetres;
    private readonly WallRange[] _walls;
    private readonly GroundRange _anyGround;
    private readonly double[] _air;

    /// <summary>Prepares the ways from an engine.</summary>
    /// <param name="site">The site.</param>
    /// <param name="source">Place and exhaust axis of the engine.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    public OpenAirBound(OpenAirSite site, Emitter source, double sourceHeightMetres)
    {
        _site = site;
        _source = source;
        _heightMetres = sourceHeightMetres;
        _walls = [.. site.Walls.Select(wall => WallRange.Of(wall, source)).OfType<WallRange>()];
        _anyGround = GroundRange.Over(site.Ground);
        _air = [.. site.AirPerMetre];
    }

    /// <summary>Number of ways: the straight one, way 0, and one by each wall.</summary>
    public int Ways => 1 + _walls.Length;

    /// <summary>Writes what a way brings, mean square pressure per sound power in each band.</summary>
    /// <param name="way">Number of the way.</param>
    /// <param name="patch">The patch.</param>
    /// <param name="earHeightMetres">Height of the ear, 0 or more.</param>
    /// <param name="bound">Least or most.</param>
    /// <param name="factors">What is written, where there is anything.</param>
    /// <returns>The range of angles from the exhaust axis in degrees, or null when it brings nothing.</returns>
    public (double Least, double Most)? Factors(
        int way,
        in Patch patch,
        double earHeightMetres,
        Bound bound,
        Span<double> factors
    )
    {
        if (way == 0)
        {
            return Straight(patch, earHeightMetres, bound, factors);
        }

        WallRange wall = _walls[way - 1];
        return bound == Bound.Highest && wall.MayReach(patch) ? By(wall, patch, earHeightMetres, factors) : null;
    }

    private (double, double) Straight(in Patch patch, double ear, Bound bound, Span<double> factors)
    {
        var corridor = new Corridor(_source.Place, patch.Middle, patch.RadiusMetres);
        (double, double) angles = Flat(_source, GroundRange.Over(_site.Ground, corridor), patch, ear, bound, factors);
        if (bound == Bound.Lowest && _site.Obstacles.Any(o => MayStandIn(o, corridor)))
        {
            Scale(factors, _ => Decibels.ToEnergy(-ScreenDiffraction.MostDoubleDb));
        }

        return angles;
    }

    private (double, double) By(WallRange wall, Patch patch, double ear, Span<double> factors)
    {
        (double, double) angles = Flat(wall.Image, _anyGround, patch, ear, Bound.Highest, factors);
        Scale(factors, band => wall.MostShare(patch, band));
        return angles;
    }

    private (double, double) Flat(
        Emitter from,
        GroundRange ground,
        in Patch patch,
        double ear,
        Bound bound,
        Span<double> factors
    )
    {
        (double, double) angles = DirectPath.Factors(from, _heightMetres, patch, ear, bound, _air, factors);
        (double near, double far) = patch.DistancesMetres(from.Place);
        FlatBound.Factors(bound, near, far, ground, _heightMetres, ear, _site.AirPerMetre, factors);
        return angles;
    }

    private static bool MayStandIn(Obstacle obstacle, Corridor corridor)
    {
        int edges = obstacle.IsRing ? obstacle.Line.Count : obstacle.Line.Count - 1;
        for (int i = 0; i < edges; i++)
        {
            if (corridor.Meets(obstacle.Line[i], obstacle.Line[(i + 1) % obstacle.Line.Count]))
            {
                return true;
            }
        }

        return false;
    }

    private static void Scale(Span<double> factors, Func<int, double> share)
    {
        for (int band = 0; band < factors.Length; band++)
        {
            factors[band] *= share(band);
        }
    }
}
