using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>How the type of a member is read: kind, list or not, words or members.</summary>
internal sealed record FieldShape(FieldKind Kind, Type Type, bool IsList)
{
    /// <summary>The words, when it is a choice.</summary>
    public ChoiceWords? Choice { get; init; }

    /// <summary>The members, when it is a record.</summary>
    public RecordDescription? Record { get; init; }

    /// <summary>Reads the type of a property.</summary>
    public static FieldShape Of(Type declared, FieldAttribute field)
    {
        Type type = Nullable.GetUnderlyingType(declared) ?? declared;
        bool isList = type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ValueList<>);
        type = isList ? type.GetGenericArguments()[0] : type;
        FieldKind kind = KindOf(type);
        return new(kind, type, isList)
        {
            Choice = kind == FieldKind.Choice ? ChoiceWords.Of(type) : null,
            Record = kind == FieldKind.Record ? FieldCatalogue.Members(type, field) : null,
        };
    }

    private static FieldKind KindOf(Type type) =>
        type switch
        {
            _ when type == typeof(string) => FieldKind.Text,
            _ when type == typeof(double) => FieldKind.Number,
            _ when type == typeof(int) => FieldKind.WholeNumber,
            _ when type == typeof(bool) => FieldKind.Boolean,
            _ when type == typeof(DateOnly) => FieldKind.Date,
            _ when type == typeof(TimeOnly) => FieldKind.Time,
            _ when type == typeof(PlanPoint) => FieldKind.Point,
            _ when type == typeof(BandValues) => FieldKind.Bands,
            { IsEnum: true } => FieldKind.Choice,
            { IsClass: true } => FieldKind.Record,
            _ => throw new InvalidOperationException($"The field catalogue cannot describe {type}."),
        };
}
