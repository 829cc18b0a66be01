using ShowSafety.Core.Exposure;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core;

/// <summary>Puts what holds at a place into sentences.</summary>
/// <param name="plan">The plan.</param>
/// <param name="assessment">Its assessment.</param>
internal sealed class AssessedPlaceWords(Plan plan, Assessment assessment)
{
    private readonly Phrasebook _names = new(assessment.Names);

    // Something about these rows can't be told: a place outside their zones must not read as free of them.
    private readonly string[] _untold =
    [
        .. assessment
            .Findings.Where(f => f is { CannotTell: true, Row: not null })
            .Select(f => f.Row!.Value)
            .Distinct()
            .Order()
            .Select(RowLabels.Of),
    ];

    /// <summary>All four sentences for somebody.</summary>
    public AssessedWords Of(
        PersonGroup group,
        PersonExposure person,
        string who,
        IReadOnlyCollection<Zone> zones,
        AssessedMoment? loudest
    )
    {
        Zone[] binding = [.. zones.Where(z => AssessedListeners.Binds(z, group.Role, person.Part))];
        Zone[] keepingOut = [.. binding.Where(z => z.Effect == ZoneEffect.Excludes)];
        ListenerFacts facts = AssessedListeners.Facts(plan, _names, group, person, who, keepingOut);
        return new(
            ListenerSentences.Loud(facts),
            ListenerSentences.Stay(facts),
            ListenerSentences.Wear(facts),
            Why(binding, loudest)
        );
    }

    /// <summary>The sentences that are not the same.</summary>
    public static AssessedWords Unlike(AssessedWords visitor, AssessedWords other) =>
        new(
            other.Loud == visitor.Loud ? null : other.Loud,
            other.Stay == visitor.Stay ? null : other.Stay,
            other.Wear == visitor.Wear ? null : other.Wear,
            other.Why == visitor.Why ? null : other.Why
        );

    /// <summary>A zone with its label and sentence.</summary>
    public AssessedZone Named(Zone zone) =>
        new(
            zone.Row,
            ZoneSentences.Label(zone, AssessedListeners.PartTitle(zone)),
            zone.ElementId,
            zone.Part,
            zone.Effect,
            zone.Whom,
            zone.When,
            ZoneSentences.Of(zone, _names, AssessedListeners.PartTitle(zone))
        );

    /// <summary>Where a part of the sound comes from and what became of it on the way.</summary>
    public string Said(LevelPart part) => AssessedSoundWords.Of(part, _names);

    private string Why(Zone[] zones, AssessedMoment? loudest)
    {
        string[] inside =
        [
            .. zones
                .OrderByDescending(z => z.Effect)
                .ThenBy(z => z.Row)
                .Select(z => (Row: RowLabels.Of(z.Row), Does: Does(z.Effect)))
                .DistinctBy(z => z.Row)
                .Select(z => $"{z.Row} ({z.Does})"),
        ];
        string[] engines =
        [
            .. (loudest?.Engines ?? []).Select(e =>
                $"{_names.Name(e.EngineId)} at {_names.Name(e.StateId)}, {ValueFormat.Planning(e.LevelDbA)} to plan with"
            ),
        ];
        string[] sentences =
        [
            inside.Length == 0
                ? "It lies in no zone that was worked out."
                : $"It lies in: {string.Join("; ", inside)}.",
            _untold.Length == 0 ? "" : $"Cannot tell all about: {string.Join("; ", _untold)}.",
            engines.Length == 0
                ? "Cannot tell which engine is heard."
                : $"Heard alone at the loudest moment: {string.Join("; ", engines)}.",
        ];
        return string.Join(" ", sentences.Where(s => s.Length > 0));
    }

    private static string Does(ZoneEffect effect) =>
        effect switch
        {
            ZoneEffect.Excludes => "keeps out",
            ZoneEffect.Requires => "asks something",
            _ => "to be known",
        };
}
