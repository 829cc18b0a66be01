using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.Programme;

/// <summary>
/// Lays the runs of a plan on the clock. A run without a day happens on every day of the event; a run on a day the
/// event does not have adds that day, so that its sound is not lost. A run past midnight belongs to the day it starts.
/// </summary>
public static class TimelineBuilder
{
    /// <summary>The time line of a plan; days without runs have no stretches.</summary>
    public static Timeline Build(Plan plan)
    {
        ValueList<Run> runs = plan.Programme?.Runs ?? [];
        var known = plan.Engines.Select(engine => engine.Id).ToHashSet();
        var combinations = new List<StateCombination>();
        var findings = new List<Finding>(RunFindings(plan, runs));
        var days = new List<ProgrammeDay>();
        foreach (DateOnly? date in Dates(plan, runs))
        {
            Run[] ofTheDay = [.. runs.Where(run => run.Day is null || run.Day == date)];
            TimedStep[] steps = [.. ofTheDay.SelectMany(Steps)];
            days.Add(new(date, Stretches(steps, known, combinations)));
            findings.AddRange(Overlaps(steps));
        }

        return new([.. combinations], [.. days], [.. findings.Distinct()]);
    }

    /// <summary>The steps of a run on the clock; steps without a length are left out.</summary>
    public static IEnumerable<TimedStep> Steps(Run run)
    {
        double at = run.StartsAt.ToTimeSpan().TotalSeconds;
        foreach (ThrottleStep step in run.Steps)
        {
            if (step.Seconds > 0 && double.IsFinite(step.Seconds))
            {
                yield return new(run.Id, run.EngineId, step.StateId, new(at, at + step.Seconds));
                at += step.Seconds;
            }
        }
    }

    private static IEnumerable<DateOnly?> Dates(Plan plan, ValueList<Run> runs)
    {
        DateOnly[] dates =
        [
            .. (plan.Event?.Days ?? []).Concat(runs.Select(r => r.Day).OfType<DateOnly>()).Distinct().Order(),
        ];
        return dates.Length == 0 ? [null] : dates.Select(date => (DateOnly?)date);
    }

    private static ValueList<RunningStretch> Stretches(
        TimedStep[] steps,
        HashSet<string> known,
        List<StateCombination> combinations
    )
    {
        double[] breaks = [.. steps.SelectMany(s => new[] { s.Time.FromSeconds, s.Time.ToSeconds }).Distinct().Order()];
        var stretches = new List<RunningStretch>();
        for (int i = 0; i + 1 < breaks.Length; i++)
        {
            TimedStep[] running =
            [
                .. steps.Where(s => s.Time.FromSeconds <= breaks[i] && s.Time.ToSeconds > breaks[i]),
            ];
            if (running.Length > 0)
            {
                stretches.Add(new(new(breaks[i], breaks[i + 1]), IndexOf(Combine(running, known), combinations)));
            }
        }

        return [.. stretches];
    }

    private static StateCombination Combine(TimedStep[] running, HashSet<string> known)
    {
        IGrouping<string, string>[] states =
        [
            .. running.Select(s => (s.EngineId, s.StateId)).Distinct().GroupBy(s => s.EngineId, s => s.StateId),
        ];
        bool isContradictory = states.Any(s => s.Skip(1).Any() || !known.Contains(s.Key));
        return new(states.Select(s => KeyValuePair.Create(s.Key, s.First())), isContradictory);
    }

    private static int IndexOf(StateCombination combination, List<StateCombination> combinations)
    {
        int index = combinations.IndexOf(combination);
        if (index < 0)
        {
            index = combinations.Count;
            combinations.Add(combination);
        }

        return index;
    }

    private static IEnumerable<Finding> RunFindings(Plan plan, ValueList<Run> runs)
    {
        if (!runs.SelectMany(Steps).Any())
        {
            // With an engine and an audience, the audience limit is what can't be told: that is a stop.
            bool hasAudience = plan.Engines.Count > 0 && plan.People.Any(g => g.Role == PersonRole.Visitor);
            yield return new("exposure.no-programme", hasAudience ? Severity.Stop : Severity.Act)
            {
                CannotTell = true,
                Field = "Programme.Runs",
                Row = ZoneRow.AudienceLimit,
            };
        }

        foreach (Run run in runs)
        {
            if (plan.Engines.All(engine => engine.Id != run.EngineId))
            {
                yield return new("exposure.run-of-unknown-engine", Severity.Act)
                {
                    ElementId = run.Id,
                    CannotTell = true,
                    Field = "Run.EngineId",
                    Arguments = [FindingArgument.Of("engine", run.EngineId)],
                };
            }

            if (run.Day is { } day && plan.Event is { Days.Count: > 0 } show && !show.Days.Contains(day))
            {
                yield return new("exposure.run-outside-event", Severity.Act) { ElementId = run.Id, Field = "Run.Day" };
            }
        }
    }

    private static IEnumerable<Finding> Overlaps(TimedStep[] steps) =>
        from first in steps
        from second in steps
        where string.CompareOrdinal(first.RunId, second.RunId) < 0
        where first.EngineId == second.EngineId && first.StateId != second.StateId
        where first.Time.SecondsWithin(second.Time.FromSeconds, second.Time.ToSeconds) > 0
        select new Finding("exposure.runs-contradict", Severity.Act)
        {
            ElementId = second.RunId,
            CannotTell = true,
            Field = "Run.StartsAt",
            Arguments = [FindingArgument.Of("other", first.RunId)],
        };
}
