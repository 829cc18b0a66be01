using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Exposure.Zones;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core;

/// <summary>
/// Says everything about single places of a plan, by the functions that assess its people: a place tapped on the sheet
/// and a group that stands there get the same answer.
/// </summary>
public sealed class AssessedPlaces
{
    private readonly SoundField _field;
    private readonly PersonContext _context;
    private readonly ValueList<Zone> _zones;
    private readonly AssessedPlaceWords _words;
    private readonly ValueList<StateCombination> _combinations;

    private AssessedPlaces(Plan plan, Assessment assessment)
    {
        _field = SoundField.Build(plan);
        Timeline timeline = TimelineBuilder.Build(plan);
        ValueList<RuleSet> rules = [.. plan.RuleSets.Distinct().Select(RuleSetLibrary.Find).OfType<RuleSet>()];
        _context = new(plan, _field, timeline, rules);
        _combinations = LoudestStates.Of(plan, timeline, _field);
        _zones = [.. assessment.Zones];
        _words = new(plan, assessment);
    }

    /// <summary>The answers for some places, in their order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="places">The places; an ear height in metres, or null for all that people have.</param>
    /// <param name="cancel">Ends the work early when nobody waits for it any more.</param>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static ValueList<AssessedPlace> Of(
        Plan plan,
        IReadOnlyList<(PlanPoint Place, double? EarHeightMetres)> places,
        CancellationToken cancel = default
    ) => Of(plan, places, null, cancel);

    /// <summary>The same with a memory of what was worked out before.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="places">The places; an ear height in metres, or null for all that people have.</param>
    /// <param name="memory">What was worked out before, or null; it saves time and changes nothing.</param>
    /// <param name="cancel">Ends the work early when nobody waits for it any more.</param>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    public static ValueList<AssessedPlace> Of(
        Plan plan,
        IReadOnlyList<(PlanPoint Place, double? EarHeightMetres)> places,
        AssessorMemory? memory,
        CancellationToken cancel = default
    )
    {
        var asked = new AssessedPlaces(plan, Assessor.WithoutCosts(plan, memory, cancel));
        return
        [
            .. places.Select(p =>
            {
                cancel.ThrowIfCancellationRequested();
                return asked.At(p.Place, p.EarHeightMetres);
            }),
        ];
    }

    private AssessedPlace At(PlanPoint place, double? earHeightMetres)
    {
        HeardLevels? heard = Heard(place, earHeightMetres);
        AssessedMoment? loudest = heard is null ? null : Moment(heard);
        Zone[] zones = [.. _zones.Where(z => z.Area.Covers(SiteGeometry.Point(place)))];
        PersonGroup visitor = Somebody(place, earHeightMetres, PersonRole.Visitor);
        PersonGroup crew = Somebody(place, earHeightMetres, PersonRole.Crew);
        PersonExposure asVisitor = PersonAssessor.Assess(_context, visitor, PersonPart.Adults);
        PersonExposure asChild = PersonAssessor.Assess(_context, visitor, PersonPart.Children);
        PersonExposure asCrew = PersonAssessor.Assess(_context, crew, PersonPart.Adults);
        AssessedWords said = _words.Of(visitor, asVisitor, "Here", zones, loudest);
        return new(place)
        {
            Loudest = loudest,
            Visitor = asVisitor,
            Child = asChild,
            Crew = asCrew,
            Protectors = heard is null ? [] : [.. _context.Plan.Protectors.Select(p => Under(p, heard))],
            Zones = [.. zones.Select(_words.Named)],
            Loud = said.Loud!,
            Stay = said.Stay!,
            Wear = said.Wear!,
            Why = said.Why!,
            ForChild = AssessedPlaceWords.Unlike(said, _words.Of(visitor, asChild, "Here", zones, loudest)),
            ForCrew = AssessedPlaceWords.Unlike(said, _words.Of(crew, asCrew, "Here", zones, loudest)),
        };
    }

    private static PersonGroup Somebody(PlanPoint place, double? ear, PersonRole role) =>
        new()
        {
            Id = "place",
            Role = role,
            Place = place,
            EarHeightMetres = ear is { } height ? new Stated { Value = height } : null,
        };

    // The loudest ear of all heights; a height that can't be told makes the place one that can't be told.
    private HeardLevels? Heard(PlanPoint place, double? earHeightMetres)
    {
        double[] heights = earHeightMetres is { } stated ? [stated] : [.. Ears.OfEverybody];
        int[] all = [.. Enumerable.Range(0, _combinations.Count)];
        HeardLevels?[] ears = [.. heights.Select(h => HeardLevels.At(place, h, _combinations, all, _context.Sound))];
        return all.Length == 0 || ears.Any(ear => ear is null)
            ? null
            : ears.OfType<HeardLevels>().MaxBy(ear => ear.PlanningDbA[ear.Loudest]);
    }

    private AssessedMoment Moment(HeardLevels heard)
    {
        PointLevel level = heard.ByCombination[heard.Loudest];
        IReadOnlyDictionary<string, string> states = _combinations[heard.Loudest].StateByEngine;
        return new(
            heard.EarHeightMetres,
            WithUncertainty(level.LevelDbA, level, Unit.DecibelA),
            WithUncertainty(level.LevelDbC, level, Unit.DecibelC),
            _context.Sound.PeakDbCAt(heard.Place, heard.EarHeightMetres, states),
            level.BandsDb,
            [
                .. states
                    .Select(s => Alone(heard, s))
                    .OfType<AssessedEngineShare>()
                    .OrderByDescending(e => e.LevelDbA.Planning)
                    .ThenBy(e => e.EngineId, StringComparer.Ordinal),
            ],
            [
                .. (_field.PartsAt(heard.Place, heard.EarHeightMetres, states) ?? []).Select(p => new AssessedSoundPart(
                    p,
                    _words.Said(p)
                )),
            ]
        );
    }

    private AssessedEngineShare? Alone(HeardLevels heard, KeyValuePair<string, string> running)
    {
        var alone = new StateCombination([running]);
        PointLevel? level = _context.Sound.LevelAt(heard.Place, heard.EarHeightMetres, alone.StateByEngine);
        return level is null
            ? null
            : new(running.Key, running.Value, WithUncertainty(level.LevelDbA, level, Unit.DecibelA));
    }

    // Under a protector another combination may be the loudest than without: bass passes more easily.
    private static AssessedProtector Under(HearingProtector protector, HeardLevels heard)
    {
        if (heard.UnderProtector(protector) is not { } ear)
        {
            return new(protector.Id, null, null);
        }

        int worst = Enumerable.Range(0, ear.Planning.Count).MaxBy(i => ear.Planning[i]);
        PointLevel level = heard.ByCombination[worst];
        double best = ear.Best[worst];
        return new(
            protector.Id,
            Quantity.CautiousHigh(best, ear.Planning[worst], Unit.DecibelA) with
            {
                Citations = ["iso-4869-2-2018"],
            },
            ProtectionFits.Of(best - level.ExpandedUncertaintyDb, ear.Planning[worst])
        );
    }

    private static Quantity WithUncertainty(double best, PointLevel level, Unit unit) =>
        Quantity.CautiousHigh(best, best + level.ExpandedUncertaintyDb, unit) with
        {
            Citations = ["iso-9613-2"],
            Sum = "outdoor-level",
        };
}
