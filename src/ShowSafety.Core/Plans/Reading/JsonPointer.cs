using System.Globalization;

namespace ShowSafety.Core.Plans;

/// <summary>
/// A place in a JSON document. Kept as a chain while reading and spelt out only where something is to be said about
/// the place.
/// </summary>
internal sealed class JsonPointer
{
    private readonly JsonPointer? _parent;
    private readonly string? _name;
    private readonly int _index;

    private JsonPointer(JsonPointer? parent, string? name, int index) =>
        (_parent, _name, _index) = (parent, name, index);

    /// <summary>The whole document.</summary>
    public static JsonPointer Root { get; } = new(null, null, 0);

    /// <summary>A member of the object here.</summary>
    public JsonPointer Member(string name) => new(this, name, 0);

    /// <summary>An element of the list here.</summary>
    public JsonPointer Element(int index) => new(this, null, index);

    /// <summary>The pointer after RFC 6901.</summary>
    public override string ToString() => _parent is null ? "" : $"{_parent}/{Token}";

    private string Token =>
        _name?.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)
        ?? _index.ToString(CultureInfo.InvariantCulture);
}
