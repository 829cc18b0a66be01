using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.Zones;

/// <summary>
/// The combinations zones are drawn for: those of the programme or, while there is none, every engine of the plan in
/// its loudest state at the same time, which no programme exceeds.
/// </summary>
public static class LoudestStates
{
    // Far enough from the nozzle that the field is that of a point source, near enough to be louder than any background.
    private const double ProbeMetres = 5;

    /// <summary>The combinations; empty when there is neither programme nor engine.</summary>
    public static ValueList<StateCombination> Of(Plan plan, Timeline timeline, ISoundLevels sound)
    {
        if (timeline.Combinations.Count > 0 || plan.Engines.Count == 0)
        {
            return timeline.Combinations;
        }

        return
        [
            new(
                plan.Engines.Select(engine => KeyValuePair.Create(engine.Id, Loudest(engine, sound)))
                    .DistinctBy(s => s.Key)
            ),
        ];
    }

    // A place to the side of the engine.
    private static PlanPoint Probe(Engine engine) => engine.Place.Along(engine.ExhaustHeadingDegrees + 90, ProbeMetres);

    // A state that can't be told comes first: it may be the loudest, and the answer must then be "cannot tell".
    private static string Loudest(Engine engine, ISoundLevels sound) =>
        (engine.Sheet?.States.Select(s => s.Id) ?? [])
            .Concat(engine.Sheet?.Measurements.Select(m => m.StateId) ?? [])
            .Distinct()
            .DefaultIfEmpty("")
            .MaxBy(state =>
                sound
                    .LevelAt(
                        Probe(engine),
                        Ears.StandingMetres,
                        new StateCombination([new(engine.Id, state)]).StateByEngine
                    )
                    ?.PlanningDbA
                ?? double.PositiveInfinity
            )!;
}
