using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure;

/// <summary>How long one may stay at a constant level before a clause is reached.</summary>
public static class StayTime
{
    /// <summary>
    /// Hours in a day at a level until the clause's limit is reached, everything else of the day counted; zero when
    /// that alone reaches it; null when no stay of a day reaches it or the clause has no time in it. For a window rule:
    /// the time allowed in any one window.
    /// </summary>
    /// <param name="clause">The clause.</param>
    /// <param name="levelDbA">The level in dB(A), the planning value.</param>
    /// <param name="otherDbA">Daily exposure level of everything else, or background of windows, in dB(A).</param>
    public static double? Hours(RuleClause clause, double levelDbA, double otherDbA)
    {
        double? hours = clause.Metric switch
        {
            RuleMetric.DailyLevel => EqualEnergyHours(clause.Limit, levelDbA, otherDbA),
            RuleMetric.Dose => DoseHours(clause, levelDbA, otherDbA),
            RuleMetric.WindowLevel => WindowHours(clause, levelDbA, otherDbA),
            _ => null,
        };
        double most = clause.Metric == RuleMetric.WindowLevel ? (clause.WindowMinutes ?? 0) / 60 : 24;
        return hours < most ? hours : null;
    }

    /// <summary>8 h·[10^(limit/10) − 10^(other/10)] / 10^(L/10), not under zero.</summary>
    public static double EqualEnergyHours(double limitDbA, double levelDbA, double otherDbA) =>
        ExposureLevel.ReferenceHours
        * Math.Max(0, Decibels.ToEnergy(limitDbA) - Decibels.ToEnergy(otherDbA))
        / Decibels.ToEnergy(levelDbA);

    private static double? DoseHours(RuleClause clause, double levelDbA, double otherDbA)
    {
        DoseScale scale = clause.Scale();
        double spent = scale.DosePercent(new LevelTime(otherDbA, ExposureLevel.ReferenceHours));
        return levelDbA >= (scale.ThresholdDbA ?? double.NegativeInfinity)
            ? scale.PermittedHours(levelDbA) * Math.Max(0, clause.Limit - spent) / 100
            : null;
    }

    private static double? WindowHours(RuleClause clause, double levelDbA, double backgroundDbA)
    {
        double background = Decibels.ToEnergy(backgroundDbA);
        double over = Decibels.ToEnergy(levelDbA) - background;
        double room = Decibels.ToEnergy(clause.Limit) - background;
        return over <= 0 ? null : (clause.WindowMinutes ?? 0) / 60 * Math.Max(0, room) / over;
    }
}
