using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.People;

/// <summary>Judges one part of a group by every clause of the rule sets that apply to it.</summary>
public sealed class RuleJudge
{
    private readonly HearingProtector? _protector;
    private readonly StayPattern _stay;

    /// <summary>Makes the judge of a part of a group.</summary>
    /// <param name="context">Plan, sound, programme, rules.</param>
    /// <param name="group">The group.</param>
    /// <param name="part">Its adults or its children.</param>
    /// <param name="stay">When they hear what.</param>
    /// <param name="otherDbA">Exposure of the rest of their day in dB(A).</param>
    public RuleJudge(PersonContext context, PersonGroup group, PersonPart part, StayPattern stay, double otherDbA)
    {
        Applied = RuleCover.For(group, part, context.RuleSets);
        OtherDbA = otherDbA;
        _protector = context.Protector(group.ProtectorId);
        _stay = stay;
    }

    /// <summary>The rule sets that apply.</summary>
    public ValueList<AppliedRule> Applied { get; }

    /// <summary>Exposure of the rest of the day in dB(A).</summary>
    public double OtherDbA { get; }

    /// <summary>
    /// The level under the protector worn in the loudest combination, and how well it suits; nulls without a rated
    /// protector.
    /// </summary>
    public (Quantity? Level, ProtectionFit? Fit) AtEar(HeardLevels worst)
    {
        if (_protector is null || worst.UnderProtector(_protector) is not { } ear)
        {
            return (null, null);
        }

        int loudest = worst.Loudest;
        double best = ear.Best[loudest];
        double lower = best - worst.ByCombination[loudest].ExpandedUncertaintyDb;
        Quantity level = Quantity.CautiousHigh(best, ear.Planning[loudest], Unit.DecibelA) with
        {
            Sum = _protector is { HighDb: not null, MediumDb: not null, LowDb: not null }
                ? "protector-hml"
                : "protector-snr",
            Citations = ["iso-4869-2-2018", "hse-l108-2021"],
        };
        return (level, ProtectionFits.Of(lower, ear.Planning[loudest]));
    }

    /// <summary>The verdict of every clause.</summary>
    /// <param name="ears">Levels at every place tried; null when they can't be told.</param>
    /// <param name="peak">Highest peak in dB(C); null when it was not measured.</param>
    public ValueList<RuleVerdict> Judge(ValueList<HeardLevels>? ears, Quantity? peak) =>
        [.. Applied.SelectMany(rule => rule.Set.Clauses.Select(clause => Judge(rule, clause, ears, peak)))];

    private RuleVerdict Judge(AppliedRule rule, RuleClause clause, ValueList<HeardLevels>? ears, Quantity? peak)
    {
        Quantity? value = clause.Metric == RuleMetric.PeakLevel ? peak : Value(rule.Set, clause, ears);
        return new(
            rule.Set.Id,
            clause.Id,
            rule.IsComparison,
            clause.Metric,
            clause.AtTheEar,
            value,
            Quantity.Plain(clause.Limit, clause.LimitUnit()) with
            {
                Citations = [rule.Set.Source.Citation],
            },
            Of(clause, value, ears),
            clause.Duty
        );
    }

    private Verdict Of(RuleClause clause, Quantity? value, ValueList<HeardLevels>? ears)
    {
        bool isQuiet = ears is not null && _stay.Heard.Count == 0;
        if (value is null)
        {
            return isQuiet ? Verdict.Meets : Verdict.CannotTell;
        }

        if (!clause.IsTriggeredBy(value.Planning))
        {
            return Verdict.Meets;
        }

        // What is left of a peak under a protector is not modelled here.
        return clause is { Metric: RuleMetric.PeakLevel, AtTheEar: true } && _protector is not null
            ? Verdict.CannotTell
            : Verdict.Exceeds;
    }

    private Quantity? Value(RuleSet set, RuleClause clause, ValueList<HeardLevels>? ears)
    {
        Func<IReadOnlyList<double>, double>? metric = RuleMetrics.Of(clause, _stay, OtherDbA);
        if (metric is null || ears is null)
        {
            return null;
        }

        Quantity? highest = null;
        foreach (HeardLevels ear in ears)
        {
            if (LevelsFor(clause, ear) is not { } levels)
            {
                return null;
            }

            double planning = metric(levels.Planning);
            highest =
                highest is null || planning > highest.Planning
                    ? Quantity.CautiousHigh(metric(levels.Best), planning, clause.LimitUnit())
                    : highest;
        }

        return highest is null ? null : highest with { Citations = [set.Source.Citation], Sum = SumOf(clause.Metric) };
    }

    private (ValueList<double> Best, ValueList<double> Planning)? LevelsFor(RuleClause clause, HeardLevels ear) =>
        clause.AtTheEar && _protector is not null ? ear.UnderProtector(_protector) : (ear.BestDbA, ear.PlanningDbA);

    private static string? SumOf(RuleMetric metric) =>
        metric switch
        {
            RuleMetric.DailyLevel => "daily-exposure-level",
            RuleMetric.Dose => "noise-dose",
            RuleMetric.WindowLevel => "worst-window",
            _ => null,
        };
}
