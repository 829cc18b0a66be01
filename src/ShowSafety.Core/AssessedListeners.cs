using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Exposure.Zones;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core;

/// <summary>Takes out of an exposure what sentences about it need, and the words for its choices.</summary>
public static class AssessedListeners
{
    /// <summary>What a clause asks for.</summary>
    public static string Of(Duty duty) =>
        duty switch
        {
            Duty.InformAndOffer => ExposureWords.InformAndOffer,
            Duty.WearAndMark => ExposureWords.WearAndMark,
            Duty.NotToExceed => ExposureWords.NotToExceed,
            Duty.HearingProgramme => ExposureWords.HearingProgramme,
            _ => ExposureWords.KeepAudienceOut,
        };

    /// <summary>What a clause compares.</summary>
    public static string Of(RuleMetric metric) =>
        metric switch
        {
            RuleMetric.DailyLevel => ExposureWords.DailyLevel,
            RuleMetric.Dose => ExposureWords.Dose,
            RuleMetric.WindowLevel => ExposureWords.WindowLevel,
            RuleMetric.SteadyLevel => ExposureWords.SteadyLevel,
            RuleMetric.FastMaximumLevel => ExposureWords.FastMaximumLevel,
            _ => ExposureWords.PeakLevel,
        };

    /// <summary>Whether a zone binds people of a role, adults or children.</summary>
    public static bool Binds(Zone zone, PersonRole role, PersonPart part) =>
        (zone.Whom & (Of(role) | (part == PersonPart.Children ? Audience.Children : Audience.None))) != Audience.None;

    /// <summary>Title of a zone's part where that is a rule set, or null.</summary>
    internal static string? PartTitle(Zone zone) => RuleSetLibrary.Find(zone.Part)?.Title;

    /// <summary>The facts about one part of a group.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="words">Names of its elements.</param>
    /// <param name="group">The group.</param>
    /// <param name="person">The exposure of its adults or its children.</param>
    /// <param name="who">What the sentence begins with.</param>
    /// <param name="keptOutBy">Zones that keep them out of where they are.</param>
    internal static ListenerFacts Facts(
        Plan plan,
        Phrasebook words,
        PersonGroup group,
        PersonExposure person,
        string who,
        IReadOnlyCollection<Zone> keptOutBy
    ) =>
        new(who, Heard(plan, group, person.Hearing))
        {
            Loudest = person.HighestLevel,
            Day = person.WholeDayLevel,
            Peak = person.Peak,
            HearingZone =
                person.HighestLevel?.Planning >= SoundZones.HearingZoneDbA
                    ? Quantity.Plain(SoundZones.HearingZoneDbA, Unit.DecibelA)
                    : null,
            Ceiling = Ceiling(person),
            Protector = group.ProtectorId is { } worn
                ? new(words.Name(worn)!, person.LevelAtEar, Of(person.Fit))
                : null,
            Rules = [.. person.Rules.GroupBy(r => r.RuleSetId).Select(rule => Rule([.. rule], person.StayTimes))],
            RulesChosen = plan.RuleSets.Count > 0,
            KeptOutBy = [.. keptOutBy.Select(z => RowLabels.Of(z.Row)).Distinct()],
        };

    private static Audience Of(PersonRole role) =>
        role switch
        {
            PersonRole.Crew => Audience.Crew,
            PersonRole.Exhibitor => Audience.Exhibitors,
            PersonRole.Visitor => Audience.Visitors,
            _ => Audience.Neighbours,
        };

    private static string Of(ProtectionFit? fit) =>
        fit switch
        {
            ProtectionFit.NotEnough => "not enough",
            ProtectionFit.Usable => "usable",
            ProtectionFit.AsWanted => "as wanted",
            ProtectionFit.TooMuch => "so quiet that calls and warnings may be missed",
            _ => ExposureWords.CannotTell,
        };

    private static Hears Heard(Plan plan, PersonGroup group, HearingState hearing) =>
        hearing switch
        {
            HearingState.Known => Hears.Known,
            HearingState.NothingRuns => Hears.Nothing,
            _ when group.Area.Count < 3 && group.Place is null => Hears.NoPlace,
            _ when plan.Programme is not { Runs.Count: > 0 } => Hears.NoProgramme,
            _ => Hears.NoLevel,
        };

    private static Quantity? Ceiling(PersonExposure person)
    {
        double peak = person.Part == PersonPart.Children ? SoundZones.ChildPeakCeilingDbC : SoundZones.PeakCeilingDbC;
        return person.HighestLevel?.Planning >= SoundZones.CeilingDbA
                ? Quantity.Plain(SoundZones.CeilingDbA, Unit.DecibelA)
            : person.Peak?.Planning >= peak ? Quantity.Plain(peak, Unit.DecibelC)
            : null;
    }

    private static RuleFacts Rule(RuleVerdict[] verdicts, ValueList<StayAllowance> stays)
    {
        RuleVerdict first = verdicts[0];
        RuleVerdict[] setOff = [.. verdicts.Where(v => v.Verdict == Verdict.Exceeds)];
        return new(
            first.RuleSetId,
            RuleSetLibrary.Find(first.RuleSetId)?.Title ?? first.RuleSetId,
            first.IsComparison,
            [
                .. setOff
                    .Where(v => v.Value is not null)
                    .GroupBy(v => v.Metric)
                    .Select(metric => metric.MaxBy(v => v.Limit.Planning)!)
                    .Select(v => new LimitFacts(Of(v.Metric), v.Value!, v.Limit)),
            ],
            [.. setOff.Select(v => Of(v.Duty)).Distinct()],
            [.. verdicts.Where(v => v.Verdict == Verdict.CannotTell).Select(v => Of(v.Metric)).Distinct()],
            Shortest(verdicts, stays)
        );
    }

    private static StayFacts? Shortest(RuleVerdict[] verdicts, ValueList<StayAllowance> stays)
    {
        StayAllowance? shortest = stays
            .Where(s => s.RuleSetId == verdicts[0].RuleSetId)
            .MinBy(s => s.Time?.Planning ?? double.PositiveInfinity);
        if (shortest is null)
        {
            return null;
        }

        RuleVerdict clause = verdicts.First(v => v.ClauseId == shortest.ClauseId);
        double? window = RuleSetLibrary
            .Find(clause.RuleSetId)
            ?.Clauses.FirstOrDefault(c => c.Id == clause.ClauseId)
            ?.WindowMinutes;
        return new(Of(clause.Metric), clause.Limit, shortest.Time, window, shortest.Runs);
    }
}
