using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound.Patches;

public sealed class PatchLevelsTests
{
    private const double RoundingDb = 1e-6;

    private static SoundField[] Fields { get; } =
    [SoundField.Build(Site(null)), SoundField.Build(Site(Hall())), SoundField.Build(Site(Tent()))];

    // Every place of a patch, at every ear of a range: the level there lies between the patch's bounds.
    [Fact]
    public void PlanningLevels_OverAPatch_BoundThoseOfItsPlaces() =>
        Gen.Select(
                PatchCase.Any,
                Gen.Int[0, 2].Select(i => Fields[i]),
                Gen.Double[0.8, 2],
                Gen.Double[0, 1.2],
                Gen.Double[0, 1]
            )
            .Sample(
                (c, field, lowest, range, share) =>
                {
                    var ears = new EarRange(lowest, lowest + range);
                    PointLevel there = field.LevelAt(c.Place, lowest + (share * range), At(Full))!;
                    (double mostA, double mostC) = Over(field, c.Patch, ears, Bound.Highest);
                    (double leastA, double leastC) = Over(field, c.Patch, ears, Bound.Lowest);
                    Assert.InRange(there.PlanningDbA, leastA - RoundingDb, mostA + RoundingDb);
                    Assert.InRange(
                        there.LevelDbC + there.ExpandedUncertaintyDb,
                        leastC - RoundingDb,
                        mostC + RoundingDb
                    );
                },
                iter: 5000
            );

    [Fact]
    public void HighestPeakDbC_OverAPatch_BoundsThoseOfItsPlaces() =>
        Gen.Select(
                PatchCase.Any,
                Gen.Int[0, 2].Select(i => Fields[i]),
                Gen.Double[0.8, 2],
                Gen.Double[0, 1.2],
                Gen.Double[0, 1]
            )
            .Sample(
                (c, field, lowest, range, share) =>
                {
                    double peak = field.PeakDbCAt(c.Place, lowest + (share * range), At(Full))!.Planning;
                    double most = field.HighestPeakDbC(At(Full))!(c.Patch, new(lowest, lowest + range));
                    Assert.True(peak <= most + RoundingDb);
                },
                iter: 5000
            );

    private static Plan Site(Enclosure? enclosure)
    {
        Plan plan = Single(Reading(), Reading("m2") with { AngleDegrees = 40 });
        return plan with
        {
            Site = plan.Site with
            {
                Enclosure = enclosure,
                Structures =
                [
                    new()
                    {
                        Id = "w",
                        Kind = StructureKind.Wall,
                        Line = [new(6, -20), new(9, 20)],
                    },
                    new()
                    {
                        Id = "b",
                        Kind = StructureKind.Building,
                        Line = [new(-25, 4), new(-20, 4), new(-20, 12), new(-25, 12)],
                    },
                ],
            },
        };
    }

    private static (double DbA, double DbC) Over(SoundField field, Patch patch, EarRange ears, Bound bound)
    {
        var dbA = new double[1];
        var dbC = new double[1];
        field.PlanningLevels([At(Full)])!(patch, ears, bound, dbA, dbC);
        return (dbA[0], dbC[0]);
    }
}
