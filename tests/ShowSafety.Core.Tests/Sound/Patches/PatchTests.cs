using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Enclosures;
using ShowSafety.Core.Sound.Outdoors.Reflections;

namespace ShowSafety.Core.Tests.Sound.Patches;

public sealed class PatchTests
{
    private const double RoundingMetres = 1e-6;

    [Fact]
    public void DistancesMetres_OfAnyPlaceInIt_AreInTheRange() =>
        Gen.Select(PatchCase.Any, PatchCase.Point(60))
            .Sample(
                (c, from) =>
                {
                    (double least, double most) = c.Patch.DistancesMetres(from);
                    Assert.InRange(from.DistanceMetres(c.Place), least - RoundingMetres, most + RoundingMetres);
                },
                iter: 20_000
            );

    // Not only bounds but attained: some place of the patch is as near, and some as far, as the range says.
    [Fact]
    public void DistancesMetres_FromBesideAThinArc_AreThoseOfItsEnds()
    {
        var arc = new Patch(new Sector(new(0, 0), 0, 0, 60), 10, 10);

        (double least, double most) = arc.DistancesMetres(new(-10, 0));

        Assert.Equal(new PlanPoint(-10, 0).DistanceMetres(new(0, 10)), least, 1e-6);
        Assert.Equal(new PlanPoint(-10, 0).DistanceMetres(new PlanPoint(0, 0).Along(60, 10)), most, 1e-6);
    }

    [Fact]
    public void Cosines_OfAnyPlaceInIt_AreInTheRange() =>
        Gen.Select(PatchCase.Any, PatchCase.Point(60), Gen.Double[0, 360])
            .Sample(
                (c, from, heading) =>
                {
                    (double x, double y) = Math.SinCos(Heading.ToRadians(heading));
                    (double least, double most) = c.Patch.Cosines(from, x, y);
                    double away = from.DistanceMetres(c.Place);
                    double along = ((c.Place.XMetres - from.XMetres) * x) + ((c.Place.YMetres - from.YMetres) * y);
                    Assert.True(away == 0 || (least - 1e-9 <= along / away && along / away <= most + 1e-9));
                },
                iter: 20_000
            );

    [Fact]
    public void Middle_WithRadius_CoversEveryPlace() =>
        PatchCase.Any.Sample(
            c => Assert.True(c.Patch.Middle.DistanceMetres(c.Place) <= c.Patch.RadiusMetres + RoundingMetres),
            iter: 20_000
        );

    [Fact]
    public void NearestMetres_ToAFootprint_IsNotExceededByAnyPlaceInside() =>
        Gen.Select(PatchCase.Any, PatchCase.Point(40), Gen.Double[0, 360], Gen.Double[0.5, 30])
            .Sample(
                (c, corner, turn, side) =>
                {
                    var footprint = new Footprint([
                        corner,
                        corner.Along(turn, side),
                        corner.Along(turn + 40, side / 3),
                        corner.Along(turn + 90, side),
                    ]);
                    double nearest = footprint.NearestMetres(c.Patch);
                    double actual = footprint.Contains(c.Place) ? 0 : footprint.EdgeDistanceMetres(c.Place);
                    Assert.InRange(nearest, 0, actual + RoundingMetres);
                },
                iter: 20_000
            );

    [Fact]
    public void HasOnSourceSide_OfAMirror_HoldsForEveryPlaceHeard() =>
        Gen.Select(PatchCase.Any, Gen.Double[0, 360], Gen.Double[-60, 60])
            .Sample(
                (c, heading, offset) =>
                {
                    (double x, double y) = Math.SinCos(Heading.ToRadians(heading));
                    var mirror = new MirrorLine(x, y, offset);
                    Assert.True(mirror.DistanceMetres(c.Place) < 0 || mirror.HasOnSourceSide(c.Patch));
                },
                iter: 20_000
            );
}
