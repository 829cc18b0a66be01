using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors.Reflections;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// A site in the open air as ISO 9613-2:1996 sees it, asked for the ways sound takes from a source to a receiver: the
/// straight one and one by each wall that throws it back.
/// </summary>
/// <param name="Ground">The ground.</param>
/// <param name="Obstacles">What takes sound away from what is behind it.</param>
/// <param name="Walls">What throws sound back.</param>
/// <param name="AirPerMetre">Power attenuation coefficients of the air in 1/m.</param>
public sealed record OpenAirSite(
    GroundProfile Ground,
    ValueList<Obstacle> Obstacles,
    ValueList<ReflectingWall> Walls,
    BandValues AirPerMetre
)
{
    // A leg ends this short of the wall it leads to, so that the wall is no obstacle to its own reflection.
    private const double ShortOfWallMetres = 0.001;

    /// <summary>The ways from a source to a receiver, the straight one first, then wall by wall.</summary>
    /// <param name="source">Place and exhaust axis of the engine.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="receiver">The receiver.</param>
    public ValueList<OpenAirPath> Paths(Emitter source, double sourceHeightMetres, RaisedPoint receiver)
    {
        var from = new RaisedPoint(source.Place, sourceHeightMetres);
        return
        [
            Straight(source, from, receiver),
            .. Walls
                .Select(wall => WallReflection.Of(from, receiver, wall))
                .OfType<WallReflection>()
                .Select(way => By(way, source, from, receiver)),
        ];
    }

    private OpenAirPath Straight(Emitter source, RaisedPoint from, RaisedPoint to)
    {
        GroundFactors factors = Ground.Along(from.Place, to.Place, from.HeightMetres, to.HeightMetres);
        double flat = from.Place.DistanceMetres(to.Place);
        var path = FlatPath.Of(factors, flat, from.HeightMetres, to.HeightMetres, AirPerMetre);
        BandValues screens = ScreeningLoss.BandsDb(from, to, Obstacles, path.GroundDb) ?? BandValues.Zero;
        return new(
            null,
            DirectPath.AngleDegrees(source, from.HeightMetres, to.Place, to.HeightMetres),
            path,
            screens,
            BandValues.Uniform(1)
        );
    }

    private OpenAirPath By(WallReflection way, Emitter source, RaisedPoint from, RaisedPoint to)
    {
        Emitter image = way.Mirror.Image(source);
        GroundFactors factors = FoldedGround.Along(
            Ground,
            from.Place,
            way.Point.Place,
            to.Place,
            from.HeightMetres,
            to.HeightMetres
        );
        double flat = image.Place.DistanceMetres(to.Place);
        var path = FlatPath.Of(factors, flat, from.HeightMetres, to.HeightMetres, AirPerMetre);
        return new(
            way.Wall.Id,
            DirectPath.AngleDegrees(image, from.HeightMetres, to.Place, to.HeightMetres),
            path,
            Legs(way, from, to, path.GroundDb),
            BandValues.Build(way.EnergyShare)
        );
    }

    // What stands in one leg takes its loss off; of two legs the larger: two losses never add up to more than they give.
    private BandValues Legs(WallReflection way, RaisedPoint from, RaisedPoint to, BandValues groundDb)
    {
        BandValues before = Leg(from, way.Point);
        BandValues after = Leg(to, way.Point);
        return before.With(after, Math.Max);

        BandValues Leg(RaisedPoint end, RaisedPoint wall)
        {
            double length = end.DistanceMetres(wall);
            if (!(length > 2 * ShortOfWallMetres))
            {
                return BandValues.Zero;
            }

            double share = 1 - (ShortOfWallMetres / length);
            var last = new RaisedPoint(
                PlanLines.Between(end.Place, wall.Place, share),
                end.HeightMetres + (share * (wall.HeightMetres - end.HeightMetres))
            );
            return ScreeningLoss.BandsDb(end, last, Obstacles, groundDb) ?? BandValues.Zero;
        }
    }
}
