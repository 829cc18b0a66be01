using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Citations;

/// <summary>Sources of the rooms about exposure.</summary>
public static class ExposureCitations
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<Citation> All { get; } = [];
}
