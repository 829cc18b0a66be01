using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// The sound of a throttle state nobody measured, from measured ones: interpolated in the logarithm of the exhaust
/// speed (jet sound goes with its eighth power), or of the shaft speed where that is all there is. A state slower than
/// the slowest measured one is taken as loud as that one; a faster one than the fastest is "cannot tell".
/// </summary>
internal static class InferredStates
{
    private static readonly Func<ThrottleState, Stated?>[] Speeds =
    [
        s => s.ExhaustSpeedMetresPerSecond,
        s => s.ShaftSpeedRevolutionsPerMinute,
    ];

    /// <summary>The state itself when it is known, otherwise inferred from the others where that can be done.</summary>
    public static StateSound Fill(
        StateSound sound,
        IReadOnlyList<StateSound> all,
        Dictionary<string, ThrottleState> states
    )
    {
        if (sound.Power is not null)
        {
            return sound;
        }

        foreach (Func<ThrottleState, Stated?> speed in Speeds)
        {
            double? LogSpeed(string id) =>
                states.TryGetValue(id, out ThrottleState? state) && speed(state) is { Value: > 0 } stated
                    ? Math.Log10(stated.Value)
                    : null;
            (double Log, StateSound Sound)[] known =
            [
                .. all.Where(s => s.Power is not null && LogSpeed(s.StateId) is not null)
                    .Select(s => (LogSpeed(s.StateId)!.Value, s))
                    .OrderBy(s => s.Value),
            ];
            if (LogSpeed(sound.StateId) is { } wanted && known.Length > 0)
            {
                return At(sound, wanted, known);
            }
        }

        return sound;
    }

    private static StateSound At(StateSound sound, double wanted, (double Log, StateSound Sound)[] known)
    {
        int upper = Array.FindIndex(known, k => k.Log >= wanted);
        return upper switch
        {
            < 0 => sound,
            0 => Like(sound, known[0].Sound, StateOrigin.LowestMeasured),
            _ => Between(sound, known[upper - 1], known[upper], wanted),
        };
    }

    private static StateSound Like(StateSound sound, StateSound model, StateOrigin origin) =>
        model with
        {
            StateId = sound.StateId,
            Origin = origin,
            PeakSourceDbC = sound.PeakSourceDbC,
            PeakUncertainty = sound.PeakUncertainty,
        };

    private static StateSound Between(
        StateSound sound,
        (double Log, StateSound Sound) lower,
        (double Log, StateSound Sound) upper,
        double wanted
    )
    {
        double share = (wanted - lower.Log) / (upper.Log - lower.Log);
        var power = new InterpolatedPower(lower.Sound.Power!, upper.Sound.Power!, share);
        StateSound wider =
            LevelUncertainty.ExpandedDb(lower.Sound.Uncertainty) > LevelUncertainty.ExpandedDb(upper.Sound.Uncertainty)
                ? lower.Sound
                : upper.Sound;
        return Like(sound, wider, StateOrigin.Interpolated) with
        {
            Power = power,
            SphereMeanDb = power.SphereMeanDb(),
            TableAddsDb = Math.Max(lower.Sound.TableAddsDb, upper.Sound.TableAddsDb),
            Uncertainty = [.. wider.Uncertainty, LevelUncertainty.Interpolated],
            Spectrum = (SpectrumOrigin)Math.Max((int)lower.Sound.Spectrum!, (int)upper.Sound.Spectrum!),
            MeasurementIds = [.. lower.Sound.MeasurementIds, .. upper.Sound.MeasurementIds],
        };
    }
}
