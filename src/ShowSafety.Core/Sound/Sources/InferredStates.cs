using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// The sound of a throttle state nobody measured, from measured ones: interpolated in the logarithm of the exhaust
/// speed (jet sound goes with its eighth power), or of the shaft speed where that is all there is. A state slower than
/// the slowest measured one is taken as loud as that one; a faster one than the fastest is "cannot tell".
/// </summary>
internal static class InferredStates
{
    private static readonly (bool IsShaft, Func<ThrottleState, Stated?> Of)[] Speeds =
    [
        (false, s => s.ExhaustSpeedMetresPerSecond),
        (true, s => s.ShaftSpeedRevolutionsPerMinute),
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

        foreach ((bool isShaft, Func<ThrottleState, Stated?> speed) in Speeds)
        {
            double? SpeedOf(string id) =>
                states.TryGetValue(id, out ThrottleState? state) && speed(state) is { Value: > 0 } stated
                    ? stated.Value
                    : null;
            (double Speed, StateSound Sound)[] known =
            [
                .. all.Where(s => s.Power is not null && SpeedOf(s.StateId) is not null)
                    .Select(s => (SpeedOf(s.StateId)!.Value, s))
                    .OrderBy(s => s.Value),
            ];
            if (SpeedOf(sound.StateId) is { } wanted && known.Length > 0)
            {
                return At(sound, wanted, known) with { IsByShaftSpeed = isShaft };
            }
        }

        return sound;
    }

    private static StateSound At(StateSound sound, double wanted, (double Speed, StateSound Sound)[] known)
    {
        int upper = Array.FindIndex(known, k => k.Speed >= wanted);
        return upper switch
        {
            < 0 => sound,
            0 => Like(sound, known[0].Sound, StateOrigin.LowestMeasured),
            _ => StateInterpolation.Share(known[upper - 1].Speed, known[upper].Speed, wanted) is { } share
                ? Between(sound, known[upper - 1].Sound, known[upper].Sound, share)
                : sound,
        };
    }

    private static StateSound Like(StateSound sound, StateSound model, StateOrigin origin) =>
        model with
        {
            StateId = sound.StateId,
            Origin = origin,
            Fit = null,
            PeakSourceDbC = sound.PeakSourceDbC,
            PeakUncertainty = sound.PeakUncertainty,
        };

    private static StateSound Between(StateSound sound, StateSound lower, StateSound upper, double share)
    {
        var power = new InterpolatedPower(lower.Power!, upper.Power!, share);
        StateSound wider =
            LevelUncertainty.ExpandedDb(lower.Uncertainty) > LevelUncertainty.ExpandedDb(upper.Uncertainty)
                ? lower
                : upper;
        return Like(sound, wider, StateOrigin.Interpolated) with
        {
            Power = power,
            SphereMeanDb = power.SphereMeanDb(),
            TableAddsDb = Math.Max(lower.TableAddsDb, upper.TableAddsDb),
            Uncertainty = [.. wider.Uncertainty, LevelUncertainty.Interpolated],
            Spectrum = (SpectrumOrigin)Math.Max((int)lower.Spectrum!, (int)upper.Spectrum!),
            MeasurementIds = [.. lower.MeasurementIds, .. upper.MeasurementIds],
        };
    }
}
