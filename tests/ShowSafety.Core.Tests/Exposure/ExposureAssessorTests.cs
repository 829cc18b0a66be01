using CsCheck;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Exposure;

public sealed class ExposureAssessorTests
{
    private static PersonExposure Person(ExposureAssessment assessment, string id) =>
        assessment.People.Single(p => p.GroupId == id);

    private static RuleVerdict Rule(PersonExposure person, string clause) =>
        person.Rules.Single(r => r.ClauseId == clause);

    // By hand: 120 dB(A) at 1 m is 114 dB(A) at 2 m; ten minutes of it are 114 + 10 lg(1/48) = 97.2 dB(A) over 8 h.
    [Fact]
    public void Assess_TenMinuteRun_GivesTheDailyLevelByHand()
    {
        PersonExposure crew = Person(ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound()), "crew");

        Assert.Equal(113.979, crew.HighestLevel!.Best, 3);
        Assert.Equal(97.167, crew.DailyLevel!.Best, 3);
        Assert.Equal(100.167, crew.DailyLevel.Planning, 3);
        Assert.Equal(Verdict.Exceeds, Rule(crew, "upper-action-level").Verdict);
        Assert.Equal(100.171, Rule(crew, "upper-action-level").Value!.Planning, 3);
    }

    // HML with L_C = L_A: PNR = 28 + (32 − 28)/2 = 30 dB; 113.98 − 30 + 4 = 87.98 dB(A) at the ear.
    [Fact]
    public void Assess_CrewWithMuff_GivesTheLevelAtTheEarByHand()
    {
        PersonExposure crew = Person(ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound()), "crew");

        Assert.Equal(87.979, crew.LevelAtEar!.Best, 3);
        Assert.Equal(90.979, crew.LevelAtEar.Planning, 3);
        Assert.Equal(ProtectionFit.NotEnough, crew.Fit);
        Assert.Equal(Verdict.Meets, Rule(crew, "exposure-limit").Verdict);
    }

    // By hand: 100 dB(A) at 10 m for 10 of 15 minutes is 98.24 dB(A); with U = 3 dB it is 101.24 dB(A).
    [Fact]
    public void Assess_UnprotectedVisitorsOverTheAudienceLimit_IsAStop()
    {
        ExposureAssessment assessment = ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound());

        RuleVerdict verdict = Rule(Person(assessment, "visitors"), "audience-level");
        Assert.Equal(98.245, verdict.Value!.Best, 2);
        Assert.Equal(Verdict.Exceeds, verdict.Verdict);
        Assert.Contains(
            assessment.Findings,
            f => f is { Code: "exposure.audience-limit-exceeded", Severity: Severity.Stop, ElementId: "visitors" }
        );
    }

    [Fact]
    public void Assess_VisitorsFarAway_MeetTheRule()
    {
        ExposureAssessment assessment = ExposureAssessor.Assess(SamplePlan.Plan(60), SamplePlan.Sound());

        Assert.Equal(Verdict.Meets, Rule(Person(assessment, "visitors"), "audience-level").Verdict);
        Assert.DoesNotContain(assessment.Findings, f => f.Severity == Severity.Stop);
    }

    [Fact]
    public void Assess_Child_IsHeldToTheLowerPeak()
    {
        // 120 dB(A) at 1 m is 102.5 dB(A) at 7.5 m; the double's peak is 15 dB over it, 120.5 dB(C) with U.
        Plan plan = SamplePlan.Plan(8) with
        {
            People = [SamplePlan.Visitors(7.5) with { Children = 3 }],
        };

        ExposureAssessment assessment = ExposureAssessor.Assess(plan, SamplePlan.Sound());

        Assert.Equal([PersonPart.Adults, PersonPart.Children], assessment.People.Select(p => p.Part));
        Finding finding = assessment.Findings.Single(f => f.Code == "exposure.peak-ceiling-exceeded");
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal("children", finding.Arguments[0].Text);
        Assert.Equal(120, finding.Arguments.Single(a => a.Name == "limit").Quantity!.Best);
    }

    [Fact]
    public void Assess_PeakNotMeasured_CannotTellAndIsAnAct()
    {
        FakeSound sound = WithPeak(null);

        ExposureAssessment assessment = ExposureAssessor.Assess(SamplePlan.Plan(60), sound);

        Assert.Equal(Verdict.CannotTell, Rule(Person(assessment, "crew"), "peak-limit").Verdict);
        Finding[] findings = [.. assessment.Findings.Where(f => f.Field == "SoundMeasurement.PeakDbC")];
        Assert.Equal(3, findings.Length);
        Assert.All(findings, f => Assert.True(f is { Severity: Severity.Act, CannotTell: true }));
    }

    [Fact]
    public void Assess_LevelNotMeasured_CannotTellAndIsAStop()
    {
        Plan plan = SamplePlan.Plan() with
        {
            Programme = new() { Runs = [SamplePlan.Run("r1", new(11, 0), ("unmeasured", 60))] },
        };

        ExposureAssessment assessment = ExposureAssessor.Assess(plan, SamplePlan.Sound());

        Assert.All(assessment.People, p => Assert.Equal(HearingState.CannotTell, p.Hearing));
        Assert.All(assessment.People.SelectMany(p => p.Rules), r => Assert.Equal(Verdict.CannotTell, r.Verdict));
        Assert.Contains(
            assessment.Findings,
            f => f is { Severity: Severity.Stop, CannotTell: true, Row: ZoneRow.AudienceLimit, ElementId: "visitors" }
        );
        Assert.Empty(assessment.Zones);
    }

    [Fact]
    public void Assess_UnknownRuleSet_IsAnAct()
    {
        ExposureAssessment assessment = ExposureAssessor.Assess(
            SamplePlan.Plan() with
            {
                RuleSets = ["eu-2003-10", "mars-2040"],
            },
            SamplePlan.Sound()
        );

        Finding finding = assessment.Findings.Single(f => f.Code == "exposure.rule-set-unknown");
        Assert.Equal(Severity.Act, finding.Severity);
        Assert.Equal("mars-2040", finding.Arguments[0].Text);
    }

    [Fact]
    public void Assess_VisitorsWithoutAudienceRule_AreCoveredByNone()
    {
        ExposureAssessment assessment = ExposureAssessor.Assess(
            SamplePlan.Plan() with
            {
                RuleSets = ["eu-2003-10"],
            },
            SamplePlan.Sound()
        );

        Assert.Empty(Person(assessment, "visitors").Rules);
        Assert.Contains(assessment.Findings, f => f is { Code: "exposure.covered-by-no-rule", ElementId: "visitors" });
    }

    [Fact]
    public void Assess_Volunteers_SeeTheRuleAsAComparison()
    {
        Plan plan = SamplePlan.Plan() with { People = [SamplePlan.Crew() with { LegalClass = LegalClass.Volunteer }] };

        ExposureAssessment assessment = ExposureAssessor.Assess(plan, SamplePlan.Sound());

        Assert.All(Person(assessment, "crew").Rules, rule => Assert.True(rule.IsComparison));
        Assert.Contains(assessment.Findings, f => f.Code == "exposure.rule-as-comparison");
    }

    [Fact]
    public void Assess_UnknownProtector_CountsAsNone()
    {
        Plan plan = SamplePlan.Plan() with { People = [SamplePlan.Crew() with { ProtectorId = "gone" }] };

        ExposureAssessment assessment = ExposureAssessor.Assess(plan, SamplePlan.Sound());

        Assert.Null(Person(assessment, "crew").LevelAtEar);
        Assert.Equal(Verdict.Exceeds, Rule(Person(assessment, "crew"), "exposure-limit").Verdict);
        Assert.Contains(assessment.Findings, f => f.Code == "exposure.protector-not-listed");
    }

    [Fact]
    public void Assess_ProtectorWithoutRating_CannotTellAtTheEar()
    {
        Plan plan = SamplePlan.Plan() with { Protectors = [new() { Id = "muff", Count = 1 }] };

        ExposureAssessment assessment = ExposureAssessor.Assess(plan, SamplePlan.Sound());

        Assert.Equal(Verdict.CannotTell, Rule(Person(assessment, "crew"), "exposure-limit").Verdict);
        Assert.Contains(assessment.Findings, f => f.Code == "exposure.protector-not-rated");
        Assert.Contains(assessment.Findings, f => f.Code == "exposure.protectors-too-few");
    }

    [Fact]
    public void Assess_EmptyPlan_SaysWhatIsMissingAndNothingElse()
    {
        ExposureAssessment assessment = ExposureAssessor.Assess(new Plan(), SamplePlan.Sound());

        Assert.Empty(assessment.People);
        Assert.Empty(assessment.Zones);
        Assert.Equal(["exposure.no-programme", "exposure.no-rule-set"], assessment.Findings.Select(f => f.Code));
    }

    [Fact]
    public void Assess_GroupWithoutPlace_CannotTellAndIsAStop()
    {
        Plan plan = SamplePlan.Plan() with { People = [SamplePlan.Visitors(10) with { Place = null }] };

        ExposureAssessment assessment = ExposureAssessor.Assess(plan, SamplePlan.Sound());

        Assert.Contains(
            assessment.Findings,
            f => f is { Code: "exposure.place-unknown", Severity: Severity.Stop, CannotTell: true }
        );
    }

    [Fact]
    public void Assess_NobodyThereDuringTheRuns_MeetsTheRules()
    {
        PersonGroup early = SamplePlan.Visitors(5) with { Presence = [new() { From = new(8, 0), To = new(9, 0) }] };

        ExposureAssessment assessment = ExposureAssessor.Assess(
            SamplePlan.Plan() with
            {
                People = [early],
            },
            SamplePlan.Sound()
        );

        Assert.Equal(HearingState.NothingRuns, assessment.People[0].Hearing);
        Assert.All(assessment.People[0].Rules, r => Assert.Equal(Verdict.Meets, r.Verdict));
    }

    [Fact]
    public void Assess_EmptyGroup_IsLeftOut()
    {
        Plan plan = SamplePlan.Plan() with { People = [SamplePlan.Visitors(5) with { Adults = 0 }] };

        Assert.Empty(ExposureAssessor.Assess(plan, SamplePlan.Sound()).People);
    }

    [Fact]
    public void Assess_VisitorsWithUnknownChildren_AssumesChildren()
    {
        Plan plan = SamplePlan.Plan() with { People = [SamplePlan.Visitors(30) with { Children = null }] };

        Assert.Contains(ExposureAssessor.Assess(plan, SamplePlan.Sound()).People, p => p.Part == PersonPart.Children);
    }

    [Fact]
    public void Assess_StayTimeAtTheWorstPlace_FillsTheLimit()
    {
        PersonExposure crew = Person(ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound()), "crew");
        StayAllowance upper = crew.StayTimes.Single(s => s.ClauseId == "upper-action-level");

        // 116.979 dB(A) with U; 70 dB(A) from the rest of the day, the catalogue's value.
        Assert.Equal(8 * (Math.Pow(10, 8.5) - 1e7) / Math.Pow(10, 11.6979), upper.Time!.Planning, 5);
        Assert.Equal(0, upper.Runs);
    }

    [Fact]
    public void Assess_LongerRun_NeverLowersTheExposure() =>
        Gen.Select(Gen.Double[10, 3000], Gen.Double[1, 3000])
            .Sample(
                (seconds, more) =>
                {
                    ExposureAssessment less = ExposureAssessor.Assess(SamplePlan.Plan(20, seconds), SamplePlan.Sound());
                    ExposureAssessment longer = ExposureAssessor.Assess(
                        SamplePlan.Plan(20, seconds + more),
                        SamplePlan.Sound()
                    );
                    Assert.All(
                        less.People.SelectMany(p => p.Rules).Zip(longer.People.SelectMany(p => p.Rules)),
                        pair => Assert.True(pair.First.Value!.Planning <= pair.Second.Value!.Planning + 1e-9)
                    );
                },
                iter: 30
            );

    [Fact]
    public void Assess_SplitRun_ChangesNeitherLevelNorUncertainty()
    {
        Plan split = SamplePlan.Plan() with
        {
            Programme = new() { Runs = [SamplePlan.Run("r1", new(11, 0), [.. Enumerable.Repeat(("full", 60.0), 10)])] },
        };

        PersonExposure one = Person(ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound()), "crew");
        PersonExposure ten = Person(ExposureAssessor.Assess(split, SamplePlan.Sound()), "crew");

        Assert.Equal(one.DailyLevel!.Best, ten.DailyLevel!.Best, 9);
        Assert.Equal(3, ten.DailyLevel.Planning - ten.DailyLevel.Best, 9);
    }

    [Fact]
    public void Assess_SamePlanTwice_IsEqual() =>
        Assert.Equal(
            ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound()).People,
            ExposureAssessor.Assess(SamplePlan.Plan(), SamplePlan.Sound()).People
        );

    private static FakeSound WithPeak(double? over) =>
        new()
        {
            Places = SamplePlan.Sound().Places,
            LevelAtOneMetre = SamplePlan.Sound().LevelAtOneMetre,
            PeakOverLevelDb = over,
        };
}
