using static ShowSafety.Core.Plans.CheckFinding;

namespace ShowSafety.Core.Plans;

/// <summary>Whether the runs can take place: one at a time for an engine, on a day of the event, before midnight.</summary>
internal static class ProgrammeCheck
{
    private const double SecondsPerDay = 24 * 3600;

    public static IEnumerable<Finding> Findings(Plan plan)
    {
        IReadOnlyList<Run> runs = plan.Programme?.Runs ?? [];
        return
        [
            .. Weather(plan),
            .. WithoutRun(plan, runs),
            .. OutsideEvent(plan, runs),
            .. runs.Where(r => EndSeconds(r) > SecondsPerDay)
                .Select(r => Act("plan.run-past-midnight", r.EngineId, Text("run", r.Id))),
            .. Overlaps(runs),
        ];
    }

    private static IEnumerable<Finding> Weather(Plan plan)
    {
        if (
            plan.Site.Weather is { LowestTemperatureCelsius: { } lowest, HighestTemperatureCelsius: { } highest }
            && lowest.Value > highest.Value
        )
        {
            yield return Act(
                "plan.weather-band-empty",
                null,
                Number("lowest", lowest, Measures.Unit.Celsius),
                Number("highest", highest, Measures.Unit.Celsius)
            );
        }
    }

    private static IEnumerable<Finding> WithoutRun(Plan plan, IReadOnlyList<Run> runs) =>
        plan
            .Engines.Where(engine => runs.All(r => r.EngineId != engine.Id))
            .Select(engine => Note("plan.engine-without-run", engine.Id) with { Field = "Programme.Runs" });

    private static IEnumerable<Finding> OutsideEvent(Plan plan, IReadOnlyList<Run> runs) =>
        plan.Event is { Days.Count: > 0 } show
            ? runs.Where(r => r.Day is { } day && !show.Days.Contains(day))
                .Select(r => Act("plan.run-outside-event", r.EngineId, Text("run", r.Id)))
            : [];

    private static IEnumerable<Finding> Overlaps(IReadOnlyList<Run> runs)
    {
        for (int i = 0; i < runs.Count; i++)
        {
            for (int j = i + 1; j < runs.Count; j++)
            {
                if (Overlap(runs[i], runs[j]))
                {
                    yield return Act(
                        "plan.runs-overlap",
                        runs[i].EngineId,
                        Text("first", runs[i].Id),
                        Text("second", runs[j].Id)
                    );
                }
            }
        }
    }

    // A run without a day takes place on every day.
    private static bool Overlap(Run a, Run b) =>
        a.EngineId == b.EngineId
        && (a.Day is null || b.Day is null || a.Day == b.Day)
        && StartSeconds(a) < EndSeconds(b)
        && StartSeconds(b) < EndSeconds(a);

    private static double StartSeconds(Run run) => run.StartsAt.ToTimeSpan().TotalSeconds;

    private static double EndSeconds(Run run) => StartSeconds(run) + run.Steps.Sum(s => s.Seconds);
}
