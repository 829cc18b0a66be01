using System.Collections;

namespace ShowSafety.Core.Plans;

/// <summary>Names people know the elements of a plan by, by id. Equal by content.</summary>
public sealed class ElementNames : IReadOnlyDictionary<string, string>, IEquatable<ElementNames>
{
    private readonly SortedDictionary<string, string> _names = new(StringComparer.Ordinal);

    private ElementNames() { }

    /// <summary>Collects the names of a plan; where an id stands twice the first name counts.</summary>
    public static ElementNames Of(Plan plan)
    {
        var names = new ElementNames();
        foreach ((string id, string? name) in Named(plan))
        {
            if (!string.IsNullOrWhiteSpace(name))
            {
                names._names.TryAdd(id, name);
            }
        }

        return names;
    }

    private static IEnumerable<(string Id, string? Name)> Named(Plan plan) =>
        [
            .. plan.Engines.Select(e => (e.Id, e.Name)),
            .. plan.Engines.SelectMany(e => e.Sheet?.States ?? []).Select(s => (s.Id, s.Name)),
            .. plan.People.Select(p => (p.Id, p.Name)),
            .. plan.Protectors.Select(p => (p.Id, p.Name)),
            .. plan.Site.Exits.Select(e => (e.Id, e.Name)),
            .. plan.Site.Stands.Select(s => (s.Id, s.Name)),
            .. plan.Site.Structures.Select(s => (s.Id, s.Name)),
            .. plan.Site.Burnables.Select(b => (b.Id, b.Name)),
            .. (plan.Gate?.Stopping?.StopPosts ?? []).Select(p => (p.Id, p.Name)),
            .. (plan.Viewing?.StewardPosts ?? []).Select(p => (p.Id, p.Name)),
            .. (plan.Viewing?.WheelchairPlaces ?? []).Select(p => (p.Id, p.Name)),
        ];

    /// <inheritdoc/>
    public string this[string key] => _names[key];

    /// <inheritdoc/>
    public IEnumerable<string> Keys => _names.Keys;

    /// <inheritdoc/>
    public IEnumerable<string> Values => _names.Values;

    /// <inheritdoc/>
    public int Count => _names.Count;

    /// <inheritdoc/>
    public bool ContainsKey(string key) => _names.ContainsKey(key);

    /// <inheritdoc/>
    public bool TryGetValue(string key, [System.Diagnostics.CodeAnalysis.MaybeNullWhen(false)] out string value) =>
        _names.TryGetValue(key, out value);

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, string>> GetEnumerator() => _names.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(ElementNames? other) => other is not null && _names.SequenceEqual(other._names);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ElementNames);

    /// <inheritdoc/>
    public override int GetHashCode() => _names.Count;
}
