using CsCheck;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound;

public sealed class ContourTests
{
    private static readonly Gen<SoundMeasurement> AnyReading = Gen.Select(
        Gen.Double[0, 180],
        Gen.Double[-25, 25],
        (angle, change) => Reading() with { AngleDegrees = angle, BandLevelsDb = Bands + change, BackgroundDbA = null }
    );

    private static readonly Gen<Plan> AnyPlan = Gen.Select(
        AnyReading.Array[1, 3],
        AnyReading.Array[1, 2],
        Gen.Double[-40, 40],
        Gen.Double[0, 360],
        Gen.Int[0, 3],
        (first, second, x, heading, kind) =>
        {
            Engine other = Engine(second) with { Id = "e2", Place = new(x, 7), ExhaustHeadingDegrees = heading };
            Plan plan = kind == 0 ? Single(first) : Plan(Engine(first), other);
            return kind == 2 ? plan.Within(Tent()) : plan;
        }
    );

    [Fact]
    public void ContourAt_AnyPlan_ContainsEveryPlaceAtOrAbove() =>
        Gen.Select(AnyPlan, Gen.Double[70, 115], Gen.Select(Gen.Double[0, 360], Gen.Double[-1, 2.6]).Array[300])
            .Sample(
                (plan, threshold, places) =>
                {
                    var field = SoundField.Build(plan);
                    var states = plan.Engines.ToDictionary(e => e.Id, _ => Full);

                    Geometry area = field.ContourAt(threshold, 1.6, states)!;

                    Assert.True(area.IsValid);
                    foreach (Engine engine in plan.Engines)
                    {
                        foreach ((double heading, double logMetres) in places)
                        {
                            PlanPoint place = engine.Place.Along(heading, Math.Pow(10, logMetres));
                            double level = field.LevelAt(place, 1.6, states)!.PlanningDbA;
                            Assert.True(
                                level < threshold || area.Covers(SiteGeometry.Point(place)),
                                $"{place} has {level} dB(A), outside the {threshold} dB(A) area"
                            );
                        }
                    }
                },
                iter: 60
            );

    [Fact]
    public void ContourAt_OmnidirectionalEngine_IsACircleNotMuchLarger()
    {
        Engine engine = Engine(Reading());
        engine = engine with { Sheet = engine.Sheet! with { Directivity = Directivity.DeclaredOmnidirectional } };
        var field = SoundField.Build(Plan(engine));
        double threshold = field.LevelAt(new(0, 30), 1.6, At(Full))!.PlanningDbA;

        Geometry area = field.ContourAt(threshold, 1.6, At(Full))!;

        double radius = Math.Sqrt(area.Area / Math.PI);
        Assert.InRange(radius, 30, 31.5);
    }

    [Fact]
    public void AreaAtOrAbove_NothingReachesIt_IsEmpty() =>
        Assert.True(SoundField.Build(Single(Reading())).ContourAt(300, 1.6, At(Full))!.IsEmpty);

    [Fact]
    public void AreaAtOrAbove_EverythingReachesIt_IsAValidAreaThatEnds()
    {
        Geometry area = SoundField.Build(Single(Reading())).AreaAtOrAbove([EngineId], _ => 1, 0);

        Assert.True(area.IsValid);
        Assert.True(area.Area > 1e8);
    }

    [Fact]
    public void AreaAtOrAbove_NoEngines_DoesNotFail() =>
        Assert.True(SoundField.Build(Plan()).AreaAtOrAbove([], _ => 1, 0).IsEmpty);
}
