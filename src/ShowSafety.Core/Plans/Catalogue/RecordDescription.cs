using System.Collections.Frozen;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The members of one record of a plan file, in the order they are written.</summary>
public sealed class RecordDescription
{
    private readonly FrozenDictionary<string, int> _indices;

    internal RecordDescription(Type type, IEnumerable<FieldDescription> fields)
    {
        Type = type;
        Name = FieldCatalogue.CamelCase(type.Name);
        Fields = fields.ToValueList();
        _indices = Fields.Index().ToFrozenDictionary(f => f.Item.Name, f => f.Index, StringComparer.Ordinal);
        Id = Find("id");
    }

    /// <summary>Name of the record, in camel case.</summary>
    public string Name { get; }

    /// <summary>The members in order.</summary>
    public ValueList<FieldDescription> Fields { get; }

    internal Type Type { get; }

    /// <summary>The member that holds the stable id, or null.</summary>
    internal FieldDescription? Id { get; }

    /// <summary>The member of that name, or null.</summary>
    public FieldDescription? Find(string name) => IndexOf(name) is int index and >= 0 ? Fields[index] : null;

    internal int IndexOf(string name) => _indices.GetValueOrDefault(name, -1);
}
