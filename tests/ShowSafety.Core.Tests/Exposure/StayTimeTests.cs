using CsCheck;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Rules;

namespace ShowSafety.Core.Tests.Exposure;

public sealed class StayTimeTests
{
    private static RuleClause Clause(string set, string clause) =>
        RuleSetLibrary.Find(set)!.Clauses.Single(c => c.Id == clause);

    [Fact]
    public void Hours_DailyLevel_ReachesTheLimitExactly() =>
        Gen.Select(Gen.Double[90, 130], Gen.Double[0, 84])
            .Sample(
                (level, other) =>
                {
                    double hours = StayTime.Hours(Clause("eu-2003-10", "upper-action-level"), level, other)!.Value;
                    Assert.Equal(85, ExposureLevel.DailyDbA(new LevelTime(level, hours), new LevelTime(other, 8)), 6);
                }
            );

    [Fact]
    public void Hours_OtherExposureAlreadyThere_IsZero() =>
        Assert.Equal(0, StayTime.Hours(Clause("eu-2003-10", "upper-action-level"), 100, 86));

    [Fact]
    public void Hours_QuietPlace_IsUnlimited() =>
        Assert.Null(StayTime.Hours(Clause("eu-2003-10", "upper-action-level"), 70, 60));

    [Fact]
    public void Hours_BelowThreshold_IsUnlimited() =>
        Assert.Null(StayTime.Hours(Clause("osha-1910-95", "permissible-dose"), 89, 70));

    // 29 CFR 1910.95 table G-16: 2 h at 100 dBA.
    [Fact]
    public void Hours_OshaHundred_IsTwo() =>
        Assert.Equal(2, StayTime.Hours(Clause("osha-1910-95", "permissible-dose"), 100, 70)!.Value, 9);

    [Fact]
    public void Hours_WindowRule_IsTheShareOfTheWindow()
    {
        double hours = StayTime.Hours(Clause("who-venues-2022", "audience-level"), 110, 0)!.Value;

        Assert.Equal(0.25 / 10, hours, 6);
        Assert.Null(StayTime.Hours(Clause("who-venues-2022", "audience-level"), 100, 0));
    }

    [Fact]
    public void Runs_TenMinutesAtHundred_FitsTwiceLessTheRest()
    {
        RuleClause clause = Clause("eu-2003-10", "upper-action-level");
        LevelTime[][] runs =
        [
            [new(100, 5.0 / 60)],
            [new(90, 1.0 / 60)],
        ];

        // 15 min 11 s at 100 dB(A) fill 85 dB(A) over eight hours: three runs of five minutes, two with 80 dB(A) besides.
        Assert.Equal(3, StayAllowances.Runs(clause, runs, 0));
        Assert.Equal(2, StayAllowances.Runs(clause, runs, 80));
        Assert.Null(StayAllowances.Runs(clause, [], 0));
    }
}
