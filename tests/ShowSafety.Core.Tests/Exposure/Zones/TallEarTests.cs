using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Zones;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Exposure.Zones;

public sealed class TallEarTests
{
    // Shaft level with a tall adult's ear: close by, that ear hears more than those of children and of others standing.
    [Fact]
    public void Ceiling_BesideAHighBench_HoldsEveryPlaceTooLoudForAnyEar()
    {
        double tall = Ears.TallMetres;
        Plan plan = Plan(Engine(Reading() with { BandLevelsDb = Bands - 6 }) with { ShaftHeightMetres = Stated(tall) });
        var field = SoundField.Build(plan);

        Zone ceiling = ExposureAssessor
            .Assess(plan, field)
            .Zones.Single(z => z is { Row: ZoneRow.SoundCeiling, Part: "level" });

        int forTheTallAlone = 0;
        foreach (PlanPoint place in Places(plan.Engines[0].Place))
        {
            bool isTooLoud = IsTooLoud(place, tall);
            Assert.True(!isTooLoud || ceiling.Area.Covers(SiteGeometry.Point(place)), $"{place} is left out.");
            bool others = IsTooLoud(place, Ears.ChildMetres) || IsTooLoud(place, Ears.StandingMetres);
            forTheTallAlone += isTooLoud && !others ? 1 : 0;
        }

        Assert.NotEqual(0, forTheTallAlone);

        bool IsTooLoud(PlanPoint place, double ear) =>
            field.LevelAt(place, ear, At(Full))!.PlanningDbA >= SoundZones.CeilingDbA;
    }

    private static IEnumerable<PlanPoint> Places(PlanPoint engine) =>
        from heading in Enumerable.Range(0, 24)
        from step in Enumerable.Range(0, 300)
        select engine.Along(heading * 15, 0.3 * Math.Pow(1.01, step));
}
