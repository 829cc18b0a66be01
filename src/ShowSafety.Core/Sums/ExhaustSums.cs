using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of the rooms of Exhaust.</summary>
public static class ExhaustSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [.. ExhaustJetSums.All, .. ExhaustWallSums.All, .. ExhaustHeatSums.All, .. ExhaustEngineSums.All];
}
