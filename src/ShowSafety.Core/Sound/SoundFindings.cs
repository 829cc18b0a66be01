using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>Makes the findings of the sound room, in the order they are met.</summary>
internal sealed class SoundFindings
{
    private readonly List<Finding> _found = [];

    /// <summary>Everything found so far.</summary>
    public ValueList<Finding> All => [.. _found];

    /// <summary>Adds a finding.</summary>
    public void Add(Finding finding) => _found.Add(finding);

    /// <summary>Adds a finding about an element.</summary>
    public void Add(
        string code,
        Severity severity,
        string? elementId,
        string? field = null,
        params ReadOnlySpan<FindingArgument> arguments
    ) =>
        _found.Add(
            new Finding(code, severity)
            {
                ElementId = elementId,
                Field = field,
                Arguments = ValueList.Create(arguments),
            }
        );

    /// <summary>A level difference as an argument.</summary>
    public static FindingArgument Decibels(string name, double value) =>
        FindingArgument.Of(name, Quantity.Plain(value, Unit.Decibel));

    /// <summary>A length as an argument.</summary>
    public static FindingArgument Metres(string name, double value) =>
        FindingArgument.Of(name, Quantity.Plain(value, Unit.Metre));
}
