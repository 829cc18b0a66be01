using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Gate;

/// <summary>The highest thrust of an engine over all its throttle states, used or not: a throttle can be opened.</summary>
internal static class HighestThrust
{
    /// <summary>
    /// The highest thrust, or null where it cannot be told: no state, or a state without thrust that might be the
    /// strongest one.
    /// </summary>
    public static Stated? Of(EngineSheet? sheet)
    {
        ValueList<ThrottleState> states = sheet?.States ?? [];
        var known = states.Where(s => OfState(s) is not null).ToList();
        return states.Any(s => OfState(s) is null && !IsWeakerThanOneOf(known, s))
            ? null
            : known.Select(OfState).MaxBy(t => t!.Value);
    }

    private static bool IsWeakerThanOneOf(List<ThrottleState> known, ThrottleState state) =>
        state.ShaftSpeedRevolutionsPerMinute.Positive() is { } speed
        && known.Any(k => k.ShaftSpeedRevolutionsPerMinute.Positive() >= speed);

    // The larger of both where a sheet states the thrust and what it would follow from.
    private static Stated? OfState(ThrottleState state)
    {
        Stated? stated = state.ThrustNewtons.Positive() is null ? null : state.ThrustNewtons;
        Stated? momentum = FromMomentum(state);
        return stated is null ? momentum
            : momentum is null || stated.Value >= momentum.Value ? stated
            : momentum;
    }

    private static Stated? FromMomentum(ThrottleState state)
    {
        if (
            state.AirMassFlowKilogramsPerSecond.Positive() is not { } air
            || state.ExhaustSpeedMetresPerSecond.Positive() is not { } speed
        )
        {
            return null;
        }

        double flow = air + (state.FuelFlowKilogramsPerSecond.Positive() ?? 0);
        return new()
        {
            Value = Restraint.MomentumThrustNewtons(flow, speed),
            Pedigree = StatedNumbers.Weakest(state.AirMassFlowKilogramsPerSecond, state.ExhaustSpeedMetresPerSecond),
        };
    }
}
