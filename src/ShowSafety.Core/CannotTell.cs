namespace ShowSafety.Core;

/// <summary>Makes the verdict "cannot tell" about a member of the plan that is missing or unusable.</summary>
internal static class CannotTell
{
    /// <summary>The finding that a verdict needs a member nobody stated.</summary>
    /// <param name="owner">Record that has the member.</param>
    /// <param name="code">Code of the finding.</param>
    /// <param name="severity">What not knowing weighs.</param>
    /// <param name="member">Name of the member, by nameof.</param>
    /// <param name="elementId">Id of the element, or null for the whole plan.</param>
    /// <param name="row">Row of the zones table, or null.</param>
    public static Finding Without(
        Type owner,
        string code,
        Severity severity,
        string member,
        string? elementId = null,
        ZoneRow? row = null
    ) =>
        new(code, severity)
        {
            CannotTell = true,
            Field = $"{owner.Name}.{member}",
            ElementId = elementId,
            Row = row,
        };
}
