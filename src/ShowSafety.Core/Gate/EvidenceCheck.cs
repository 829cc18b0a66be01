using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Gate;

/// <summary>
/// What must be shown about every engine before it runs in front of people: running hours, a crack check of the
/// rotors, a proven over-speed trip, and three ten-minute runs at rated power one after the other without damage.
/// </summary>
internal static class EvidenceCheck
{
    /// <summary>Consecutive ten-minute runs at rated power asked for.</summary>
    private const int RatedRunsNeeded = 3;

    private const double HoursPerRatedRun = 10.0 / 60;

    public static IEnumerable<Finding> Findings(Plan plan)
    {
        EventDays days = EventDays.Of(plan);
        ValueList<EngineEvidence> all = plan.Gate?.EngineEvidence ?? [];
        foreach (Engine engine in plan.Engines)
        {
            var entries = all.Where(e => e.EngineId == engine.Id).ToList();
            if (entries.Count == 0)
            {
                entries.Add(new EngineEvidence { EngineId = engine.Id });
            }

            foreach (Finding finding in entries.SelectMany(e => Judge(e, days)))
            {
                yield return finding with
                {
                    Citations = [SiteSources.GateEvidence],
                };
            }
        }

        foreach (EngineEvidence stray in all.Where(e => plan.Engines.All(engine => engine.Id != e.EngineId)))
        {
            yield return new("gate.evidence-without-engine", Severity.Note)
            {
                Arguments = [FindingArgument.Of("engine", stray.EngineId)],
            };
        }
    }

    private static IEnumerable<Finding> Judge(EngineEvidence entry, EventDays days) =>
        [
            .. Missing(entry),
            .. Contradictions(entry, days),
            .. Counted("gate.overhaul-recorded", entry.EngineId, entry.Overhaul),
            .. Counted("gate.containment-recorded", entry.EngineId, entry.ContainmentTest),
        ];

    private static IEnumerable<Finding> Missing(EngineEvidence entry)
    {
        if (entry.RunningHours.NotNegative() is null)
        {
            yield return Unknown("gate.running-hours-missing", nameof(entry.RunningHours), entry);
        }

        if (entry.CrackCheckOn is null)
        {
            yield return Unknown("gate.crack-check-missing", nameof(entry.CrackCheckOn), entry);
        }

        if (entry.TripProvenOn is null)
        {
            yield return Unknown("gate.trip-proof-missing", nameof(entry.TripProvenOn), entry);
        }

        if (entry.RatedRuns is null)
        {
            yield return Unknown("gate.rated-runs-missing", nameof(entry.RatedRuns), entry);
        }
    }

    private static IEnumerable<Finding> Contradictions(EngineEvidence entry, EventDays days)
    {
        if (entry.Pedigree is Pedigree.Assumed or Pedigree.Estimated or Pedigree.Calculated)
        {
            yield return Stop("gate.evidence-assumed", nameof(entry.Pedigree), entry);
        }

        if (entry.CrackCheckOn is { } checkedOn && days.BeginBefore(checkedOn))
        {
            yield return Stop("gate.crack-check-late", nameof(entry.CrackCheckOn), entry);
        }

        if (entry.TripProvenOn is { } provenOn && days.BeginBefore(provenOn))
        {
            yield return Stop("gate.trip-proof-late", nameof(entry.TripProvenOn), entry);
        }

        if (entry.RatedRuns < RatedRunsNeeded)
        {
            yield return Stop("gate.rated-runs-few", nameof(entry.RatedRuns), entry) with
            {
                Arguments = [FindingArgument.Of("runs", entry.RatedRuns.Value)],
            };
        }

        if (entry.RunningHours.NotNegative() < entry.RatedRuns * HoursPerRatedRun * (1 - 1e-9))
        {
            yield return Stop("gate.evidence-contradicts", nameof(entry.RunningHours), entry);
        }
    }

    private static IEnumerable<Finding> Counted(string code, string engineId, string? text) =>
        string.IsNullOrWhiteSpace(text)
            ? []
            : [new(code, Severity.Note) { ElementId = engineId, Arguments = [FindingArgument.Of("reference", text)] }];

    private static Finding Unknown(string code, string member, EngineEvidence entry) =>
        CannotTell.Without(typeof(EngineEvidence), code, Severity.Stop, member, entry.EngineId);

    private static Finding Stop(string code, string member, EngineEvidence entry) =>
        new(code, Severity.Stop) { ElementId = entry.EngineId, Field = $"{nameof(EngineEvidence)}.{member}" };
}
