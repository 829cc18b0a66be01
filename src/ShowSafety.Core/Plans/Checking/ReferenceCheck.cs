using ShowSafety.Core.Measures;
using static ShowSafety.Core.Plans.CheckFinding;

namespace ShowSafety.Core.Plans;

/// <summary>Ids: each element has its own, and what names one names something that is there.</summary>
internal static class ReferenceCheck
{
    public static IEnumerable<Finding> Findings(Plan plan) =>
        [
            .. Nothing(plan),
            .. UsedTwice(plan),
            .. Engines(plan),
            .. States(plan),
            .. Protectors(plan),
            .. Acceptances(plan),
        ];

    private static IEnumerable<Finding> Nothing(Plan plan) =>
        plan.Engines.Count > 0
            ? []
            :
            [
                new("plan.no-engine", Severity.Stop)
                {
                    CannotTell = true,
                    Field = $"{nameof(Plan)}.{nameof(Plan.Engines)}",
                },
            ];

    // Ids inside a sheet (states, rotors, readings) are the engine's own; those of elements on the plan are shared,
    // because findings and acceptances name them without saying which list they mean. A post where somebody who is on
    // the plan anyway stops the engine may well carry that group's id.
    private static IEnumerable<Finding> UsedTwice(Plan plan) =>
        ElementIds(plan)
            .Where(id => id.Length > 0)
            .GroupBy(id => id, StringComparer.Ordinal)
            .Where(same => same.Count() > 1)
            .Select(same => Act("plan.id-used-twice", same.Key, Text("id", same.Key)));

    private static IEnumerable<string> ElementIds(Plan plan) =>
        [
            .. plan.Site.Enclosure is { } enclosure ? [enclosure.Id] : (string[])[],
            .. plan.Site.GroundPatches.Select(e => e.Id),
            .. plan.Site.Structures.Select(e => e.Id),
            .. plan.Site.Exits.Select(e => e.Id),
            .. plan.Site.Burnables.Select(e => e.Id),
            .. plan.Site.Stands.Select(e => e.Id),
            .. plan.Engines.Select(e => e.Id),
            .. plan.People.Select(e => e.Id),
            .. plan.DebrisScreens.Select(e => e.Id),
            .. plan.Viewing?.WheelchairPlaces.Select(e => e.Id) ?? [],
            .. plan.Viewing?.StewardPosts.Select(e => e.Id) ?? [],
            .. plan.Supplies?.Fuel.Select(e => e.Id) ?? [],
            .. plan.Supplies?.Gas.Select(e => e.Id) ?? [],
            .. plan.Supplies?.Batteries.Select(e => e.Id) ?? [],
            .. plan.Supplies?.Extinguishers.Select(e => e.Id) ?? [],
        ];

    private static IEnumerable<Finding> Engines(Plan plan)
    {
        HashSet<string> engines = [.. plan.Engines.Select(e => e.Id)];
        return
        [
            .. Runs(plan)
                .Where(run => !engines.Contains(run.EngineId))
                .Select(run => Act("plan.unknown-engine", run.Id, Text("run", run.Id), Text("engine", run.EngineId))),
            .. (plan.Gate?.EngineEvidence ?? [])
                .GroupBy(e => e.EngineId, StringComparer.Ordinal)
                .Where(same => same.Count() > 1)
                .Select(same => Act("plan.evidence-twice", same.Key, Text("engine", same.Key))),
        ];
    }

    private static IEnumerable<Finding> States(Plan plan)
    {
        foreach (Engine engine in plan.Engines)
        {
            HashSet<string> states = [.. engine.Sheet?.States.Select(s => s.Id) ?? []];
            foreach (Run run in Runs(plan).Where(r => r.EngineId == engine.Id))
            {
                foreach (string state in run.Steps.Select(s => s.StateId).Distinct().Where(s => !states.Contains(s)))
                {
                    yield return Act("plan.unknown-state", engine.Id, Text("run", run.Id), Text("state", state));
                }
            }

            foreach (SoundMeasurement reading in engine.Sheet?.Measurements ?? [])
            {
                if (!states.Contains(reading.StateId))
                {
                    yield return Act(
                        "plan.measurement-of-unknown-state",
                        engine.Id,
                        Text("measurement", reading.Id),
                        Text("state", reading.StateId)
                    );
                }
            }
        }
    }

    private static IEnumerable<Finding> Protectors(Plan plan) =>
        plan
            .People.Where(p => p.ProtectorId is { } id && plan.Protectors.All(known => known.Id != id))
            .Select(p => Act("plan.unknown-protector", p.Id, Text("protector", p.ProtectorId!)));

    private static IEnumerable<Finding> Acceptances(Plan plan)
    {
        HashSet<string> known =
        [
            .. ElementIds(plan),
            .. plan.Protectors.Select(p => p.Id),
            .. Runs(plan).Select(r => r.Id),
            .. plan.Engines.SelectMany(e => e.Sheet?.States ?? []).Select(s => s.Id),
            .. plan.Engines.SelectMany(e => e.Sheet?.Rotors ?? []).Select(r => r.Id),
        ];
        return (plan.Decisions?.Acceptances ?? [])
            .Where(a => a.ElementId is { } id && !known.Contains(id))
            .Select(a =>
                Note("plan.acceptance-of-unknown", null, Text("finding", a.Finding), Text("id", a.ElementId!))
            );
    }

    private static ValueList<Run> Runs(Plan plan) => plan.Programme?.Runs ?? [];
}
