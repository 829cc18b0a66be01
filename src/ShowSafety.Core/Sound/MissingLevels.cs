using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Says for which states no level or no peak can be told. A state the programme uses and nobody measured is a stop; one
/// that isn't used is to be closed only if it is going to be.
/// </summary>
internal static class MissingLevels
{
    private const double EstimateMetres = 10;

    /// <summary>The findings, engine by engine.</summary>
    public static IEnumerable<Finding> Of(Plan plan, SoundField field) =>
        plan.Engines.DistinctBy(e => e.Id).SelectMany(engine => Of(plan, engine, field));

    private static IEnumerable<Finding> Of(Plan plan, Engine engine, SoundField field)
    {
        EngineSound sound = field.Engines.First(e => e.Id == engine.Id);
        string[] run =
        [
            .. plan.Programme?.Runs.Where(r => r.EngineId == engine.Id)
                .SelectMany(r => r.Steps)
                .Select(s => s.StateId)
                .Distinct()
                ?? [],
        ];
        string[] all = [.. sound.States.Select(s => s.StateId).Concat(run).Distinct()];
        if (all.Length == 0)
        {
            yield return Missing("sound.engine-cannot-tell", engine.Id, Severity.Stop, engine.Name ?? engine.Id);
        }

        foreach (string id in all)
        {
            Severity severity = run.Length == 0 || run.Contains(id) ? Severity.Stop : Severity.Note;
            string name = engine.Sheet?.States.FirstOrDefault(s => s.Id == id)?.Name ?? id;
            StateSound? state = sound.State(id);
            if (state?.Power is null)
            {
                yield return Missing("sound.level-cannot-tell", engine.Id, severity, name);
            }

            if (state?.PeakSourceDbC is null)
            {
                yield return NoPeak(engine.Id, severity == Severity.Stop ? Severity.Act : Severity.Note, name);
                if (state?.Power is { } power)
                {
                    yield return PeakEstimated(engine.Id, name, Estimate(field, sound, state, power));
                }
            }
        }
    }

    private static Finding Missing(string code, string engineId, Severity severity, string name) =>
        new(code, severity)
        {
            ElementId = engineId,
            Field = "EngineSheet.Measurements",
            CannotTell = true,
            Row = ZoneRow.AudienceLimit,
            Arguments = [FindingArgument.Of("state", name)],
        };

    private static Finding NoPeak(string engineId, Severity severity, string name) =>
        new("sound.peak-not-measured", severity)
        {
            ElementId = engineId,
            Field = "SoundMeasurement.PeakDbC",
            CannotTell = true,
            Row = ZoneRow.SoundCeiling,
            Arguments = [FindingArgument.Of("state", name)],
        };

    private static Quantity Estimate(SoundField field, EngineSound engine, StateSound state, DirectionalPower power)
    {
        BandValues path = field.OpenPathDb(EstimateMetres, engine.HeightMetres, Ears.StandingMetres);
        double best = PeakEstimate.DbC(power, path);
        double expanded = LevelUncertainty.ExpandedDb(field.UncertaintyOf(engine.Id, state));
        return Quantity.CautiousHigh(best, best + expanded, Unit.DecibelC) with { Pedigree = Pedigree.Assumed };
    }

    private static Finding PeakEstimated(string engineId, string name, Quantity estimate) =>
        new("sound.peak-estimated", Severity.Note)
        {
            ElementId = engineId,
            Field = "SoundMeasurement.PeakDbC",
            Arguments =
            [
                FindingArgument.Of("state", name),
                FindingArgument.Of("estimate", estimate),
                SoundFindings.Metres("distance", EstimateMetres),
            ],
        };
}
