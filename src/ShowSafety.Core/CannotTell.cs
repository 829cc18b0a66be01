namespace ShowSafety.Core;

/// <summary>Makes the verdict "cannot tell" about a member of the plan that is missing or unusable.</summary>
internal static class CannotTell
{
    /// <summary>The finding that a verdict needs a member nobody stated.</summary>
    /// <typeparam name="T">Record that has the member.</typeparam>
    /// <param name="code">Code of the finding.</param>
    /// <param name="severity">What not knowing weighs.</param>
    /// <param name="member">Name of the member, by nameof.</param>
    /// <param name="elementId">Id of the element, or null for the whole plan.</param>
    /// <param name="row">Row of the zones table, or null.</param>
    public static Finding Without<T>(
        string code,
        Severity severity,
        string member,
        string? elementId = null,
        ZoneRow? row = null
    ) =>
        new(code, severity)
        {
            CannotTell = true,
            Field = $"{typeof(T).Name}.{member}",
            ElementId = elementId,
            Row = row,
        };
}
