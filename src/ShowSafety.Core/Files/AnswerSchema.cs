using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Files;

/// <summary>
/// The shapes of what this room writes, as JSON Schema (draft 2020-12) made from the very types and options that write
/// it, so that a description of an answer can't fall behind the answer.
/// </summary>
public static class AnswerSchema
{
    /// <summary>Name of the shape of an assessment.</summary>
    public const string Assessment = "Assessment";

    /// <summary>Name of the shape of the answer about places.</summary>
    public const string Places = "PlacesAnswer";

    private static readonly JsonNamingPolicy Words = JsonNamingPolicy.CamelCase;

    private static readonly Dictionary<Type, string> Names = new()
    {
        [typeof(AssessmentDocument)] = Assessment,
        [typeof(PlacesAnswer)] = Places,
        [typeof(AssessedPlace)] = "PlaceAnswer",
        [typeof(AssessedPerson)] = "Person",
        [typeof(AssessedLimit)] = "PersonLimit",
        [typeof(AssessedZone)] = "PlaceZone",
        [typeof(AssessedSoundPart)] = "SoundPart",
        [typeof(AssessedWords)] = "PlaceWords",
        [typeof(DocumentVerdict)] = "AssessmentVerdict",
        [typeof(FindingFacts)] = "Finding",
        [typeof(ZoneEntry)] = "Zone",
        [typeof(RoomsEntry)] = "Rooms",
        [typeof(Geometry)] = "Areas",
        [typeof(PlanPoint)] = "Point",
        // Lists of sources elsewhere write members that stay empty; here they are left out.
        [typeof(Citation)] = "Source",
    };

    /// <summary>All shapes by name; they refer to each other by their place below a prefix.</summary>
    /// <param name="prefix">Where they will stand: "#/components/schemas/" or "#/$defs/".</param>
    public static IReadOnlyDictionary<string, JsonObject> All(string prefix)
    {
        var shapes = new SortedDictionary<string, JsonObject>(StringComparer.Ordinal);
        var walk = new Walk(prefix, shapes);
        walk.Of(typeof(AssessmentDocument));
        walk.Of(typeof(PlacesAnswer));
        return shapes;
    }

    private sealed class Walk(string prefix, SortedDictionary<string, JsonObject> shapes)
    {
        private readonly NullabilityInfoContext nullability = new();

        public JsonObject Of(Type type)
        {
            if (Nullable.GetUnderlyingType(type) is { } inner)
            {
                return Of(inner);
            }

            if (Plain(type) is { } plain)
            {
                return plain;
            }

            if (typeof(Geometry).IsAssignableFrom(type))
            {
                return Named(typeof(Geometry), AnswerShapes.Areas);
            }

            return type == typeof(Quantity) ? Named(type, () => AnswerShapes.Quantity(Of))
                : type == typeof(PlanPoint) ? Named(type, AnswerShapes.Point)
                : type.IsEnum ? Named(type, () => Choice(type))
                : Made(AssessmentJson.Dense.GetTypeInfo(type));
        }

        private JsonObject Made(JsonTypeInfo info) =>
            info.Kind switch
            {
                JsonTypeInfoKind.Enumerable => new() { ["type"] = "array", ["items"] = Of(info.ElementType!) },
                JsonTypeInfoKind.Dictionary => new()
                {
                    ["type"] = "object",
                    ["additionalProperties"] = Of(info.ElementType!),
                },
                JsonTypeInfoKind.Object => Named(info.Type, () => Members(info)),
                _ => throw new NotSupportedException($"No shape is known for {info.Type}."),
            };

        private JsonObject Members(JsonTypeInfo info)
        {
            var members = new JsonObject();
            var required = new JsonArray();
            foreach (JsonPropertyInfo member in info.Properties)
            {
                members[member.Name] = Of(member.PropertyType);
                if (!MayBeAbsent(member))
                {
                    required.Add(member.Name);
                }
            }

            return new()
            {
                ["type"] = "object",
                ["properties"] = members,
                ["required"] = required,
                ["additionalProperties"] = false,
            };
        }

        private bool MayBeAbsent(JsonPropertyInfo member) =>
            Nullable.GetUnderlyingType(member.PropertyType) is not null
            || (
                member.AttributeProvider is PropertyInfo property
                && nullability.Create(property).ReadState == NullabilityState.Nullable
            );

        private JsonObject Named(Type type, Func<JsonObject> make)
        {
            string name = Names.GetValueOrDefault(type, type.Name);
            if (!shapes.ContainsKey(name))
            {
                // Held before it is made, because shapes may contain themselves.
                shapes[name] = [];
                shapes[name] = make();
            }

            return new() { ["$ref"] = prefix + name };
        }

        private static JsonObject Choice(Type type) =>
            type.IsDefined(typeof(FlagsAttribute))
                ? new()
                {
                    ["type"] = "string",
                    ["description"] = $"One or more, separated by a comma and a space: {Listed(type)}.",
                }
                : new() { ["type"] = "string", ["enum"] = new JsonArray([.. WordsOf(type).Select(w => (JsonNode)w)]) };

        private static string Listed(Type type) => string.Join(", ", WordsOf(type));

        private static IEnumerable<string> WordsOf(Type type) => Enum.GetNames(type).Select(Words.ConvertName);

        private static JsonObject? Plain(Type type) =>
            Type.GetTypeCode(type) switch
            {
                _ when type.IsEnum => null,
                TypeCode.Boolean => new() { ["type"] = "boolean" },
                TypeCode.Double => new() { ["type"] = "number" },
                TypeCode.Int32 or TypeCode.Int64 => new() { ["type"] = "integer" },
                TypeCode.String => new() { ["type"] = "string" },
                _ when type == typeof(DateOnly) => new() { ["type"] = "string", ["format"] = "date" },
                _ when type == typeof(TimeOnly) || type == typeof(TimeSpan) => new() { ["type"] = "string" },
                _ => null,
            };
    }
}
