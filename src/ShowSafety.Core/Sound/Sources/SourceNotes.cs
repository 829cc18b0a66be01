using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>Says how the sound of each state of an engine came to be known.</summary>
internal static class SourceNotes
{
    private const double WorthSayingDb = 0.5;

    /// <summary>Adds the findings of an engine's states.</summary>
    public static void Say(
        Engine engine,
        IReadOnlyList<StateSound> sounds,
        Dictionary<string, ThrottleState> states,
        SoundFindings findings
    )
    {
        foreach (SoundMeasurement reading in engine.Sheet?.Measurements ?? [])
        {
            SayReading(engine, reading, states, findings);
        }

        if (engine.Sheet?.Directivity == Directivity.DeclaredOmnidirectional)
        {
            findings.Add("sound.declared-omnidirectional", Severity.Act, engine.Id, "EngineSheet.Directivity");
        }

        foreach (StateSound sound in sounds)
        {
            SayState(engine, sound, states, findings);
            SayFit(engine, sound, states, findings);
        }

        BladeTones.Say(engine, findings);
    }

    private static void SayReading(
        Engine engine,
        SoundMeasurement reading,
        Dictionary<string, ThrottleState> states,
        SoundFindings findings
    )
    {
        bool directed = engine.Sheet?.Directivity != Directivity.DeclaredOmnidirectional;
        var say = new Lapses(engine, reading, findings);
        if (directed && reading.AngleDegrees is null)
        {
            say.About("sound.angle-unknown", Severity.Act, "SoundMeasurement.AngleDegrees");
        }

        if (!states.ContainsKey(reading.StateId))
        {
            say.About("sound.state-not-on-sheet", Severity.Note, "SoundMeasurement.StateId");
        }
    }

    private static void SayState(
        Engine engine,
        StateSound sound,
        Dictionary<string, ThrottleState> states,
        SoundFindings findings
    )
    {
        FindingArgument name = FindingArgument.Of("state", NameOf(sound.StateId, states));
        if (sound.Origin == StateOrigin.Measured && sound.TableAddsDb > WorthSayingDb)
        {
            findings.Add(
                "sound.table-adds",
                Severity.Note,
                engine.Id,
                "SoundMeasurement.AngleDegrees",
                name,
                SoundFindings.Decibels("added", sound.TableAddsDb)
            );
        }
        else if (sound.Origin is StateOrigin.Interpolated or StateOrigin.LowestMeasured)
        {
            string code = (sound.Origin, sound.IsByShaftSpeed) switch
            {
                (StateOrigin.LowestMeasured, _) => "sound.state-takes-lowest",
                (_, true) => "sound.state-interpolated-by-shaft",
                _ => "sound.state-interpolated",
            };
            findings.Add(code, Severity.Note, engine.Id, "EngineSheet.Measurements", name);
        }
    }

    private static void SayFit(
        Engine engine,
        StateSound sound,
        Dictionary<string, ThrottleState> states,
        SoundFindings findings
    )
    {
        if (sound.Fit is not { } fit)
        {
            return;
        }

        ReadingResidual farthest = fit.Residuals.MaxBy(r => Math.Abs(r.LevelDb))!;
        findings.Add(
            fit.Holds ? "sound.directivity-fitted" : "sound.directivity-not-fitted",
            Severity.Note,
            engine.Id,
            "SoundMeasurement.AngleDegrees",
            FindingArgument.Of("state", NameOf(sound.StateId, states)),
            FindingArgument.Of("measurement", farthest.MeasurementId),
            SoundFindings.Decibels("farthest", farthest.LevelDb),
            SoundFindings.Decibels("deviation", fit.StandardDb)
        );
    }

    /// <summary>Name of a state as people know it.</summary>
    public static string NameOf(string stateId, Dictionary<string, ThrottleState> states) =>
        states.TryGetValue(stateId, out ThrottleState? state) ? state.Name ?? stateId : stateId;
}
