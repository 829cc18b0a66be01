using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Outdoors;

namespace ShowSafety.Core.Tests.Sound.Outdoors;

public sealed class SiteGroundTests
{
    // Hard and porous after ISO 9613-2:1996 clause 7.3.1 (read); gravel and boards are choices.
    [Theory]
    [InlineData(GroundKind.Hard, 0)]
    [InlineData(GroundKind.Boards, 0)]
    [InlineData(GroundKind.Grass, 1)]
    [InlineData(GroundKind.Gravel, 0.5)]
    [InlineData(null, 0)]
    public void FactorOf_Kind_IsHardOrPorous(GroundKind? kind, double factor) =>
        Assert.Equal(factor, SiteGround.FactorOf(kind));

    [Theory]
    [InlineData(0.3, 0.3)]
    [InlineData(7, 1)]
    [InlineData(double.NaN, 1)]
    public void FactorOf_PatchWithAFactor_TakesItWithinItsRange(double stated, double factor) =>
        Assert.Equal(
            factor,
            SiteGround.FactorOf(new GroundPatch { Kind = GroundKind.Grass, GroundFactor = SoundPlans.Stated(stated) })
        );

    [Fact]
    public void Of_Site_TakesGroundObstaclesAndWalls()
    {
        Structure heavy = new()
        {
            Id = "heavy",
            Kind = StructureKind.SoundScreen,
            Line = [new(0, 0), new(5, 0)],
            HeightMetres = SoundPlans.Stated(3),
            MassKilogramsPerSquareMetre = SoundPlans.Stated(12),
        };
        Structure light = heavy with { Id = "light", MassKilogramsPerSquareMetre = SoundPlans.Stated(9.9) };
        var site = new Site
        {
            Ground = GroundKind.Grass,
            GroundPatches = [new() { Kind = GroundKind.Hard, Outline = [new(0, 0), new(4, 0), new(4, 4)] }],
            Structures = [heavy, light],
        };

        OpenAirSite open = SiteGround.Of(site, BandValues.Zero);

        Assert.Equal(0, open.Ground.At(new(3, 1)));
        Assert.Equal(1, open.Ground.At(new(9, 9)));
        Assert.Equal(["heavy"], open.Obstacles.Select(o => o.Id));
        Assert.Equal(["heavy", "light"], open.Walls.Select(w => w.Id));
    }
}
