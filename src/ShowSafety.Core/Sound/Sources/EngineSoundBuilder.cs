using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>Makes the sound of an engine, state by state, and says what is missing or unsure.</summary>
internal static class EngineSoundBuilder
{
    private const double UnknownHeightMetres = 1;

    /// <summary>The engine as a source of sound.</summary>
    public static EngineSound Build(Engine engine, BandValues airPerMetre, SoundFindings findings)
    {
        if (
            !double.IsFinite(engine.Place.XMetres)
            || !double.IsFinite(engine.Place.YMetres)
            || !double.IsFinite(engine.ExhaustHeadingDegrees)
        )
        {
            // An engine without a place has no sound that could be told.
            return new(engine.Id, default, 0, UnknownHeightMetres, []);
        }

        EngineSheet sheet = engine.Sheet ?? new();
        var states = sheet.States.DistinctBy(s => s.Id).ToDictionary(s => s.Id);
        var readings = sheet.Measurements.GroupBy(m => m.StateId).ToDictionary(g => g.Key, g => g.ToArray());
        string[] ids = [.. sheet.States.Select(s => s.Id).Concat(sheet.Measurements.Select(m => m.StateId)).Distinct()];
        var measured = new MeasuredStates(engine, airPerMetre, findings);
        StateSound[] sounds =
        [
            .. ids.Select(id => measured.Of(id, readings.GetValueOrDefault(id) ?? [], states.GetValueOrDefault(id))),
        ];
        StateSound[] inferred = [.. sounds.Select(s => InferredStates.Fill(s, sounds, states))];
        SourceNotes.Say(engine, inferred, states, findings);
        return new(
            engine.Id,
            engine.Place,
            engine.ExhaustHeadingDegrees,
            HeightMetres(engine, sheet, findings),
            [.. inferred]
        );
    }

    private static double HeightMetres(Engine engine, EngineSheet sheet, SoundFindings findings)
    {
        if (engine.ShaftHeightMetres is { } stated && double.IsFinite(stated.Value))
        {
            return Math.Max(0, stated.Value);
        }

        double assumed =
            sheet.Measurements.FirstOrDefault(MeasurementReduction.HasPlace)?.SourceHeightMetres ?? UnknownHeightMetres;
        findings.Add(
            "sound.shaft-height-assumed",
            Severity.Note,
            engine.Id,
            "Engine.ShaftHeightMetres",
            SoundFindings.Metres("height", assumed)
        );
        return assumed;
    }
}
