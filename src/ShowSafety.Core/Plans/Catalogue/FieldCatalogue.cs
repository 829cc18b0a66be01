using System.Collections.Concurrent;
using System.Reflection;

namespace ShowSafety.Core.Plans;

/// <summary>
/// The field catalogue: reads the <see cref="FieldAttribute"/> of every member of a record once and keeps the
/// description. The reader, the writer, the schema, the documents and the tests all walk it.
/// </summary>
public static class FieldCatalogue
{
    private static readonly ConcurrentDictionary<Type, RecordDescription> Known = new();

    /// <summary>The members of a plan.</summary>
    public static RecordDescription Plan => For(typeof(Plan));

    /// <summary>The members of a record whose public properties all carry a <see cref="FieldAttribute"/>.</summary>
    /// <exception cref="InvalidOperationException">A member has no entry or a type that cannot be described.</exception>
    public static RecordDescription For(Type type) => Known.GetOrAdd(type, static t => Describe(t, null));

    /// <summary>Every record that can be reached from one, itself first, each once.</summary>
    public static IReadOnlyList<RecordDescription> Reachable(RecordDescription root)
    {
        List<RecordDescription> found = [root];
        for (int i = 0; i < found.Count; i++)
        {
            found.AddRange(
                found[i]
                    .Fields.Select(f => f.Record)
                    .OfType<RecordDescription>()
                    .Where(r => found.TrueForAll(known => known.Type != r.Type))
                    .DistinctBy(r => r.Type)
            );
        }

        return found;
    }

    internal static RecordDescription Members(Type type, FieldAttribute holder) =>
        type == typeof(Stated) ? Describe(type, holder) : For(type);

    internal static string CamelCase(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static RecordDescription Describe(Type type, FieldAttribute? holder) =>
        new(
            type,
            type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(p => p.CanWrite)
                .OrderBy(p => p.MetadataToken)
                .Select(p => Describe(p, holder))
        );

    private static FieldDescription Describe(PropertyInfo property, FieldAttribute? holder)
    {
        FieldAttribute field =
            property.GetCustomAttribute<FieldAttribute>()
            ?? throw new InvalidOperationException(
                $"{property.DeclaringType}.{property.Name} has no entry in the field catalogue."
            );
        // The number of a stated value takes unit and range from the member that holds it: each fact stands once.
        if (holder is not null && property.Name == nameof(Stated.Value))
        {
            field = new FieldAttribute(field.Meaning)
            {
                Required = true,
                Unit = holder.Unit,
                Min = holder.Min,
                Max = holder.Max,
            };
        }

        return new(property, field, FieldShape.Of(property.PropertyType, field));
    }
}
