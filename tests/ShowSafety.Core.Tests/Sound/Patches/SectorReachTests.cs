using CsCheck;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Tests.Sound.Patches;

public sealed class SectorReachTests
{
    // A point source with some places that are louder or quieter than it says: walls, beams, edges of a tent.
    private sealed record Course(double SourceDb, double AirDbPerMetre, (double From, double To, double Db)[] Steps)
    {
        public static Gen<Course> Any { get; } =
            Gen.Select(
                Gen.Double[-20, 110],
                Gen.Double[0, 0.05],
                Gen.Select(
                    Gen.Double[-0.5, 3.5],
                    Gen.Double[0.001, 1],
                    Gen.Double[-40, 40],
                    (from, length, db) => (Math.Pow(10, from), Math.Pow(10, from + length), db)
                ).Array[0, 4],
                (source, air, steps) => new Course(source, air, steps)
            );

        public double At(double metres) =>
            SourceDb
            - (20 * Math.Log10(metres))
            - (AirDbPerMetre * metres)
            + Steps.Where(s => s.From <= metres && metres <= s.To).Sum(s => s.Db);

        // No place between two distances is louder: the source from the near end, every gain, no loss that ends within.
        public double Most(double near, double far) =>
            SourceDb
            - (20 * Math.Log10(Math.Max(near, 1e-3)))
            - (AirDbPerMetre * near)
            + Steps.Where(s => s.Db > 0 ? s.From <= far && near <= s.To : s.From <= near && far <= s.To).Sum(s => s.Db);
    }

    [Fact]
    public void Farthest_WhateverTheGuess_LeavesNoLouderPlaceBeyond() =>
        Gen.Select(Course.Any, Gen.Double[-1, 5], Gen.Double[0, 1].Array[50])
            .Sample(
                (course, guess, places) =>
                {
                    double reach = new SectorReach().Farthest(course.Most, Math.Pow(10, guess));
                    double from = Math.Max(reach, SectorReach.FirstMetres);
                    foreach (double place in places.Concat(Edges(course, from)))
                    {
                        double metres = from * Math.Pow(SectorReach.LargestMetres / from, place);
                        Assert.True(metres <= reach || course.At(metres) < 0 || metres <= from);
                    }
                },
                iter: 3000
            );

    // 20 lg r alone: the reach is where the formula says, at most a few thousandths beyond.
    [Fact]
    public void Farthest_OfAPointSource_IsTheFormulasToAFewThousandths() =>
        Gen.Select(Gen.Double[0, 80], Gen.Double[-1, 5])
            .Sample(
                (source, guess) =>
                {
                    double truth = Math.Pow(10, source / 20);
                    double reach = new SectorReach().Farthest(new Course(source, 0, []).Most, Math.Pow(10, guess));
                    Assert.InRange(reach, truth * (1 - 1e-9), truth * 1.004);
                },
                iter: 1000
            );

    [Fact]
    public void Farthest_AfterOtherSectors_IsStillOutside() =>
        Course
            .Any.Array[2, 6]
            .Sample(
                courses =>
                {
                    var search = new SectorReach();
                    double last = 1;
                    foreach (Course course in courses)
                    {
                        last = search.Farthest(course.Most, last);
                        double from = Math.Max(last, SectorReach.FirstMetres);
                        Assert.DoesNotContain(
                            Edges(course, from),
                            place =>
                                place > 0 && course.At(from * Math.Pow(SectorReach.LargestMetres / from, place)) >= 0
                        );
                    }
                },
                iter: 1000
            );

    [Fact]
    public void Farthest_OfSilence_IsZero() =>
        Assert.Equal(0, new SectorReach().Farthest((_, _) => double.NegativeInfinity, 10));

    // Where a step begins and ends is where a search by samples would miss it.
    private static IEnumerable<double> Edges(Course course, double from) =>
        course
            .Steps.SelectMany(s => new[] { s.From * (1 + 1e-12), s.To * (1 - 1e-12) })
            .Where(metres => metres > from && metres < SectorReach.LargestMetres)
            .Select(metres => Math.Log(metres / from) / Math.Log(SectorReach.LargestMetres / from));
}
