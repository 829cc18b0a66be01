using System.Collections.Frozen;

namespace ShowSafety.Core.Exposure.Programme;

/// <summary>
/// Which engines run in which throttle state at the same time. Equal when engines and states are equal.
/// </summary>
public sealed class StateCombination : IEquatable<StateCombination>
{
    private readonly string _key;

    /// <summary>Makes a combination from throttle state ids by engine id.</summary>
    /// <param name="stateByEngine">Throttle state id by engine id; engines not named are stopped.</param>
    /// <param name="isContradictory">
    /// Whether the plan has one engine in two states at once, or runs an engine it does not have.
    /// </param>
    public StateCombination(IEnumerable<KeyValuePair<string, string>> stateByEngine, bool isContradictory = false)
    {
        StateByEngine = stateByEngine.ToFrozenDictionary();
        IsContradictory = isContradictory;
        _key = string.Join(
            '\n',
            StateByEngine.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key}\t{s.Value}")
        );
    }

    /// <summary>Throttle state id by engine id.</summary>
    public IReadOnlyDictionary<string, string> StateByEngine { get; }

    /// <summary>Whether its sound can't be told because the plan contradicts itself.</summary>
    public bool IsContradictory { get; }

    /// <inheritdoc/>
    public bool Equals(StateCombination? other) =>
        other is not null && _key == other._key && IsContradictory == other.IsContradictory;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as StateCombination);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_key, IsContradictory);
}
