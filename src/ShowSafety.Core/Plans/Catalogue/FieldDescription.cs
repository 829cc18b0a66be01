using System.Reflection;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// One entry of the field catalogue in a form that can be walked: what a member holds, in which unit and range, and
/// what is assumed when nobody states it. Made from a <see cref="FieldAttribute"/> by <see cref="FieldCatalogue"/>.
/// </summary>
public sealed class FieldDescription
{
    private string? _allowed;
    private string? _allowedOne;
    private string? _allowedNumber;

    internal FieldDescription(PropertyInfo property, FieldAttribute field, FieldShape shape)
    {
        Property = property;
        Field = field;
        Shape = shape;
        Name = FieldCatalogue.CamelCase(property.Name);
    }

    /// <summary>Name of the member in the file.</summary>
    public string Name { get; }

    /// <summary>Type and member in the program, "ThrottleState.ThrustNewtons", as findings name it.</summary>
    public string FullName => $"{Property.DeclaringType!.Name}.{Property.Name}";

    /// <summary>What the member means, as a phrase without a full stop.</summary>
    public string Meaning => Field.Meaning;

    /// <summary>What it holds, or what its elements are when <see cref="IsList"/>.</summary>
    public FieldKind Kind => Shape.Kind;

    /// <summary>Whether it holds a list.</summary>
    public bool IsList => Shape.IsList;

    /// <summary>Whether it holds a number with its pedigree, see <see cref="Stated"/>.</summary>
    public bool IsStated => Shape.Type == typeof(Stated);

    /// <summary>How a list of points is read.</summary>
    public PointsShape Points => Field.Points;

    /// <summary>Unit of its numbers.</summary>
    public Unit Unit => Field.Unit;

    /// <summary>Smallest number accepted, inclusive, in its unit.</summary>
    public double Min => Field.Min;

    /// <summary>Largest number accepted, inclusive, in its unit.</summary>
    public double Max => Field.Max;

    /// <summary>Fewest elements of the list when it is there: a ring needs three points, a line two.</summary>
    public int MinCount => Math.Max(Field.MinCount, FewestPoints);

    /// <summary>Most elements of the list.</summary>
    public int MaxCount => Field.MaxCount;

    /// <summary>Most characters of the text.</summary>
    public int MaxLength => Field.MaxLength;

    /// <summary>Whether the text may run over several lines.</summary>
    public bool ManyLines => Kind == FieldKind.Text && Field.MaxLength >= 1000;

    /// <summary>The only text accepted, or null for any.</summary>
    public string? Exactly => Field.Exactly;

    /// <summary>Whether it must be there when its parent is.</summary>
    public bool Required => Field.Required;

    /// <summary>The value assumed when nobody states one, or null where there is none: "cannot tell".</summary>
    public double? Cautious => double.IsFinite(Field.Cautious) ? Field.Cautious : null;

    /// <summary>A value finding out may well give, or null; only ever used to say what not knowing costs.</summary>
    public double? Hopeful => double.IsFinite(Field.Hopeful) ? Field.Hopeful : null;

    /// <summary>How a volunteer finds it out.</summary>
    public FindOut FindOut => Field.FindOut;

    /// <summary>The words of a choice, in order; empty for every other kind.</summary>
    public ValueList<string> Words => Shape.Choice?.Words ?? [];

    /// <summary>The members of a record, or null for every other kind.</summary>
    public RecordDescription? Record => Shape.Record;

    internal ChoiceWords? Choice => Shape.Choice;

    internal PropertyInfo Property { get; }

    internal FieldAttribute Field { get; }

    internal FieldShape Shape { get; }

    // Said about every value that is looked at, spelt out only for the first: a plan has thousands of values.
    internal string Allowed => _allowed ??= AllowedValues.Of(this);

    internal string AllowedOne => _allowedOne ??= AllowedValues.One(this);

    internal string AllowedNumber => _allowedNumber ??= "a number " + AllowedValues.Range(this);

    private int FewestPoints =>
        Points switch
        {
            PointsShape.Ring => 3,
            PointsShape.Line => 2,
            _ => 0,
        };

    /// <summary>The value of the member in a record; null when it is absent.</summary>
    public object? ValueIn(object record) => Property.GetValue(record);
}
