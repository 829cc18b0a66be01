using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>What is known of the sound at somebody, as far as sentences need it.</summary>
/// <param name="Who">Who it is, a phrase that begins a sentence: "Visitors on the left (children)".</param>
/// <param name="Hears">Whether anything can be told.</param>
internal sealed record ListenerFacts(string Who, Hears Hears)
{
    /// <summary>Highest level while running in dB(A), or null.</summary>
    public Quantity? Loudest { get; init; }

    /// <summary>Exposure of the whole day in dB(A), or null.</summary>
    public Quantity? Day { get; init; }

    /// <summary>Highest peak in dB(C), or null when none was measured.</summary>
    public Quantity? Peak { get; init; }

    /// <summary>The level from where a hearing protector is worn whatever the stay, when it is reached; else null.</summary>
    public Quantity? HearingZone { get; init; }

    /// <summary>The ceiling for an ear without protector, when level or peak reaches it; else null.</summary>
    public Quantity? Ceiling { get; init; }

    /// <summary>The protector chosen and what it does, or null when none is chosen.</summary>
    public ProtectorFacts? Protector { get; init; }

    /// <summary>What each rule set that applies says, in the order chosen.</summary>
    public ValueList<RuleFacts> Rules { get; init; } = [];

    /// <summary>Whether any rule set is chosen at all.</summary>
    public bool RulesChosen { get; init; }

    /// <summary>Labels of zones that keep them out of where they are.</summary>
    public ValueList<string> KeptOutBy { get; init; } = [];
}

/// <summary>Whether the sound at somebody can be told.</summary>
internal enum Hears
{
    /// <summary>Levels are known.</summary>
    Known,

    /// <summary>Nobody is there while an engine runs.</summary>
    Nothing,

    /// <summary>Nobody says where they are.</summary>
    NoPlace,

    /// <summary>Nobody says when an engine runs.</summary>
    NoProgramme,

    /// <summary>A level is missing.</summary>
    NoLevel,
}

/// <summary>A hearing protector somebody wears.</summary>
/// <param name="Name">Its name.</param>
/// <param name="AtEar">What it leaves in dB(A), or null without ratings.</param>
/// <param name="Fit">How well it suits, a phrase; empty while that can't be told.</param>
internal sealed record ProtectorFacts(string Name, Quantity? AtEar, string Fit);

/// <summary>What a rule set says of somebody.</summary>
/// <param name="Id">Id of the rule set.</param>
/// <param name="Title">Title of the rule set.</param>
/// <param name="IsComparison">Whether it binds nobody here.</param>
/// <param name="SetOff">Clauses set off, the highest limit of each metric.</param>
/// <param name="Duties">What these and the lower ones ask for, in words.</param>
/// <param name="Unknown">Metrics that can't be told, in words.</param>
/// <param name="Stay">The clause that leaves the least time, or null when none has a time in it.</param>
internal sealed record RuleFacts(
    string Id,
    string Title,
    bool IsComparison,
    ValueList<LimitFacts> SetOff,
    ValueList<string> Duties,
    ValueList<string> Unknown,
    StayFacts? Stay
);

/// <summary>A value and the limit it reaches.</summary>
/// <param name="Metric">What is compared, in words.</param>
/// <param name="Value">The value.</param>
/// <param name="Limit">The limit.</param>
internal sealed record LimitFacts(string Metric, Quantity Value, Quantity Limit);

/// <summary>How long one may stay before a clause is reached.</summary>
/// <param name="Metric">What is compared, in words.</param>
/// <param name="Limit">The limit.</param>
/// <param name="Time">Time in hours; null where no stay reaches the limit.</param>
/// <param name="WindowMinutes">Length of the window in minutes, or null for a day.</param>
/// <param name="Runs">How many of the most exposing runs fit into a day, or null.</param>
internal sealed record StayFacts(string Metric, Quantity Limit, Quantity? Time, double? WindowMinutes, int? Runs);
