using CsCheck;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Layout;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Layout;

public sealed class LayoutPropertyTests
{
    private static readonly Gen<Zone> Zones = Gen.Select(
            Gen.Double[-40, 40],
            Gen.Double[-40, 40],
            Gen.Double[0.5, 25],
            Gen.Bool
        )
        .Select(z => new Zone(
            z.Item4 ? ZoneRow.DirectFlight : ZoneRow.PublishedPractice,
            "e1",
            ZoneEffect.Excludes,
            Audience.Everyone,
            Phases.Running,
            ZoneFrame.Engine,
            SiteGeometry.CircleAround(new(z.Item1, z.Item2), z.Item3)
        ));

    private static readonly Plan Field = new()
    {
        Title = "Field",
        Site = new Site
        {
            // Concave on purpose: an L.
            Outline = [new(-50, -50), new(50, -50), new(50, 0), new(0, 0), new(0, 50), new(-50, 50)],
        },
        Engines =
        [
            new Engine
            {
                Id = "e1",
                Place = new(-20, -20),
                ExhaustHeadingDegrees = 180,
            },
        ],
        CrowdLine = new CrowdLine { Line = [new(-45, 15), new(-5, 15), new(-5, -45)] },
    };

    [Fact]
    public void Assess_AnyZones_NeverSuggestsALineThroughOne() =>
        Zones
            .List[0, 12]
            .Sample(
                zones =>
                {
                    LayoutAssessment layout = LayoutAssessor.Assess(Field, [.. zones]);
                    return layout.PublicKeepOut.IsValid
                        && (
                            layout.SuggestedLine.Count < 2
                            || Samples(layout.SuggestedLine).All(p => zones.All(z => !Inside(z.Area, p)))
                        );
                },
                iter: 200
            );

    [Fact]
    public void Assess_AnyZones_CutsThePlannedLineWithoutLosingLength() =>
        Zones
            .List[0, 12]
            .Sample(
                zones =>
                {
                    LayoutAssessment layout = LayoutAssessor.Assess(Field, [.. zones]);
                    double planned = SiteGeometry.Line(Field.CrowdLine!.Line).Length;
                    double cut = layout.PlannedLine.Sum(s => s.From.DistanceMetres(s.To));
                    return Math.Abs(planned - cut) < 0.05 * (1 + (2 * zones.Count));
                },
                iter: 200
            );

    // A line that runs into a gap between two zones and out again past the same decimetre once lost that corner.
    [Fact]
    public void Assess_NarrowGapBetweenZones_SuggestsALineRoundThemAll()
    {
        (double X, double Y, double Radius)[] circles =
        [
            (5, -19.191830197540146, 1),
            (0, 0, 8),
            (32.217068428878406, -24.842105263157883, 14.958333333333334),
            (27.80945658147815, 0, 13),
            (0, 16, 19.757575757575758),
            (0, -4.532497893931106, 22.117124394184166),
        ];
        ValueList<Zone> zones =
        [
            .. circles.Select(c => new Zone(
                ZoneRow.PublishedPractice,
                "e1",
                ZoneEffect.Excludes,
                Audience.Everyone,
                Phases.Running,
                ZoneFrame.Engine,
                SiteGeometry.CircleAround(new(c.X, c.Y), c.Radius)
            )),
        ];

        LayoutAssessment layout = LayoutAssessor.Assess(Field, zones);

        Assert.True(layout.SuggestedLine.Count > 2);
        Assert.All(Samples(layout.SuggestedLine), p => Assert.DoesNotContain(zones, z => Inside(z.Area, p)));
        Assert.All(layout.SuggestedStretches, s => Assert.True(s.MeetsRules));
    }

    private static IEnumerable<PlanPoint> Samples(ValueList<PlanPoint> line) =>
        line.Zip(line.Skip(1))
            .SelectMany(s =>
                Enumerable
                    .Range(0, 21)
                    .Select(i => new PlanPoint(
                        s.First.XMetres + (i / 20.0 * (s.Second.XMetres - s.First.XMetres)),
                        s.First.YMetres + (i / 20.0 * (s.Second.YMetres - s.First.YMetres))
                    ))
            );

    // Even-odd rule, written here on purpose: a second opinion on the geometry library's point-in-polygon.
    private static bool Inside(Geometry area, PlanPoint p)
    {
        Coordinate[] ring = area.Coordinates;
        bool inside = false;
        for (int i = 0, j = ring.Length - 1; i < ring.Length; j = i++)
        {
            if (
                ring[i].Y > p.YMetres != ring[j].Y > p.YMetres
                && p.XMetres < ((ring[j].X - ring[i].X) * (p.YMetres - ring[i].Y) / (ring[j].Y - ring[i].Y)) + ring[i].X
            )
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
