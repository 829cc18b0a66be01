using System.Collections.Frozen;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>All worked sums, room by room.</summary>
public static class SumRegistry
{
    /// <summary>All sums in a fixed order.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [
        .. SoundSums.All,
        .. ExposureSums.All,
        .. ExhaustSums.All,
        .. IndoorAirSums.All,
        .. DebrisSums.All,
        .. SiteSums.All,
    ];

    private static readonly FrozenDictionary<string, WorkedSum> ByName = All.ToFrozenDictionary(s => s.Name);

    /// <summary>The sum with a name, or null.</summary>
    public static WorkedSum? Find(string name) => ByName.GetValueOrDefault(name);
}
