using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Outdoors.Bounds;
using ShowSafety.Core.Sound.Outdoors.Reflections;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Tests.Sound.Outdoors.Bounds;

public sealed class OpenAirBoundTests
{
    private static readonly BandValues Air = AirAbsorption
        .BandsDecibelsPerKilometre(new(15, 60, 101.325))
        .Map(AirAbsorption.PowerCoefficientPerMetre);

    private static readonly Gen<PlanPoint> Place = Gen.Select(
        Gen.Double[-60, 60],
        Gen.Double[-60, 60],
        (x, y) => new PlanPoint(x, y)
    );

    private static readonly Gen<OpenAirSite> Site = Gen.Select(
        Gen.Select(Place, Place, Gen.Double[0.5, 8]).Where((a, b, _) => a.DistanceMetres(b) > 0.1).Array[0, 3],
        Gen.Select(Place.Array[3, 5], Gen.Double[0, 1]).Array[0, 3],
        Gen.Double[0, 1],
        (walls, pieces, elsewhere) =>
            new OpenAirSite(
                new([.. pieces.Select(p => new GroundPiece([.. p.Item1], p.Item2))], elsewhere),
                [.. walls.Select(w => new Obstacle("w", [w.Item1, w.Item2], false, w.Item3))],
                [.. walls.Select(w => ReflectingWall.Alone("w", w.Item1, w.Item2, w.Item3, BandValues.Uniform(0.9)))],
                Air
            )
    );

    // Patches as they are looked at: a degree or a few wide, near and far, and a place anywhere in each.
    private static readonly Gen<(Patch Patch, PlanPoint Place)> Spot = Gen.Select(
            Gen.Double[0, 170],
            Gen.Bool,
            Gen.Double[0.5, 10],
            Gen.Double[-0.3, 2.6],
            Gen.Select(Gen.Double[0.001, 0.5], Gen.Double[0, 1], Gen.Double[0, 1])
        )
        .Select(
            (from, second, width, logNear, rest) =>
            {
                double start = second ? 180 + from : from;
                double near = Math.Pow(10, logNear);
                double far = near * (1 + rest.Item1);
                return (
                    new Patch(new Sector(new(0, 0), 30, start, start + width), near, far),
                    new PlanPoint(0, 0).Along(30 + start + (rest.Item2 * width), near + (rest.Item3 * (far - near)))
                );
            }
        );

    [Fact]
    public void Factors_AnySite_HoldBetweenThemWhatEveryPlaceHears() =>
        Gen.Select(Site, Spot, Gen.Double[0.05, 4], Gen.Select(Gen.Double[0, 4], Gen.Double[0, 2], Gen.Double[0, 1]))
            .Sample(
                (site, spot, source, heights) =>
                {
                    var ears = new EarRange(heights.Item1, heights.Item1 + heights.Item2);
                    double ear = heights.Item1 + (heights.Item2 * heights.Item3);
                    var engine = Engine();
                    var bound = new OpenAirBound(site, engine, source);
                    ValueList<OpenAirPath> paths = site.Paths(engine, source, new(spot.Place, ear));
                    double[] most = Sum(bound, spot.Patch, ears, Bound.Highest);
                    double[] least = Sum(bound, spot.Patch, ears, Bound.Lowest);
                    for (int band = 0; band < 8; band++)
                    {
                        double heard = paths.Sum(p => p.Factors[band]);
                        Assert.True(heard <= most[band] * (1 + 1e-9), $"band {band}: {heard} over {most[band]}");
                        Assert.True(heard >= least[band] * (1 - 1e-9), $"band {band}: {heard} under {least[band]}");
                    }
                },
                iter: 5000
            );

    [Fact]
    public void Factors_AnySite_HoldTheAngleOfTheStraightWay() =>
        Gen.Select(Site, Spot)
            .Sample(
                (site, spot) =>
                {
                    (double least, double most) = Straight(new(site, Engine(), 1), spot.Patch, Bound.Highest).Angles;
                    double angle = site.Paths(Engine(), 1, new(spot.Place, 1.6))[0].AngleDegrees;
                    Assert.InRange(angle, least - 1e-6, most + 1e-6);
                }
            );

    // A small patch of open hard ground leaves hardly anything open: the bounds are worth having.
    [Fact]
    public void Factors_SmallPatchOfOpenGround_LieCloseTogether()
    {
        var site = new OpenAirSite(new([], 0.4), [], [], Air);
        var bound = new OpenAirBound(site, Engine(), 1);
        var patch = new Patch(new Sector(new(0, 0), 30, 40, 41), 20, 20.02);

        double most = Straight(bound, patch, Bound.Highest).Factors[4];
        double least = Straight(bound, patch, Bound.Lowest).Factors[4];

        Assert.InRange(10 * Math.Log10(most / least), 0, 0.05);
    }

    [Fact]
    public void Over_CorridorInsideOnePiece_IsThatPieceAlone()
    {
        var ground = new GroundProfile([new([new(-5, -5), new(50, -5), new(50, 5), new(-5, 5)], 0.8)], 0);

        Assert.Equal(new(0.8, 0.8), GroundRange.Over(ground, new(new(0, 0), new(30, 0), 1)));
        Assert.Equal(new(0, 0.8), GroundRange.Over(ground, new(new(0, 0), new(30, 0), 6)));
    }

    private static Emitter Engine()
    {
        (double sin, double cos) = Math.SinCos(Heading.ToRadians(30));
        return new(new(0, 0), sin, cos);
    }

    private static ((double Least, double Most) Angles, double[] Factors) Straight(
        OpenAirBound bound,
        Patch patch,
        Bound which
    )
    {
        var factors = new double[8];
        return (bound.Factors(0, patch, EarRange.At(1.6), which, factors)!.Value, factors);
    }

    private static double[] Sum(OpenAirBound bound, Patch patch, EarRange ears, Bound which)
    {
        var sum = new double[8];
        var factors = new double[8];
        for (int way = 0; way < bound.Ways; way++)
        {
            if (bound.Factors(way, patch, ears, which, factors) is not null)
            {
                sum = [.. sum.Zip(factors, (a, b) => a + b)];
            }
        }

        return sum;
    }
}
