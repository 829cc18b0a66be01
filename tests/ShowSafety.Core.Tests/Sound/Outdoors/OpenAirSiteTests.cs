using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Outdoors.Reflections;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Tests.Sound.Outdoors;

public sealed class OpenAirSiteTests
{
    private static readonly BandValues Air = AirAbsorption
        .BandsDecibelsPerKilometre(new(15, 60, 101.325))
        .Map(AirAbsorption.PowerCoefficientPerMetre);

    private static readonly GroundProfile HardGround = new([], 0);

    private static readonly Emitter Engine = new(new(0, 0), 0, 1);

    [Fact]
    public void Paths_OpenHardGround_IsTheFloorImageModel()
    {
        OpenAirPath only = Assert.Single(
            new OpenAirSite(HardGround, [], [], Air).Paths(Engine, 1, new(new(3, 4), 1.6))
        );

        double expected = Decibels.FromEnergy(OutdoorPath.HardGroundFactor(5, 1, 1.6, Air[5]));
        Assert.Equal(expected, Decibels.FromEnergy(only.Factors[5]), 1e-9);
        Assert.Equal(Heading.ToDegrees(Math.Acos(4 / Math.Sqrt(25.36))), only.AngleDegrees, 1e-9);
    }

    // A long high wall 5 m aside and an ear 12 m along: the image way is √(10² + 12²) = 15.62 m, so without ground or air
    // 20 lg(15.62/12) = 2.29 dB under the direct sound, together 2.01 dB over it. Derived.
    [Fact]
    public void SumDb_OneLongWall_AddsItsImage()
    {
        var porous = new GroundProfile([], 1);
        var site = new OpenAirSite(porous, [], [Wall("w", new(-5, -100), new(-5, 100), 60)], BandValues.Zero);

        ValueList<OpenAirPath> paths = site.Paths(Engine, 1, new(new(0, 12), 1));

        Assert.Equal([null, "w"], paths.Select(p => p.WallId));
        double direct = paths[0].LevelsDb(BandValues.Uniform(100))[7];
        double both = OpenAirPath.SumDb(paths, _ => BandValues.Uniform(100))[7];
        Assert.Equal(2.01, both - direct, 0.005);
    }

    // The wall throws the sound of the direction towards it, not of the direction towards the ear.
    [Fact]
    public void Paths_WallBehindTheExhaust_TakesTheDirectionTowardsTheWall()
    {
        var site = new OpenAirSite(HardGround, [], [Wall("w", new(-30, 10), new(30, 10), 20)], Air);

        ValueList<OpenAirPath> paths = site.Paths(Engine, 1, new(new(0, -10), 1));

        Assert.Equal(180, paths[0].AngleDegrees, 1e-6);
        Assert.Equal(0, paths[1].AngleDegrees, 1e-6);
    }

    // A reflection that has to pass a second wall is taken down by it; the wall that throws it back takes nothing off.
    [Fact]
    public void Paths_ObstacleInOneLeg_TakesFromTheReflection()
    {
        ReflectingWall wall = Wall("far", new(-30, 10), new(30, 10), 8);
        Obstacle itself = new("far", [new(-30, 10), new(30, 10)], false, 8);
        Obstacle between = new("near", [new(-3, 4), new(3, 4)], false, 3);

        OpenAirPath clear = new OpenAirSite(HardGround, [itself], [wall], Air).Paths(Engine, 1, Ear)[1];
        OpenAirPath barred = new OpenAirSite(HardGround, [itself, between], [wall], Air).Paths(Engine, 1, Ear)[1];

        Assert.All(clear.ScreenDb, db => Assert.Equal(0, db));
        Assert.True(barred.ScreenDb[5] > 5);
    }

    // The ground under a folded way is the ground it runs over, not what lies behind the wall.
    [Fact]
    public void Paths_SoftGroundBehindTheWall_IsNotCounted()
    {
        var soft = new GroundProfile([new([new(-50, 10), new(50, 10), new(50, 60), new(-50, 60)], 1)], 0);
        ReflectingWall wall = Wall("w", new(-30, 10), new(30, 10), 8);

        OpenAirPath way = new OpenAirSite(soft, [], [wall], Air).Paths(Engine, 1, Ear)[1];
        OpenAirPath hard = new OpenAirSite(HardGround, [], [wall], Air).Paths(Engine, 1, Ear)[1];

        Assert.All(way.Flat.GroundDb.Zip(hard.Flat.GroundDb), g => Assert.Equal(g.Second, g.First, 1e-9));
    }

