using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure;

/// <summary>
/// The metric of a rule's clause from a stay and one level per combination of states. Uncertainty enters by putting U
/// on every level before the call: the errors of levels predicted from one source by one model are common, so all
/// levels move together and U is neither shrunk by splitting a task nor counted twice.
/// </summary>
public static class RuleMetrics
{
    /// <summary>
    /// The function from levels to the clause's metric, prepared once for many places; null for metrics that do not
    /// come from mean levels (peaks and fast maxima).
    /// </summary>
    /// <param name="clause">The clause.</param>
    /// <param name="stay">Who hears what for how long.</param>
    /// <param name="otherDbA">
    /// Daily exposure level of everything else in dB(A); also the background that fills windows.
    /// </param>
    /// <returns>The largest value of any day for levels in dB(A) indexed by combination.</returns>
    public static Func<IReadOnlyList<double>, double>? Of(RuleClause clause, StayPattern stay, double otherDbA) =>
        clause.Metric switch
        {
            RuleMetric.DailyLevel => levels => DailyDbA(stay, levels, otherDbA),
            RuleMetric.Dose => levels => DosePercent(clause.Scale(), stay, levels, otherDbA),
            RuleMetric.WindowLevel => Window(clause, stay, otherDbA),
            RuleMetric.SteadyLevel => levels => stay.Heard.Select(c => levels[c]).Append(otherDbA).Max(),
            _ => null,
        };

    /// <summary>L_EX,8h of the worst day in dB(A), everything else included.</summary>
    public static double DailyDbA(StayPattern stay, IReadOnlyList<double> levels, double otherDbA) =>
        stay
            .HoursByDay.Select(hours => Decibels.Sum(ExposureLevel.DailyDbA(Parts(hours, levels)), otherDbA))
            .Append(otherDbA)
            .Max();

    /// <summary>
    /// Weekly level in dB(A): the worst seven days in a row of the event; working days without the event have the
    /// exposure of everything else.
    /// </summary>
    /// <param name="stay">Who hears what for how long.</param>
    /// <param name="dates">Date of each day of the stay, or null.</param>
    /// <param name="levels">Levels in dB(A) by combination.</param>
    /// <param name="otherDbA">Daily exposure level of everything else in dB(A).</param>
    public static double WeeklyDbA(
        StayPattern stay,
        IReadOnlyList<DateOnly?> dates,
        IReadOnlyList<double> levels,
        double otherDbA
    )
    {
        double[] daily =
        [
            .. stay.HoursByDay.Select(h => Decibels.Sum(ExposureLevel.DailyDbA(Parts(h, levels)), otherDbA)),
        ];
        int[] firstOfWeek = [.. dates.Select(d => d?.DayNumber ?? 0)];
        return firstOfWeek
            .Select(first => daily.Where((_, i) => firstOfWeek[i] >= first && firstOfWeek[i] < first + 7).Take(7))
            .Select(week => FilledWeek([.. week], otherDbA))
            .Append(ExposureLevel.WeeklyDbA([.. Enumerable.Repeat(otherDbA, 5)]))
            .Max();
    }

    /// <summary>Dose of the worst day in per cent; everything else counts as eight hours at its level.</summary>
    public static double DosePercent(DoseScale scale, StayPattern stay, IReadOnlyList<double> levels, double otherDbA)
    {
        double other = scale.DosePercent(new LevelTime(otherDbA, ExposureLevel.ReferenceHours));
        return other + stay.HoursByDay.Select(h => scale.DosePercent(Parts(h, levels))).Append(0).Max();
    }

    private static double FilledWeek(double[] daily, double otherDbA)
    {
        int free = Math.Max(0, (int)ExposureLevel.WorkingDays - daily.Length);
        return ExposureLevel.WeeklyDbA([.. daily, .. Enumerable.Repeat(otherDbA, free)]);
    }

    private static Func<IReadOnlyList<double>, double> Window(RuleClause clause, StayPattern stay, double backgroundDbA)
    {
        ValueList<ValueList<double>> windows = stay.WindowShares(
            clause.WindowMinutes ?? ExposureLevel.ReferenceHours * 60,
            clause.Window ?? WindowKind.Sliding
        );
        double background = Decibels.ToEnergy(backgroundDbA);
        double[][] weights = [.. windows.Select(shares => shares.ToArray())];
        double[] rest = [.. weights.Select(shares => Math.Max(0, 1 - shares.Sum()) * background)];
        return levels =>
        {
            var energies = new double[levels.Count];
            for (int i = 0; i < energies.Length; i++)
            {
                energies[i] = Decibels.ToEnergy(levels[i]);
            }

            double worst = background;
            for (int window = 0; window < weights.Length; window++)
            {
                worst = Math.Max(worst, Weighted(weights[window], energies) + rest[window]);
            }

            return Decibels.FromEnergy(worst);
        };
    }

    private static double Weighted(double[] weights, double[] energies)
    {
        double sum = 0;
        for (int i = 0; i < energies.Length; i++)
        {
            sum += weights[i] * energies[i];
        }

        return sum;
    }

    private static IEnumerable<LevelTime> Parts(ValueList<double> hours, IReadOnlyList<double> levels) =>
        hours.Select((h, c) => new LevelTime(levels[c], h)).Where(part => part.Hours > 0);
}
