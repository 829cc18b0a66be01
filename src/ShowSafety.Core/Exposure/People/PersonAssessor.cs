using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.People;

/// <summary>Exposure of the adults or the children of a group at the worst place of their area.</summary>
public static class PersonAssessor
{
    /// <summary>Assesses one part of a group.</summary>
    public static PersonExposure Assess(PersonContext context, PersonGroup group, PersonPart part)
    {
        StayPattern stay = StayPattern.During(context.Timeline, group.Presence);
        double otherDbA = group.OtherExposureDbA.Or<PersonGroup>(nameof(PersonGroup.OtherExposureDbA)).Value;
        ValueList<HeardLevels>? ears = Ears(context, group, part, stay);
        var rules = new RuleJudge(context, group, part, stay, otherDbA);
        if (ears is null || context.Timeline.Combinations.Count == 0)
        {
            return new(group.Id, part, HearingState.CannotTell) { Rules = rules.Judge(null, null) };
        }

        if (stay.Heard.Count == 0)
        {
            return new(group.Id, part, HearingState.NothingRuns) { Rules = rules.Judge(ears, null) };
        }

        return Known(context, new(group.Id, part, HearingState.Known), stay, ears, rules, otherDbA);
    }

    private static PersonExposure Known(
        PersonContext context,
        PersonExposure person,
        StayPattern stay,
        ValueList<HeardLevels> ears,
        RuleJudge rules,
        double otherDbA
    )
    {
        HeardLevels worst = ears.MaxBy(ear => (Daily(ear.PlanningDbA), ear.PlanningDbA[ear.Loudest]))!;
        Quantity? peak = PeakLevels.Highest(context, stay, ears);
        Quantity daily = Of(worst, Daily, "daily-exposure-level", "iso-1999-2013");
        DateOnly?[] dates = [.. context.Timeline.Days.Select(day => day.Date)];
        (Quantity? atEar, ProtectionFit? fit) = rules.AtEar(worst);
        return person with
        {
            WorstPlace = worst.Place,
            EarHeightMetres = worst.EarHeightMetres,
            HighestLevel = Highest(ears),
            DailyLevel = daily,
            WholeDayLevel = Of(
                worst,
                levels => RuleMetrics.DailyDbA(stay, levels, otherDbA),
                "daily-exposure-level",
                "iso-1999-2013"
            ),
            WeeklyLevel = Of(
                worst,
                levels => RuleMetrics.WeeklyDbA(stay, dates, levels, otherDbA),
                "weekly-exposure-level",
                "iso-1999-2013"
            ),
            SoundExposure = Exposure(daily),
            Peak = peak,
            LevelAtEar = atEar,
            Fit = fit,
            Rules = rules.Judge(ears, peak),
            StayTimes = StayAllowances.Of(context, rules, worst),
        };

        double Daily(ValueList<double> levels) => RuleMetrics.DailyDbA(stay, levels, Decibels.SilenceDb);
    }

    /// <summary>Levels at every ear that may be somebody's of a group; null when any can't be told.</summary>
    internal static ValueList<HeardLevels>? Ears(
        PersonContext context,
        PersonGroup group,
        PersonPart part,
        StayPattern stay
    )
    {
        ValueList<double> heights = ListeningPlaces.EarHeights(group, part);
        ValueList<StateCombination> combinations = context.Timeline.Combinations;
        HeardLevels?[] ears =
        [
            .. ListeningPlaces
                .Of(group, context.EnginePlaces)
                .SelectMany(place =>
                    heights.Select(height => HeardLevels.At(place, height, combinations, stay.Heard, context.Sound))
                ),
        ];
        return ears.Length == 0 || ears.Any(ear => ear is null) ? null : [.. ears.OfType<HeardLevels>()];
    }

    private static Quantity Highest(ValueList<HeardLevels> ears)
    {
        HeardLevels loudest = ears.MaxBy(ear => ear.PlanningDbA[ear.Loudest])!;
        return Of(loudest, levels => levels[loudest.Loudest], null, "iso-9612-2009-tasks");
    }

    private static Quantity Of(HeardLevels ear, Func<ValueList<double>, double> metric, string? sum, string citation) =>
        Quantity.CautiousHigh(metric(ear.BestDbA), metric(ear.PlanningDbA), Unit.DecibelA) with
        {
            Sum = sum,
            Citations = [citation],
        };

    private static Quantity Exposure(Quantity daily) =>
        Quantity.CautiousHigh(
            ExposureLevel.SoundExposurePascalSquaredHours(daily.Best, ExposureLevel.ReferenceHours),
            ExposureLevel.SoundExposurePascalSquaredHours(daily.Planning, ExposureLevel.ReferenceHours),
            Unit.PascalSquaredHour
        ) with
        {
            Sum = "sound-exposure",
            Citations = ["iso-1999-2013"],
        };
}
