using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of the rooms of Debris.</summary>
public static class DebrisSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } = [];
}
