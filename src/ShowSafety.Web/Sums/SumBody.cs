using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Unicode;
using Microsoft.AspNetCore.Http.Metadata;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sums;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Sums;

/// <summary>Inputs of a worked sum: an object of key to number, list of numbers or word.</summary>
internal sealed class SumBody : IBindableFromHttpContext<SumBody>, IEndpointParameterMetadataProvider, IRefusable
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false, MaxDepth = 4 };

    private readonly IReadOnlyDictionary<string, JsonElement> given;

    private SumBody(IReadOnlyDictionary<string, JsonElement> given, IResult? refusal) =>
        (this.given, Refusal) = (given, refusal);

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <summary>Reads the body of a request.</summary>
    public static async ValueTask<SumBody?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var (bytes, refusal) = await RequestBody.ReadAsync(context.Request);
        return bytes is null ? new(new Dictionary<string, JsonElement>(), refusal) : Read(bytes);
    }

    /// <summary>Says in the description of the service that the operation takes a JSON body.</summary>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata(["application/json"], typeof(JsonObject)));

    /// <summary>The inputs as the solver takes them, and those that are of the wrong kind for the sum.</summary>
    public (IReadOnlyDictionary<string, string> Inputs, IReadOnlyList<PlanProblem> Problems) For(WorkedSum sum)
    {
        var problems = given
            .Where(g => sum.Parameters.FirstOrDefault(p => p.Key == g.Key) is { } known && !Fits(known, g.Value))
            .Select(g => WrongType(sum.Parameters.First(p => p.Key == g.Key), g.Value));
        return (given.ToDictionary(g => g.Key, g => AsText(g.Value)), [.. problems]);
    }

    private static SumBody Read(byte[] bytes)
    {
        if (!Utf8.IsValid(bytes))
        {
            return Refused(PlanProblemCodes.NotUtf8, "The body is not UTF-8 text.");
        }

        try
        {
            using var document = JsonDocument.Parse(bytes, Strict);
            if (document.RootElement.ValueKind != JsonValueKind.Object)
            {
                return Refused(PlanProblemCodes.WrongType, "The inputs are an object of key to number, list or word.");
            }

            var members = document.RootElement.EnumerateObject().ToDictionary(m => m.Name, m => m.Value.Clone());
            foreach (var word in members.Values.Where(v => v.ValueKind == JsonValueKind.String))
            {
                // Met here, a text that is none is refused; met later, it would be a failure.
                _ = word.GetString();
            }

            return new(members, null);
        }
        // Half a surrogate pair, written as an escape, is JSON but no text.
        catch (Exception broken) when (broken is JsonException or InvalidOperationException)
        {
            return Refused(
                PlanProblemCodes.NotJson,
                "The body is not JSON, or a key is given twice, or a text is none."
            );
        }
    }

    private static SumBody Refused(string code, string text) =>
        new(new Dictionary<string, JsonElement>(), Refusals.BadInput("", code, null, null, text));

    private static bool Fits(SumParameter parameter, JsonElement value) =>
        parameter switch
        {
            { Words.Count: > 0 } => value.ValueKind == JsonValueKind.String,
            { ListLength: not null } => value.ValueKind == JsonValueKind.Array
                && value.EnumerateArray().All(v => v.ValueKind == JsonValueKind.Number),
            _ => value.ValueKind == JsonValueKind.Number,
        };

    private static PlanProblem WrongType(SumParameter parameter, JsonElement value)
    {
        var allowed = parameter switch
        {
            { Words.Count: > 0 } => string.Join(", ", parameter.Words),
            { ListLength: not null } => "a list of numbers",
            _ => "a number",
        };
        return new(
            "/" + parameter.Key,
            PlanProblemCodes.WrongType,
            Shortened(value.GetRawText()),
            allowed,
            $"{parameter.Key} takes {allowed}."
        );
    }

    private static string Shortened(string raw) => raw.Length <= 80 ? raw : raw[..77] + "...";

    private static string AsText(JsonElement value) =>
        value.ValueKind switch
        {
            JsonValueKind.String => value.GetString()!,
            JsonValueKind.Array => string.Join(',', value.EnumerateArray().Select(v => v.GetRawText())),
            _ => value.GetRawText(),
        };
}
