using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace ShowSafety.Core.Plans;

/// <summary>
/// The JSON Schema (draft 2020-12) of plan files, made from the field catalogue. It says what a schema can say; that
/// ids are unique and rings do not cross themselves only <see cref="PlanReader"/> can tell.
/// </summary>
public static class PlanSchema
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema, indented, ending with a line feed.</summary>
    public static string Write() => Of(FieldCatalogue.Plan).ToJsonString(Readable).ReplaceLineEndings("\n") + "\n";

    private static JsonObject Of(RecordDescription root)
    {
        IReadOnlyList<RecordDescription> records = FieldCatalogue.Reachable(root);
        JsonObject definitions = [];
        foreach (RecordDescription record in records)
        {
            definitions[record.Name] = record.Type == typeof(Stated) ? StatedSchema(record) : RecordSchema(record);
        }

        foreach (ChoiceWords choice in records.SelectMany(r => r.Fields).Select(f => f.Choice).OfType<ChoiceWords>())
        {
            definitions[choice.Name] = new JsonObject { ["enum"] = new JsonArray([.. choice.Words]) };
        }

        return new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = "urn:showsafety:plan:1",
            ["title"] = "ShowSafety plan, version 1",
            ["$ref"] = Reference(root.Name),
            ["$defs"] = definitions,
        };
    }

    private static JsonObject RecordSchema(RecordDescription record)
    {
        JsonObject members = [];
        foreach (FieldDescription field in record.Fields)
        {
            members[field.Name] = FieldSchema.Of(field);
        }

        JsonObject schema = new() { ["type"] = "object", ["properties"] = members };
        if (record.Fields.Any(f => f.Required))
        {
            schema["required"] = new JsonArray([.. record.Fields.Where(f => f.Required).Select(f => f.Name)]);
        }

        schema["additionalProperties"] = false;
        return schema;
    }

    // Unit and range of a stated number stand with the member that holds it.
    private static JsonObject StatedSchema(RecordDescription stated)
    {
        JsonObject schema = RecordSchema(stated);
        schema["properties"]!["value"] = new JsonObject
        {
            ["type"] = "number",
            ["description"] = stated.Find("value")!.Meaning,
        };
        return schema;
    }

    internal static string Reference(string definition) => "#/$defs/" + definition;
}
