using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using ShowSafety.Core.Files;

namespace ShowSafety.Web.Contract;

/// <summary>
/// Puts the shapes of answers the core writes by itself into the description of the service, and the list of problems
/// into that of problem details.
/// </summary>
internal static class AnswerComponents
{
    private const string Prefix = "#/components/schemas/";
    private const string Problem = "PlanProblem";

    private static readonly Dictionary<string, string> AnswerOf = new()
    {
        ["AssessPlan"] = AnswerSchema.Assessment,
        ["AskPlaces"] = AnswerSchema.Places,
    };

    /// <summary>Adds the shapes and lets the operations that answer with them say so.</summary>
    public static void Add(OpenApiDocument document)
    {
        var components = document.Components ??= new OpenApiComponents();
        var schemas = components.Schemas ??= new Dictionary<string, IOpenApiSchema>();
        foreach (var (name, shape) in AnswerSchema.All(Prefix))
        {
            // What the service describes already is the same choice of words.
            schemas.TryAdd(name, Read(shape, document));
        }

        AddProblems(document, schemas);
        foreach (var operation in document.Paths.Values.SelectMany(Operations))
        {
            if (operation.OperationId is { } id && AnswerOf.TryGetValue(id, out var answer))
            {
                Answers(operation, new OpenApiSchemaReference(answer, document));
            }
        }
    }

    private static void AddProblems(OpenApiDocument document, IDictionary<string, IOpenApiSchema> schemas)
    {
        schemas[Problem] = Read(ProblemShape(), document);
        if (schemas.TryGetValue("ProblemDetails", out var found) && found is OpenApiSchema details)
        {
            details.Properties ??= new Dictionary<string, IOpenApiSchema>();
            details.Properties["errors"] = new OpenApiSchema
            {
                Type = JsonSchemaType.Array,
                Description = "Every problem in the input, where it is bad input.",
                Items = new OpenApiSchemaReference(Problem, document),
            };
            details.Properties["code"] = new OpenApiSchema
            {
                Type = JsonSchemaType.String,
                Description =
                    "What is the matter, in a word that stays the same, where the status alone does not say it.",
            };
        }
    }

    private static IEnumerable<OpenApiOperation> Operations(IOpenApiPathItem path) =>
        path.Operations is { } operations ? operations.Values : [];

    private static void Answers(OpenApiOperation operation, IOpenApiSchema schema)
    {
        if (operation.Responses?["200"].Content?[MediaTypes.Json] is { } content)
        {
            content.Schema = schema;
        }
    }

    private static JsonObject ProblemShape() =>
        new()
        {
            ["type"] = "object",
            ["properties"] = new JsonObject
            {
                ["pointer"] = Text("Where, as JSON pointer (RFC 6901); empty for the whole."),
                ["code"] = Text("What is the matter, in a word that stays the same."),
                ["value"] = Text("The value given, or null.", mayBeNull: true),
                ["allowed"] = Text("What was allowed, or null.", mayBeNull: true),
                ["text"] = Text("A sentence for people."),
            },
            ["required"] = new JsonArray("pointer", "code", "value", "allowed", "text"),
        };

    private static JsonObject Text(string description, bool mayBeNull = false) =>
        new() { ["type"] = mayBeNull ? "string?" : "string", ["description"] = description };

    private static IOpenApiSchema Read(JsonObject shape, OpenApiDocument document)
    {
        if (shape["$ref"] is { } reference)
        {
            return new OpenApiSchemaReference(reference.GetValue<string>()[Prefix.Length..], document);
        }

        var schema = new OpenApiSchema
        {
            Type = TypeOf(shape["type"]!.GetValue<string>()),
            Description = shape["description"]?.GetValue<string>(),
            Format = shape["format"]?.GetValue<string>(),
            MinItems = shape["minItems"]?.GetValue<int>(),
            MaxItems = shape["maxItems"]?.GetValue<int>(),
            Items = shape["items"] is JsonObject items ? Read(items, document) : null,
            Enum = shape["enum"]?.AsArray().Select(word => word!.DeepClone()).ToList(),
            Required = shape["required"]?.AsArray().Select(name => name!.GetValue<string>()).ToHashSet(),
            Properties = shape["properties"]
                ?.AsObject()
                .ToDictionary(p => p.Key, p => Read(p.Value!.AsObject(), document)),
        };
        if (shape["additionalProperties"] is JsonObject others)
        {
            schema.AdditionalProperties = Read(others, document);
        }
        else
        {
            schema.AdditionalPropertiesAllowed = shape["additionalProperties"] is null;
        }

        return schema;
    }

    private static JsonSchemaType TypeOf(string name) =>
        name switch
        {
            "object" => JsonSchemaType.Object,
            "array" => JsonSchemaType.Array,
            "number" => JsonSchemaType.Number,
            "integer" => JsonSchemaType.Integer,
            "boolean" => JsonSchemaType.Boolean,
            "string?" => JsonSchemaType.String | JsonSchemaType.Null,
            _ => JsonSchemaType.String,
        };
}
