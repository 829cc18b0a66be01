using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure;

/// <summary>What the room of exposure gives: besides figures, zones and findings, the exposure of every group.</summary>
public sealed record ExposureAssessment : RoomAssessment
{
    /// <summary>One entry for the adults and one for the children of each group, in the plan's order.</summary>
    public ValueList<PersonExposure> People { get; init; } = [];
}

/// <summary>Adults or children of a group; children's ears are lower and their limits stricter.</summary>
public enum PersonPart
{
    /// <summary>Adults.</summary>
    Adults,

    /// <summary>Children under 16.</summary>
    Children,
}

/// <summary>
/// Exposure of the most exposed adult or child of a group. Levels are without protector unless said; a null value can't
/// be told, or nothing is heard, and <see cref="Hearing"/> says which.
/// </summary>
/// <param name="GroupId">Id of the <see cref="PersonGroup"/>.</param>
/// <param name="Part">Adults or children.</param>
/// <param name="Hearing">Whether something is heard.</param>
public sealed record PersonExposure(string GroupId, PersonPart Part, HearingState Hearing)
{
    /// <summary>The place of the highest exposure in the group's area.</summary>
    public PlanPoint? WorstPlace { get; init; }

    /// <summary>Height of the ear there, in metres.</summary>
    public double? EarHeightMetres { get; init; }

    /// <summary>Highest level of any steady stretch, dB(A).</summary>
    public Quantity? HighestLevel { get; init; }

    /// <summary>L_EX,8h of the demonstration alone on the worst day, dB(A).</summary>
    public Quantity? DailyLevel { get; init; }

    /// <summary>L_EX,8h of the worst day with everything else of the day, dB(A).</summary>
    public Quantity? WholeDayLevel { get; init; }

    /// <summary>Weekly level of the worst week, dB(A).</summary>
    public Quantity? WeeklyLevel { get; init; }

    /// <summary>Sound exposure of the demonstration on the worst day, Pa²h.</summary>
    public Quantity? SoundExposure { get; init; }

    /// <summary>Highest C-weighted peak, dB(C); null when none was measured.</summary>
    public Quantity? Peak { get; init; }

    /// <summary>Level under the protector worn while it is loudest, dB(A).</summary>
    public Quantity? LevelAtEar { get; init; }

    /// <summary>How well the protector suits, or null without a rated protector.</summary>
    public ProtectionFit? Fit { get; init; }

    /// <summary>Verdict of every clause of every rule set that covers the group or is shown to it.</summary>
    public ValueList<RuleVerdict> Rules { get; init; } = [];

    /// <summary>How long and how often one may stay at the worst place at the highest level, per clause.</summary>
    public ValueList<StayAllowance> StayTimes { get; init; } = [];
}

/// <summary>Whether the sound at a group can be told.</summary>
public enum HearingState
{
    /// <summary>Levels are known.</summary>
    Known,

    /// <summary>Nobody is there while an engine runs.</summary>
    NothingRuns,

    /// <summary>Place, programme or level is missing.</summary>
    CannotTell,
}

/// <summary>What a clause says about a person.</summary>
public enum Verdict
{
    /// <summary>Meets the rule chosen.</summary>
    Meets,

    /// <summary>Sets the clause's duty off.</summary>
    Exceeds,

    /// <summary>Something needed is missing.</summary>
    CannotTell,
}

/// <summary>Verdict of one clause.</summary>
/// <param name="RuleSetId">Id of the rule set.</param>
/// <param name="ClauseId">Id of the clause.</param>
/// <param name="IsComparison">
/// Whether the rule set does not cover the person and is shown as a comparison chosen by this project.
/// </param>
/// <param name="Metric">What is compared.</param>
/// <param name="AtTheEar">Whether the protector worn counts.</param>
/// <param name="Value">The value, or null when it can't be told.</param>
/// <param name="Limit">With what it is compared.</param>
/// <param name="Verdict">The verdict; it uses the planning value.</param>
/// <param name="Duty">What must be done when the clause is set off.</param>
public sealed record RuleVerdict(
    string RuleSetId,
    string ClauseId,
    bool IsComparison,
    RuleMetric Metric,
    bool AtTheEar,
    Quantity? Value,
    Quantity Limit,
    Verdict Verdict,
    Duty Duty
);

/// <summary>How long and how often one may stay.</summary>
/// <param name="RuleSetId">Id of the rule set.</param>
/// <param name="ClauseId">Id of the clause.</param>
/// <param name="Time">
/// Time in hours at the highest level, in a day or, for a window rule, in any window; null where no stay reaches the
/// limit.
/// </param>
/// <param name="Runs">
/// How many times the most exposing run fits into what the day leaves; null for window rules and where no run counts.
/// </param>
public sealed record StayAllowance(string RuleSetId, string ClauseId, Quantity? Time, int? Runs);
