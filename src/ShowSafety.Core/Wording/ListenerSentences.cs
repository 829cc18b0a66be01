using System.Globalization;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Says how loud it is for somebody, what to wear, how long to stay, and what the rules make of it.</summary>
internal static class ListenerSentences
{
    private const string NoRules = "no noise rules are chosen, so nothing was compared";
    private const string NotCovered = "none of the rules chosen covers them";

    // Nobody counts further, and past it a number would only look exact.
    private const int MostRunsCounted = 200;

    /// <summary>The loudest level, the exposure of the day and the peak.</summary>
    public static string Loud(ListenerFacts facts)
    {
        if (WhyNot(facts.Hears) is { } why)
        {
            return $"{facts.Who}: cannot tell how loud it is, {why}.";
        }

        if (facts.Hears == Hears.Nothing)
        {
            return $"{facts.Who}: {ExposureWords.NothingRuns}, so nothing is heard.";
        }

        string peak = facts.Peak is { } highest
            ? $"{ExposureWords.PeakLevel} {Both(highest)}"
            : $"{ExposureWords.PeakLevel}: cannot tell, none was measured";
        return $"{facts.Who}: loudest {Told(facts.Loudest)}; L_EX,8h of the whole day {Told(facts.Day)}; {peak}.";
    }

    /// <summary>What to wear by the rules chosen, or that nothing is asked, or that it can't be told.</summary>
    public static string Wear(ListenerFacts facts)
    {
        if (WhyNot(facts.Hears) is { } why)
        {
            return $"Cannot tell what to wear: {why}.";
        }

        if (facts.Hears == Hears.Nothing)
        {
            return $"Nothing is asked: {ExposureWords.NothingRuns}.";
        }

        string zone = facts.HearingZone is { } level
            ? $"Hearing protection on while an engine runs: the hearing zone begins at {ValueFormat.Best(level)}. "
            : "";
        return zone + Rules(facts) + Protector(facts);
    }

    /// <summary>How long to stay at the loudest place and level.</summary>
    public static string Stay(ListenerFacts facts) =>
        facts.KeptOutBy.Count == 0
            ? ForTheEars(facts)
            : $"No stay while it applies: kept out by {string.Join(", ", facts.KeptOutBy)}. "
                + $"For the ears alone: {ForTheEars(facts)}";

    /// <summary>What one rule set makes of it.</summary>
    public static string Of(RuleFacts rule)
    {
        string unknown =
            rule.Unknown.Count == 0
                ? ""
                : $"{ExposureWords.CannotTell} about the {string.Join(" and the ", rule.Unknown)}";
        string[] parts =
        [
            .. rule.SetOff.Select(s =>
                $"{s.Metric} {ValueFormat.Planning(s.Value)} against {ValueFormat.Best(s.Limit)}"
            ),
            .. rule.Duties,
            .. unknown.Length == 0 ? (string[])[] : [unknown],
        ];
        return $"{Title(rule)}: {(parts.Length == 0 ? ExposureWords.Meets : string.Join("; ", parts))}.";
    }

    private static string? WhyNot(Hears hears) =>
        hears switch
        {
            Hears.NoPlace => "nobody says where they are",
            Hears.NoProgramme => "the plan has no runs",
            Hears.NoLevel => "a usable sound measurement is missing for a throttle state they would hear",
            _ => null,
        };

    private static string Rules(ListenerFacts facts)
    {
        if (facts.Rules.Count == 0)
        {
            return $"Cannot tell what rules ask: {(facts.RulesChosen ? NotCovered : NoRules)}.";
        }

        string[] asked = [.. facts.Rules.Where(r => r.Duties.Count + r.Unknown.Count > 0).Select(Of)];
        return asked.Length > 0 ? string.Join(" ", asked)
            : facts.HearingZone is null ? "Nothing is asked by the rules chosen."
            : "Nothing more is asked by the rules chosen.";
    }

    private static string Protector(ListenerFacts facts) =>
        facts.Protector switch
        {
            { AtEar: { } atEar } worn => $" Under {worn.Name}: {ValueFormat.Planning(atEar)} at the ear, {worn.Fit}.",
            { } worn => $" Under {worn.Name}: cannot tell what is left at the ear, its ratings are missing.",
            null => facts.HearingZone is null ? "" : " No protector is chosen for them.",
        };

    private static string ForTheEars(ListenerFacts facts)
    {
        if (WhyNot(facts.Hears) is { } why)
        {
            return $"Cannot tell how long they may stay: {why}.";
        }

        if (facts.Hears == Hears.Nothing)
        {
            return $"No time is counted: {ExposureWords.NothingRuns}.";
        }

        if (facts.Ceiling is { } ceiling)
        {
            return $"No stay without a hearing protector: the ceiling of {ValueFormat.Best(ceiling)} is reached.";
        }

        StayFacts[] stays = [.. facts.Rules.Select(r => r.Stay).OfType<StayFacts>()];
        return stays.Length > 0
            ? string.Join(" ", facts.Rules.Where(r => r.Stay is not null).Select(r => Time(r, r.Stay!)))
            : $"Cannot tell how long they may stay: {WithoutTime(facts)}.";
    }

    private static string WithoutTime(ListenerFacts facts) =>
        facts.Rules.Count > 0 ? "the rules chosen have no time in them"
        : facts.RulesChosen ? NotCovered
        : NoRules;

    // Without a protector, at the loudest level: that is what the times are worked out for.
    private static string Time(RuleFacts rule, StayFacts stay)
    {
        string span = stay.WindowMinutes is { } minutes
            ? string.Create(CultureInfo.InvariantCulture, $"any {minutes:0.##}\u00A0min")
            : "a day";
        string limit = $"{ValueFormat.Best(stay.Limit)} ({stay.Metric})";
        string runs = stay.Runs switch
        {
            null => "",
            0 => "; the loudest run alone is more than a day allows",
            1 => "; the loudest run fits once into a day",
            > MostRunsCounted => string.Create(
                CultureInfo.InvariantCulture,
                $"; the loudest run fits more than {MostRunsCounted} times into a day"
            ),
            { } count => string.Create(
                CultureInfo.InvariantCulture,
                $"; the loudest run fits {count} times into a day"
            ),
        };
        string time = stay.Time switch
        {
            null => $"no stay in {span} reaches {limit}",
            { Planning: <= 0 } => $"no time is left in {span} before {limit}",
            { } hours => $"{Duration(hours)} in {span} without a hearing protector reach {limit}",
        };
        return $"{Title(rule)}: {time}{runs}.";
    }

    private static string Duration(Quantity hours)
    {
        (double perHour, Unit unit) = hours.Planning switch
        {
            < 2.0 / 60 => (3600, Unit.Second),
            < 2 => (60, Unit.Minute),
            _ => (1, Unit.Hour),
        };
        return ValueFormat.Planning(Quantity.CautiousLow(hours.Best * perHour, hours.Planning * perHour, unit));
    }

    private static string Title(RuleFacts rule) =>
        rule.IsComparison ? $"{rule.Title} ({ExposureWords.Comparison})" : rule.Title;

    private static string Told(Quantity? value) => value is null ? ExposureWords.CannotTell : Both(value);

    private static string Both(Quantity value) =>
        $"{ValueFormat.Best(value)} at best estimate, {ValueFormat.Planning(value)} to plan with";
}
