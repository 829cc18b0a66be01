using System.Globalization;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>What a member accepts, in words: printed beside a refused value and in the description of the format.</summary>
public static class AllowedValues
{
    /// <summary>What the member accepts, as a phrase without a full stop: "a number from 0.05 to 5 m".</summary>
    public static string Of(FieldDescription field) => field.IsList ? ListOf(field) : One(field);

    /// <summary>What one element of the member accepts.</summary>
    public static string One(FieldDescription field) =>
        field.Kind switch
        {
            FieldKind.Text when field.Exactly is { } only => $"the text \"{only}\"",
            FieldKind.Text =>
                $"text of {(field.Required || field.IsList ? "1 to" : "at most")} {Number(field.MaxLength)} characters",
            FieldKind.Number => $"a number {Range(field)}",
            FieldKind.WholeNumber => $"a whole number {Range(field)}",
            FieldKind.Boolean => "true or false",
            FieldKind.Choice => $"one of {string.Join(", ", field.Words)}",
            FieldKind.Date => "a date, yyyy-MM-dd",
            FieldKind.Time => "a time, HH:mm",
            FieldKind.Point => $"a point [x, y], each {Range(field)}",
            FieldKind.Bands => $"eight numbers, 63 Hz to 8 kHz, each {Range(field)}",
            FieldKind.Record when field.IsStated => $"an object with value ({Range(field)}) and pedigree",
            FieldKind.Record => "an object",
            _ => throw new InvalidOperationException($"No words for {field.Kind}."),
        };

    /// <summary>The range of the member's numbers with its unit: "from 0.05 to 5 m".</summary>
    public static string Range(FieldDescription field)
    {
        string unit = field.Unit.Symbol();
        return $"from {Number(field.Min)} to {Number(field.Max)}{(unit.Length == 0 ? "" : " " + unit)}";
    }

    /// <summary>A number as a plan file writes it, whatever the culture.</summary>
    public static string Number(double value) => value.ToString("0.################", CultureInfo.InvariantCulture);

    private static string ListOf(FieldDescription field)
    {
        string count =
            field.MinCount == 0
                ? $"at most {Number(field.MaxCount)}"
                : $"{Number(field.MinCount)} to {Number(field.MaxCount)}";
        return field.Points switch
        {
            PointsShape.Ring => $"a ring of {count} points that does not cross itself, {Range(field)}",
            PointsShape.Line => $"a line of {count} points, {Range(field)}",
            _ => $"a list of {count}, each {One(field)}",
        };
    }
}
