using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors.Bounds;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Tests.Sound.Outdoors.Screens;

public sealed class ScreeningLossTests
{
    private static readonly BandValues HardGround = BandValues.Build(_ => -3);
    private static readonly Gen<PlanPoint> Place = Gen.Select(
        Gen.Double[-40, 40],
        Gen.Double[-40, 40],
        (x, y) => new PlanPoint(x, y)
    );
    private static readonly Gen<RaisedPoint> Raised = Gen.Select(
        Place,
        Gen.Double[0, 5],
        (p, h) => new RaisedPoint(p, h)
    );
    private static readonly Gen<Obstacle> Wall = Gen.Select(
        Place.Array[2, 5],
        Gen.Bool,
        Gen.Double[0.5, 6],
        (line, ring, h) => new Obstacle("wall", [.. line], ring && line.Length > 2, h)
    );

    // An ear at a façade is in front of it, whichever way its place was rounded.
    [Fact]
    public void BandsDb_EarAtTheWall_IsNotBehindIt() =>
        Gen.Select(Gen.Double[-1e-9, 1e-9], Gen.Double[-20, 20])
            .Sample(
                (off, x) =>
                    Assert.Null(
                        ScreeningLoss.BandsDb(
                            new(new(x, 5), 1),
                            new(new(0, off), 1.6),
                            [new("w", [new(-9, 0), new(9, 0)], false, 4)],
                            HardGround
                        )
                    )
            );

    [Fact]
    public void BandsDb_NothingBetween_IsNone() =>
        Assert.Null(
            ScreeningLoss.BandsDb(
                new(new(0, 0), 1),
                new(new(10, 0), 1),
                [new("w", [new(2, 3), new(2, 9)], false, 4)],
                HardGround
            )
        );

    // Property of ISO 9613-2:1996 as used: what stands between never raises a level, and nothing is ever non-finite.
    [Fact]
    public void BandsDb_RandomWalls_NeverRaiseALevel() =>
        Gen.Select(Raised, Raised, Wall.Array[1, 3], Gen.Double[-6, 12])
            .Sample(
                (source, receiver, walls, ground) =>
                    ScreeningLoss.BandsDb(source, receiver, [.. walls], BandValues.Build(_ => ground)) is not { } loss
                    || loss.All(db => double.IsFinite(db) && db is >= 0 and <= 25.001)
            );

    [Fact]
    public void RoundSide_RandomWalls_IsNeverShorterThanTheStraightLine() =>
        Gen.Select(Raised, Raised, Wall)
            .Where((source, receiver, wall) => wall.Meets(source.Place, receiver.Place).Any())
            .Sample(
                (source, receiver, wall) =>
                    new[] { true, false }.All(left =>
                        Detours.RoundSide(source, receiver, [wall], left) is not { } way || way.ExtraMetres >= 0
                    )
            );

    // Source and receiver change places: the ways over and round are the same. A wall met more than once is barred where
    // it is met first, which is not the same place from the other end. Places at a wall, corners on the line and walls folded
    // back onto themselves are left out: there rounding decides.
    [Fact]
    public void BandsDb_SourceAndReceiverSwapped_IsTheSame() =>
        Gen.Select(Raised, Raised, Wall)
            .Where((source, receiver, wall) => wall.Meets(source.Place, receiver.Place).Count() == 1)
            .Where((source, receiver, wall) => IsClear(source.Place, receiver.Place, wall))
            .Sample(
                (source, receiver, wall) =>
                {
                    BandValues? there = ScreeningLoss.BandsDb(source, receiver, [wall], HardGround);
                    BandValues? back = ScreeningLoss.BandsDb(receiver, source, [wall], HardGround);
                    bool same = there is null
                        ? back is null
                        : back is not null && Enumerable.Range(0, 8).All(b => Math.Abs(there[b] - back[b]) < 0.01);
                    Assert.True(same, $"{string.Join(' ', wall.Line)}: {Written(there)} against {Written(back)}");
                }
            );

    private static bool IsClear(PlanPoint source, PlanPoint receiver, Obstacle wall) =>
        Enumerable
            .Range(0, wall.Line.Count)
            .All(i =>
            {
                PlanPoint corner = wall.Line[i];
                PlanPoint next = wall.Line[(i + 1) % wall.Line.Count];
                return !new Corridor(source, source, 0.01).Meets(corner, next)
                    && !new Corridor(receiver, receiver, 0.01).Meets(corner, next)
                    && !new Corridor(corner, corner, 0.01).Meets(source, receiver)
                    && !IsTouched(wall, i);
            });

    // Whether the wall comes back to one of its corners with an edge that does not begin or end there.
    private static bool IsTouched(Obstacle wall, int corner) =>
        Enumerable
            .Range(0, wall.IsRing ? wall.Line.Count : wall.Line.Count - 1)
            .Where(edge => edge != corner && (edge + 1) % wall.Line.Count != corner)
            .Any(edge =>
                new Corridor(wall.Line[corner], wall.Line[corner], 0.01).Meets(
                    wall.Line[edge],
                    wall.Line[(edge + 1) % wall.Line.Count]
                )
            );

    private static string Written(BandValues? bands) => bands is null ? "none" : string.Join(' ', bands);

    // Straight wall from y = -2 to y = 3 half way between source and receiver 8 m apart: √(4² + 3²) + √(4² + 3²) = 10 m on
    // the left, 2·√(4² + 2²) on the right. Derived.
    [Fact]
    public void RoundSide_StraightWall_GoesRoundItsEnds()
    {
        var source = new RaisedPoint(new(0, 0), 1);
        var receiver = new RaisedPoint(new(8, 0), 1);
        Obstacle[] wall = [new("wall", [new(4, -2), new(4, 3)], false, 4)];

        Assert.Equal(2, Detours.RoundSide(source, receiver, wall, left: true)?.ExtraMetres ?? 0, 1e-9);
        Assert.Equal(
            (2 * Math.Sqrt(20)) - 8,
            Detours.RoundSide(source, receiver, wall, left: false)?.ExtraMetres ?? 0,
            1e-9
        );
    }

    // A bench in a stall of three walls, open behind: the way out leads back round the tips of the side walls.
    [Fact]
    public void RoundSide_SourceInAStall_LeadsRoundTheTips()
    {
        var source = new RaisedPoint(new(0, 0), 1);
        var receiver = new RaisedPoint(new(10, 0), 1);
        Obstacle[] stall = [new("stall", [new(-3, 2), new(2, 2), new(2, -2), new(-3, -2)], false, 3)];

        DetourPath way = Detours.RoundSide(source, receiver, stall, left: true) ?? default;

        Assert.Equal(Math.Sqrt(9 + 4), way.FirstLegMetres, 1e-9);
        Assert.Equal(5, way.BetweenMetres, 1e-9);
        Assert.Equal(Math.Sqrt(64 + 4), way.LastLegMetres, 1e-9);
    }

    // Narrower than the wavelength it is no screen in that band (ISO 9613-2:1996 clause 7.4): 1 m at 63 Hz (5.4 m).
    [Fact]
    public void BandsDb_NarrowPost_DoesNothingToLongWaves()
    {
        BandValues loss = ScreeningLoss.BandsDb(
            new(new(0, 0), 1),
            new(new(10, 0), 1),
            [new("post", [new(5, -0.5), new(5, 0.5)], false, 4)],
            HardGround
        )!;

        Assert.Equal(0, loss[0]);
        Assert.True(loss[7] > 0);
    }
}
