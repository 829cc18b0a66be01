using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure.Programme;

/// <summary>A stretch of a day in which nothing changes at any engine.</summary>
/// <param name="Time">When.</param>
/// <param name="Combination">Index into <see cref="Timeline.Combinations"/>.</param>
public readonly record struct RunningStretch(TimeStretch Time, int Combination);

/// <summary>One step of one run as it lies on the clock.</summary>
/// <param name="RunId">Id of the run.</param>
/// <param name="EngineId">Id of the engine.</param>
/// <param name="StateId">Id of the throttle state.</param>
/// <param name="Time">When.</param>
public sealed record TimedStep(string RunId, string EngineId, string StateId, TimeStretch Time);

/// <summary>One day of the programme.</summary>
/// <param name="Date">The day, or null where the plan names none.</param>
/// <param name="Stretches">Stretches with an engine running, in order, none overlapping.</param>
public sealed record ProgrammeDay(DateOnly? Date, ValueList<RunningStretch> Stretches);

/// <summary>
/// The programme as piecewise-constant stretches, day by day: exact, since every change is an end of a step.
/// </summary>
/// <param name="Combinations">Every combination of running states that occurs, in order of first appearance.</param>
/// <param name="Days">The days in order, one at least.</param>
/// <param name="Findings">What is odd about the programme.</param>
public sealed record Timeline(
    ValueList<StateCombination> Combinations,
    ValueList<ProgrammeDay> Days,
    ValueList<Finding> Findings
);
