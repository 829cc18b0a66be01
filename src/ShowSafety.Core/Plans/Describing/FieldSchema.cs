using System.Text.Json.Nodes;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The JSON Schema of one member.</summary>
internal static class FieldSchema
{
    private const string DatePattern = "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";
    private const string TimePattern = "^([01][0-9]|2[0-3]):[0-5][0-9]$";

    /// <summary>The schema, with unit, cautious value and the way to find out as annotations of our own.</summary>
    public static JsonObject Of(FieldDescription field)
    {
        JsonObject schema = field.IsList ? ListOf(field) : One(field);
        schema["description"] = field.Meaning;
        if (field.Unit != Unit.One)
        {
            schema["x-unit"] = field.Unit.Symbol();
        }

        if (field.Cautious is { } cautious)
        {
            schema["x-cautiousValue"] = cautious;
        }

        if (field.FindOut != FindOut.None)
        {
            schema["x-findOut"] = FieldCatalogue.CamelCase(field.FindOut.ToString());
        }

        return schema;
    }

    private static JsonObject ListOf(FieldDescription field)
    {
        JsonObject schema = new()
        {
            ["type"] = "array",
            ["items"] = One(field),
            ["minItems"] = field.MinCount,
            ["maxItems"] = field.MaxCount,
        };
        if (field.Points != PointsShape.None)
        {
            schema["x-points"] = FieldCatalogue.CamelCase(field.Points.ToString());
        }

        return schema;
    }

    private static JsonObject One(FieldDescription field) =>
        field.Kind switch
        {
            FieldKind.Text when field.Exactly is { } only => new() { ["const"] = only },
            FieldKind.Text => Text(field),
            FieldKind.Number => Number("number", field),
            FieldKind.WholeNumber => Number("integer", field),
            FieldKind.Boolean => new() { ["type"] = "boolean" },
            FieldKind.Choice => new() { ["$ref"] = PlanSchema.Reference(field.Choice!.Name) },
            FieldKind.Date => Pattern(DatePattern),
            FieldKind.Time => Pattern(TimePattern),
            FieldKind.Point => Numbers(2, field),
            FieldKind.Bands => Numbers(OctaveBand.Count, field),
            _ when field.IsStated => StatedIn(field),
            _ => new() { ["$ref"] = PlanSchema.Reference(field.Record!.Name) },
        };

    private static JsonObject Text(FieldDescription field)
    {
        JsonObject schema = new() { ["type"] = "string", ["maxLength"] = field.MaxLength };
        if (field.Required || field.IsList)
        {
            schema["pattern"] = "\\S";
        }

        string refused = field.ManyLines
            ? TextBinder.Unreadable.Replace(@"\u0000-\u001f", @"\u0000-\u0009\u000b-\u001f", StringComparison.Ordinal)
            : TextBinder.Unreadable;
        schema["not"] = new JsonObject { ["pattern"] = $"[{refused}]" };
        return schema;
    }

    private static JsonObject StatedIn(FieldDescription field)
    {
        FieldDescription value = field.Record!.Find("value")!;
        return new()
        {
            ["$ref"] = PlanSchema.Reference("stated"),
            ["properties"] = new JsonObject
            {
                ["value"] = new JsonObject { ["minimum"] = value.Min, ["maximum"] = value.Max },
            },
        };
    }

    private static JsonObject Number(string type, FieldDescription field) =>
        new()
        {
            ["type"] = type,
            ["minimum"] = field.Min,
            ["maximum"] = field.Max,
        };

    private static JsonObject Numbers(int count, FieldDescription field) =>
        new()
        {
            ["type"] = "array",
            ["items"] = Number("number", field),
            ["minItems"] = count,
            ["maxItems"] = count,
        };

    private static JsonObject Pattern(string pattern) => new() { ["type"] = "string", ["pattern"] = pattern };
}
