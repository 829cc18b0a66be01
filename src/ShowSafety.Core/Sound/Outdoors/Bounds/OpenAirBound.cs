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
    private static readonly double LeastPastScreen = Decibels.ToEnergy(-ScreenDiffraction.MostDoubleDb);

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
    /// <param name="ears">Heights of the ears.</param>
    /// <param name="bound">Least or most.</param>
    /// <param name="factors">What is written, where there is anything.</param>
    /// <returns>The range of angles from the exhaust axis in degrees, or null when it brings nothing.</returns>
    public (double Least, double Most)? Factors(
        int way,
        in Patch patch,
        EarRange ears,
        Bound bound,
        Span<double> factors
    )
    {
        if (way == 0)
        {
            return Straight(patch, ears, bound, factors);
        }

        WallRange wall = _walls[way - 1];
        return bound == Bound.Highest && wall.MayReach(patch) ? By(wall, patch, ears, factors) : null;
    }

    private (double, double) Straight(in Patch patch, EarRange ears, Bound bound, Span<double> factors)
    {
        bool mattersWhere = _site.Ground.Pieces.Count > 0 || (bound == Bound.Lowest && _site.Obstacles.Count > 0);
        Corridor corridor = mattersWhere ? new(_source.Place, patch.Middle, patch.RadiusMetres) : default;
        GroundRange ground = _site.Ground.Pieces.Count > 0 ? GroundRange.Over(_site.Ground, corridor) : _anyGround;
        (double, double) angles = Flat(_source, ground, patch, ears, bound, factors);
        if (bound == Bound.Lowest && MayBeScreened(corridor))
        {
            for (int band = 0; band < factors.Length; band++)
            {
                factors[band] *= LeastPastScreen;
            }
        }

        return angles;
    }

    private (double, double) By(WallRange wall, in Patch patch, EarRange ears, Span<double> factors)
    {
        (double, double) angles = Flat(wall.Image, _anyGround, patch, ears, Bound.Highest, factors);
        wall.Reflect(patch, factors);
        return angles;
    }

    private (double, double) Flat(
        Emitter from,
        GroundRange ground,
        in Patch patch,
        EarRange ears,
        Bound bound,
        Span<double> factors
    )
    {
        (double, double) metres = patch.DistancesMetres(from.Place);
        FlatWay
            .Outermost(bound, metres, _heightMetres, ears)
            .Write(GroundFactors.Even(bound == Bound.Highest ? ground.Least : ground.Most), _air, factors);
        return DirectPath.AnglesDegrees(from, _heightMetres, patch, metres, ears);
    }

    private bool MayBeScreened(Corridor corridor)
    {
        foreach (Obstacle obstacle in _site.Obstacles)
        {
            if (corridor.MeetsLine(obstacle.Line, obstacle.IsRing))
            {
                return true;
            }
        }

        return false;
    }
}
