using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exhaust;

/// <summary>What the room of exhaust says of a plan.</summary>
public sealed record ExhaustAssessment : RoomAssessment
{
    /// <summary>The strongest jet of each engine, in the order of the plan; for the loads on benches and walls.</summary>
    public ValueList<EngineJet> Jets { get; init; } = [];
}

/// <summary>The strongest jet of an engine.</summary>
/// <param name="EngineId">Id of the engine.</param>
/// <param name="StateId">Id of the throttle state with the largest thrust; null when no thrust is known.</param>
/// <param name="Thrust">
/// Largest thrust of all states in N; planning is the largest value the sheet gives for any of them. Null when no thrust
/// is known.
/// </param>
/// <param name="EveryStateKnown">Whether every state of the sheet has a thrust or is bounded by a faster state.</param>
public sealed record EngineJet(string EngineId, string? StateId, Quantity? Thrust, bool EveryStateKnown);
