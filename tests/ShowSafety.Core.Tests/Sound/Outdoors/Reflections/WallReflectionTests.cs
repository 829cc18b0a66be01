using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Outdoors.Reflections;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Tests.Sound.Outdoors.Reflections;

public sealed class WallReflectionTests
{
    private static readonly BandValues Hard = BandValues.Uniform(1);

    // A wall 20 m long and 3 m high along y = 0, source 3 m and ear 6 m in front of it and 12 m apart: the image is 9 m
    // across and 12 m along away, so 15 m, thrown back a third of the way. Derived (3-4-5 triangle).
    [Fact]
    public void Of_WallInFront_MeetsTheTriangle()
    {
        WallReflection way = Across(ear: 1);

        Assert.Equal(15, way.LengthMetres, 1e-9);
        Assert.Equal(5, way.SourceLegMetres, 1e-9);
        Assert.Equal(10, way.ReceiverLegMetres, 1e-9);
        Assert.Equal(0.6, way.IncidenceCosine, 1e-9);
        Assert.Equal(4, way.Point.Place.XMetres, 1e-9);
        Assert.Equal(0, way.Point.Place.YMetres, 1e-9);
    }

    // Equation (19) of ISO 9613-2:1996 (memory): 2/(3·0.6)²·(5·10/15) = 2.0576/m, times 340 m/s is 699.6 Hz. Derived.
    [Fact]
    public void EnergyShare_SizeCondition_LeavesOutLongWaves()
    {
        WallReflection way = Across(ear: 1);

        Assert.Equal(699.6, way.LeastHertz, 0.05);
        Assert.Equal([0, 0, 0, 0, 1, 1, 1, 1], Enumerable.Range(0, 8).Select(way.EnergyShare));
    }

    [Fact]
    public void Of_PointAboveTheTop_IsNone() =>
        Assert.Null(WallReflection.Of(new(new(0, 3), 1), new(new(12, 6), 8), Wall(height: 3)));

    [Fact]
    public void Of_HeightUnknown_ReachesAnyHeight() =>
        Assert.NotNull(WallReflection.Of(new(new(0, 3), 1), new(new(12, 6), 80), Wall(height: null)));

    [Fact]
    public void Of_PointBeyondTheEnd_IsNone() =>
        Assert.Null(WallReflection.Of(new(new(14, 3), 1), new(new(30, 6), 1), Wall(height: 3)));

    [Fact]
    public void Of_OtherSideOfTheWall_IsNone() =>
        Assert.Null(WallReflection.Of(new(new(0, 3), 1), new(new(4, -6), 1), Wall(height: 3)));

    // At the façade the image is as far as the source: twice the energy, 3 dB, as a level "at the façade" has it.
    [Fact]
    public void Of_EarAtTheWall_DoublesTheEnergyInEveryBand()
    {
        WallReflection way = WallReflection.Of(new(new(0, 3), 1), new(new(4, 0), 1), Wall(height: 3))!;

        Assert.Equal(5, way.LengthMetres, 1e-9);
        Assert.All(Enumerable.Range(0, 8), band => Assert.Equal(1, way.EnergyShare(band)));
    }

    [Fact]
    public void Of_BothInThePlaneOfTheWall_IsNone() =>
        Assert.Null(WallReflection.Of(new(new(0, 0), 1), new(new(4, 0), 1), Wall(height: 3)));

    // Reciprocity of a mirror: source and ear change places and the way is the same, read backwards.
    [Fact]
    public void Of_SourceAndEarSwapped_IsTheSameWay() =>
        Scenes.Sample(
            (source, ear, wall) =>
            {
                WallReflection? there = WallReflection.Of(source, ear, wall);
                WallReflection? back = WallReflection.Of(ear, source, wall);
                Assert.Equal(there is null, back is null);
                if (there is not null && back is not null)
                {
                    Assert.Equal(there.LengthMetres, back.LengthMetres, 1e-6);
                    Assert.Equal(there.SourceLegMetres, back.ReceiverLegMetres, 1e-6);
                    Assert.Equal(there.IncidenceCosine, back.IncidenceCosine, 1e-6);
                    Assert.True(there.Point.DistanceMetres(back.Point) < 1e-6);
                }
            }
        );

    [Fact]
    public void Of_AnyScene_IsFiniteAndNoShorterThanTheStraightLine() =>
        Scenes.Sample(
            (source, ear, wall) =>
            {
                if (WallReflection.Of(source, ear, wall) is { } way)
                {
                    Assert.True(way.LengthMetres >= source.DistanceMetres(ear) - 1e-9);
                    Assert.InRange(way.LeastHertz, 0, double.MaxValue);
                    Assert.InRange(way.IncidenceCosine, 0, 1);
                    Assert.All(Enumerable.Range(0, 8), b => Assert.InRange(way.EnergyShare(b), 0, 1));
                }
            }
        );

    // The way leaves the source towards the wall: the mirrored axis sees the ear as the axis sees that point.
    [Fact]
    public void Image_MirroredAxis_SeesTheEarAsTheAxisSeesTheWall() =>
        Gen.Select(Scenes, Gen.Double[0, 360])
            .Sample(
                (scene, heading) =>
                {
                    (RaisedPoint source, RaisedPoint ear, ReflectingWall wall) = scene;
                    if (WallReflection.Of(source, ear, wall) is { SourceLegMetres: > 0.01 } way)
                    {
                        (double sin, double cos) = Math.SinCos(Heading.ToRadians(heading));
                        Emitter image = way.Mirror.Image(new(source.Place, sin, cos));
                        Assert.Equal(
                            Cosine(source, sin, cos, way.Point),
                            Cosine(source with { Place = image.Place }, image.AxisX, image.AxisY, ear),
                            1e-6
                        );
                    }
                }
            );

    private static Gen<(RaisedPoint, RaisedPoint, ReflectingWall)> Scenes { get; } =
        Gen.Select(
            Raised(),
            Raised(),
            Gen.Select(Place(), Place(), Gen.Double[0.2, 8])
                .Where((a, b, _) => a.DistanceMetres(b) > 0.05)
                .Select((a, b, h) => ReflectingWall.Alone("w", a, b, h, Hard))
        );

    private static Gen<PlanPoint> Place() =>
        Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], (x, y) => new PlanPoint(x, y));

    private static Gen<RaisedPoint> Raised() => Gen.Select(Place(), Gen.Double[0, 5], (p, h) => new RaisedPoint(p, h));

    private static WallReflection Across(double ear) =>
        WallReflection.Of(new(new(0, 3), 1), new(new(12, 6), ear), Wall(height: 3))!;

    private static ReflectingWall Wall(double? height) =>
        ReflectingWall.Alone("wall", new(-5, 0), new(15, 0), height, Hard);

    private static double Cosine(RaisedPoint from, double x, double y, RaisedPoint to) =>
        (((to.Place.XMetres - from.Place.XMetres) * x) + ((to.Place.YMetres - from.Place.YMetres) * y))
        / from.DistanceMetres(to);
}
