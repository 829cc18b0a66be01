using System.Collections.Frozen;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Citations;

/// <summary>Every source used, once. A house test demands that every id used anywhere is here and every entry is used.</summary>
public static class CitationRegistry
{
    /// <summary>All citations in a fixed order, room by room.</summary>
    public static ValueList<Citation> All { get; } =
    [
        .. SoundCitations.All,
        .. ExposureCitations.All,
        .. ExhaustCitations.All,
        .. IndoorAirCitations.All,
        .. DebrisCitations.All,
        .. SiteCitations.All,
    ];

    private static readonly FrozenDictionary<string, Citation> ById = All.ToFrozenDictionary(c => c.Id);

    /// <summary>The citation with an id.</summary>
    /// <exception cref="KeyNotFoundException">No such id.</exception>
    public static Citation Get(string id) =>
        ById.TryGetValue(id, out Citation? citation)
            ? citation
            : throw new KeyNotFoundException($"No citation has the id '{id}'.");
}
