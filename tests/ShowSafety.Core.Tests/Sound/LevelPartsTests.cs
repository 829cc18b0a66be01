using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound;

public sealed class LevelPartsTests
{
    private static readonly Structure Wall = new()
    {
        Id = "w",
        Kind = StructureKind.Wall,
        Line = [new(8, -15), new(8, 15)],
        HeightMetres = Stated(3),
        MassKilogramsPerSquareMetre = Stated(200),
    };

    private static SoundField Field(Enclosure? enclosure, params Structure[] structures)
    {
        Plan plan = Single(Reading(), Reading("m2") with { AngleDegrees = 30 });
        return SoundField.Build(
            plan with
            {
                Site = plan.Site with
                {
                    Enclosure = enclosure,
                    Structures = [.. structures],
                    Ground = GroundKind.Grass,
                },
            }
        );
    }

    [Fact]
    public void PartsAt_AnyPlace_AddUpToTheLevel() =>
        Gen.Select(
                Gen.OneOf(Gen.Const(Field(null, Wall)), Gen.Const(Field(Hall(), Wall)), Gen.Const(Field(Tent()))),
                Gen.Double[-40, 40],
                Gen.Double[-40, 40],
                Gen.Double[0.5, 2.5]
            )
            .Sample(
                (field, x, y, ear) =>
                {
                    ValueList<LevelPart> parts = field.PartsAt(new(x, y), ear, At(Full))!;
                    PointLevel level = field.LevelAt(new(x, y), ear, At(Full))!;
                    Assert.Equal(level.LevelDbA, Decibels.Sum(parts.Select(p => p.LevelDbA)), 1e-6);
                    Assert.Equal(parts.OrderByDescending(p => p.LevelDbA), parts);
                    Assert.All(parts, AddsUp);
                },
                iter: 300
            );

    [Fact]
    public void PartsAt_BehindAWall_SayWhatItTakesOff()
    {
        LevelPart behind = Assert.Single(Field(null, Wall).PartsAt(new(12, 0), 1.2, At(Full))!);
        LevelPart open = Assert.Single(Field(null).PartsAt(new(12, 0), 1.2, At(Full))!);

        Assert.InRange(behind.Terms!.ScreenDb, 5, 25);
        Assert.Equal(0, open.Terms!.ScreenDb, 1e-9);
        Assert.Equal(open.LevelDbA - behind.LevelDbA, behind.Terms.ScreenDb, 1e-6);
    }

    [Fact]
    public void PartsAt_BeforeAWall_NameIt()
    {
        ValueList<LevelPart> parts = Field(null, Wall).PartsAt(new(4, 3), 1.2, At(Full))!;

        Assert.Equal([LevelPartKind.Straight, LevelPartKind.Wall], parts.Select(p => p.Kind));
        Assert.Equal("w", parts[1].StructureId);
    }

    [Fact]
    public void PartsAt_UnknownState_CannotTell() => Assert.Null(Field(null).PartsAt(new(4, 3), 1.2, At("none")));

    private static void AddsUp(LevelPart part)
    {
        if (part.Terms is { } t)
        {
            double left = t.PowerDbA - t.SpreadDb - t.AirDb - t.GroundDb - t.ScreenDb - t.WallDb;
            Assert.Equal(part.LevelDbA, left, 1e-6);
        }
    }
}
