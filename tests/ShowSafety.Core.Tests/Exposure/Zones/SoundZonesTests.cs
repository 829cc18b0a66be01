using CsCheck;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Exposure.Zones;

public sealed class SoundZonesTests
{
    private static Zone? Zone(ExposureAssessment assessment, ZoneRow row, string part = "") =>
        assessment.Zones.SingleOrDefault(z => z.Row == row && z.Part == part);

    // By hand: 120 dB(A) at 1 m and U = 3 dB: 85 dB(A) at 10^(38/20) = 79.4 m, 115 dB(A) at 10^(8/20) = 2.51 m.
    [Fact]
    public void Of_OneEngine_ReachesWhatThePointSourceGives()
    {
        ExposureAssessment assessment = ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound());

        Assert.Equal(79.43, Zone(assessment, ZoneRow.HearingZone)!.Reach!.Best, 0.1);
        Assert.Equal(2.512, Zone(assessment, ZoneRow.SoundCeiling, "level")!.Reach!.Best, 0.01);
    }

    [Fact]
    public void Of_HearingZone_RequiresOfEveryone()
    {
        Zone zone = Zone(ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound()), ZoneRow.HearingZone)!;

        Assert.Equal(ZoneEffect.Requires, zone.Effect);
        Assert.Equal(Audience.Everyone, zone.Whom);
        Assert.Equal(Phases.Start | Phases.Running, zone.When);
        Assert.Equal("e1", zone.ElementId);
    }

    // 10 of 15 minutes: 100 dB(A) in the window are 101.76 dB(A) while running, at 10^(21.24/20) = 11.53 m.
    [Fact]
    public void Of_AudienceLimit_FollowsTheProgramme()
    {
        Zone zone = Zone(
            ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound()),
            ZoneRow.AudienceLimit,
            "who-venues-2022"
        )!;

        Assert.Equal(11.53, zone.Reach!.Best, 0.03);
        Assert.Equal(ZoneEffect.Excludes, zone.Effect);
        Assert.Equal(Audience.Visitors | Audience.Children, zone.Whom);
    }

    // PNR 30 dB less the 4 dB allowance: 111 dB(A) with U is 85 at the ear, at 10^(12/20) = 3.98 m.
    [Fact]
    public void Of_AtTheEar_EndsWhereTheBestProtectorIsEnough()
    {
        Zone zone = Zone(ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound()), ZoneRow.AtTheEar)!;

        Assert.Equal(3.981, zone.Reach!.Best, 0.02);
        Assert.Equal(Audience.Crew | Audience.Exhibitors, zone.Whom);
    }

    [Fact]
    public void Of_Peaks_ChildrensZoneHoldsTheAdults()
    {
        ExposureAssessment assessment = ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound(130));
        Zone adults = Zone(assessment, ZoneRow.SoundCeiling, "peak")!;
        Zone children = Zone(assessment, ZoneRow.SoundCeiling, "child-peak")!;

        Assert.True(children.Area.Contains(adults.Area));
        Assert.Equal(Audience.Children, children.Whom);
    }

    [Fact]
    public void Of_LouderEngine_HearingZoneGrows() =>
        Gen.Select(Gen.Double[95, 130], Gen.Double[0.1, 10])
            .Sample(
                (level, more) =>
                    Assert.True(
                        Zone(
                            ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound(level + more)),
                            ZoneRow.HearingZone
                        )!
                            .Area.Contains(
                                Zone(
                                    ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound(level)),
                                    ZoneRow.HearingZone
                                )!.Area
                            )
                    ),
                iter: 20
            );

    [Fact]
    public void Of_NoProgramme_DrawsTheLoudestStateAndNoAudienceLimit()
    {
        Plan plan = SamplePlan.Plan() with { Programme = null };

        ExposureAssessment assessment = ExposureAssessor.Assess(plan, SamplePlan.Sound());

        Assert.Equal(79.43, Zone(assessment, ZoneRow.HearingZone)!.Reach!.Best, 0.1);
        Assert.DoesNotContain(assessment.Zones, z => z.Row == ZoneRow.AudienceLimit);
        Assert.Contains(
            assessment.Findings,
            f => f is { Code: "exposure.no-programme", CannotTell: true, Severity: Severity.Stop }
        );
    }

    [Fact]
    public void Of_EngineWithoutStates_CannotTell()
    {
        Plan plan = SamplePlan.Plan() with { Programme = null, Engines = [new() { Id = "e1" }] };

        ExposureAssessment assessment = ExposureAssessor.Assess(plan, SamplePlan.Sound());

        Assert.Empty(assessment.Zones);
        Assert.Contains(
            assessment.Findings,
            f => f is { Code: "exposure.level-unknown", Severity: Severity.Stop, CannotTell: true }
        );
    }

    [Fact]
    public void Of_QuietEngine_HasNoZones() =>
        Assert.Empty(ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound(40)).Zones);
}
