using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.People;

/// <summary>How long and how often a person may stay at a place, clause by clause, without a protector.</summary>
public static class StayAllowances
{
    /// <summary>The allowances of every clause with a time in it.</summary>
    public static ValueList<StayAllowance> Of(PersonContext context, RuleJudge rules, HeardLevels worst)
    {
        LevelTime[]?[] parts =
        [
            .. (context.Plan.Programme?.Runs ?? []).Select(run => Parts(context.Sound, run, worst)),
        ];

        // A run that can't be told may be the dearest one: then no count of runs is given.
        LevelTime[][] runs = parts.Any(run => run is null) ? [] : [.. parts.OfType<LevelTime[]>()];
        return
        [
            .. rules.Applied.SelectMany(rule =>
                rule.Set.Clauses.Where(HasTime)
                    .Select(clause => new StayAllowance(
                        rule.Set.Id,
                        clause.Id,
                        Time(clause, worst, rules.OtherDbA),
                        Runs(clause, runs, rules.OtherDbA)
                    ))
            ),
        ];
    }

    /// <summary>
    /// How often the most exposing of some runs fits into what a clause leaves of a day; null when it has no such count.
    /// </summary>
    /// <param name="clause">The clause.</param>
    /// <param name="runs">Levels and times of each run, planning values.</param>
    /// <param name="otherDbA">Exposure of the rest of the day in dB(A).</param>
    public static int? Runs(
        RuleClause clause,
        IReadOnlyCollection<IReadOnlyCollection<LevelTime>> runs,
        double otherDbA
    )
    {
        double? budget = Spent(clause, [new(otherDbA, ExposureLevel.ReferenceHours)]) is { } other ? 1 - other : null;
        double dearest = runs.Select(run => Spent(clause, run) ?? 0).Append(0).Max();
        return budget is { } left && dearest > 0 ? (int)Math.Min(Math.Max(0, left) / dearest, 100_000) : null;
    }

    // Share of the clause's whole day that some levels and times use up.
    private static double? Spent(RuleClause clause, IReadOnlyCollection<LevelTime> parts) =>
        clause.Metric switch
        {
            RuleMetric.DailyLevel => Decibels.ToEnergy(ExposureLevel.DailyDbA(parts) - clause.Limit),
            RuleMetric.Dose => clause.Scale().DosePercent(parts) / clause.Limit,
            _ => null,
        };

    private static bool HasTime(RuleClause clause) =>
        clause.Metric is RuleMetric.DailyLevel or RuleMetric.Dose or RuleMetric.WindowLevel;

    private static Quantity? Time(RuleClause clause, HeardLevels worst, double otherDbA)
    {
        int loudest = worst.Loudest;
        if (StayTime.Hours(clause, worst.PlanningDbA[loudest], otherDbA) is not { } planning)
        {
            return null;
        }

        double most = clause.WindowMinutes is { } minutes ? minutes / 60 : 24;
        double best = StayTime.Hours(clause, worst.BestDbA[loudest], otherDbA) ?? most;
        return Quantity.CautiousLow(Math.Max(best, planning), planning, Unit.Hour) with { Sum = "stay-time" };
    }

    private static LevelTime[]? Parts(ISoundLevels sound, Run run, HeardLevels worst)
    {
        var parts = new List<LevelTime>();
        foreach (TimedStep step in TimelineBuilder.Steps(run))
        {
            var alone = new StateCombination([new(step.EngineId, step.StateId)]);
            PointLevel? level = sound.LevelAt(worst.Place, worst.EarHeightMetres, alone.StateByEngine);
            if (level is null)
            {
                return null;
            }

            parts.Add(new(level.PlanningDbA, step.Time.Hours));
        }

        return [.. parts];
    }
}