    // Half soft, half hard along a folded way with a region over the whole of it: the mean by length. Derived.
    [Fact]
    public void Along_FoldedWay_MeansByLength()
    {
        var ground = new GroundProfile([new([new(-50, -50), new(0, -50), new(0, 50), new(-50, 50)], 1)], 0);

        GroundFactors factors = FoldedGround.Along(ground, new(-6, 0), new(0, 8), new(3, 4), 5, 5);

        Assert.Equal(10.0 / 15, factors.Source, 1e-9);
        Assert.Equal(10.0 / 15, factors.Receiver, 1e-9);
    }

    [Fact]
    public void SumDb_RandomSites_IsFiniteAndScreensNeverRaiseIt() =>
        Gen.Select(Raised, Raised, Structures, Pieces, Gen.Double[0, 360])
            .Sample(
                (source, ear, structures, pieces, heading) =>
                {
                    (double sin, double cos) = Math.SinCos(Heading.ToRadians(heading));
                    var engine = new Emitter(source.Place, sin, cos);
                    var ground = new GroundProfile([.. pieces], 0.3);
                    ReflectingWall[] walls = [.. structures.Select(s => s.Wall)];
                    Obstacle[] obstacles = [.. structures.Select(s => s.Obstacle)];
                    BandValues open = Level(new(ground, [], [.. walls], Air), engine, source, ear);
                    BandValues screened = Level(new(ground, [.. obstacles], [.. walls], Air), engine, source, ear);
                    Assert.All(open, l => Assert.InRange(l, -200, 200));
                    Assert.All(screened, l => Assert.InRange(l, -200, 200));
                    Assert.All(open.Zip(screened), l => Assert.True(l.Second <= l.First + 1e-9));
                },
                iter: 2000
            );

    // Source and ear change places over even ground with one wall: every term is the same.
    [Fact]
    public void SumDb_SwappedOverEvenGround_IsTheSame() =>
        Gen.Select(Raised, Raised, Structures.Select(s => s[0].Wall), Gen.Double[0, 1])
            .Where((a, b, _, _) => a.DistanceMetres(b) > 0.2)
            .Sample(
                (a, b, wall, factor) =>
                {
                    var site = new OpenAirSite(new([], factor), [], [wall], Air);
                    BandValues there = Level(site, new(a.Place, 0, 1), a, b);
                    BandValues back = Level(site, new(b.Place, 0, 1), b, a);
                    Assert.All(there.Zip(back), l => Assert.Equal(l.First, l.Second, 1e-6));
                },
                iter: 2000
            );

    private static RaisedPoint Ear => new(new(2, -6), 1.6);

    private static Gen<PlanPoint> Place { get; } =
        Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], (x, y) => new PlanPoint(x, y));

    private static Gen<RaisedPoint> Raised { get; } =
        Gen.Select(Place, Gen.Double[0, 5], (p, h) => new RaisedPoint(p, h));

    private static Gen<(ReflectingWall Wall, Obstacle Obstacle)[]> Structures { get; } =
        Gen.Select(Place, Place, Gen.Double[0.5, 8])
            .Where((a, b, _) => a.DistanceMetres(b) > 0.1)
            .Select((a, b, h) => (Wall("w", a, b, h), new Obstacle("w", [a, b], false, h)))
            .Array[1, 3];

    private static Gen<GroundPiece[]> Pieces { get; } =
        Gen.Select(Place.Array[3, 5], Gen.Double[0, 1]).Select((ring, g) => new GroundPiece([.. ring], g)).Array[0, 3];

    private static BandValues Level(OpenAirSite site, Emitter engine, RaisedPoint source, RaisedPoint ear) =>
        OpenAirPath.SumDb(site.Paths(engine, source.HeightMetres, ear), _ => BandValues.Uniform(100));

    private static ReflectingWall Wall(string id, PlanPoint from, PlanPoint to, double height) =>
        ReflectingWall.Alone(id, from, to, height, BandValues.Uniform(1));
}
