using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of the rooms of Site.</summary>
public static class SiteSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } = [.. GateSums.All, .. SuppliesSums.All, .. CrowdSums.All];
}
