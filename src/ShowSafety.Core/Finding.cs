using ShowSafety.Core.Measures;

namespace ShowSafety.Core;

/// <summary>
/// Something the user must know, without a sentence: code, typed arguments, severity, place. The sentence and the
/// remedy are made in <see cref="Wording"/> from the code.
/// </summary>
/// <param name="Code">Room and matter in lower case: "debris.people-in-direct-flight".</param>
/// <param name="Severity">How much it weighs.</param>
public sealed record Finding(string Code, Severity Severity)
{
    /// <summary>Values the sentence names, by the name of its placeholder.</summary>
    public ValueList<FindingArgument> Arguments { get; init; } = [];

    /// <summary>Id of the element it is about, or null when it is about the whole plan.</summary>
    public string? ElementId { get; init; }

    /// <summary>Where on the plan, or null.</summary>
    public PlanPoint? Place { get; init; }

    /// <summary>
    /// Name of the catalogue entry whose value is missing or unsure, as "Type.Member" (for instance
    /// "ThrottleState.ThrustNewtons"), or null. Fills the find-out list.
    /// </summary>
    public string? Field { get; init; }

    /// <summary>Whether the finding is a verdict "cannot tell": something needed is missing.</summary>
    public bool CannotTell { get; init; }

    /// <summary>Row of the zones table it belongs to, or null.</summary>
    public ZoneRow? Row { get; init; }

    /// <summary>Ids of citations.</summary>
    public ValueList<string> Citations { get; init; } = [];
}

/// <summary>A named value in a finding: exactly one of quantity and text.</summary>
public sealed record FindingArgument
{
    private FindingArgument(string name, Quantity? quantity, string? text)
    {
        Name = name;
        Quantity = quantity;
        Text = text;
    }

    /// <summary>Name of the placeholder.</summary>
    public string Name { get; }

    /// <summary>The value, when it is a quantity.</summary>
    public Quantity? Quantity { get; }

    /// <summary>The value, when it is a name, an id or a count in words.</summary>
    public string? Text { get; }

    /// <summary>A quantity.</summary>
    public static FindingArgument Of(string name, Quantity quantity) => new(name, quantity, null);

    /// <summary>A name or an id.</summary>
    public static FindingArgument Of(string name, string text) => new(name, null, text);

    /// <summary>A whole number.</summary>
    public static FindingArgument Of(string name, int count) =>
        new(name, null, count.ToString(System.Globalization.CultureInfo.InvariantCulture));
}

/// <summary>How much a finding weighs, from the least.</summary>
public enum Severity
{
    /// <summary>Information.</summary>
    Note,

    /// <summary>To be closed by name and time before the run.</summary>
    Act,

    /// <summary>
    /// A person could be killed or maimed by what is planned, a ban or a missing permission, or "cannot tell" on
    /// either. Goes away only by changed data with evidence; while one stands every output says NOT TO RUN.
    /// </summary>
    Stop,
}
