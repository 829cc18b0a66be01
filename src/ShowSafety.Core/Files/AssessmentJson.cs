using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Files;

/// <summary>
/// Writes an assessment as JSON in a stable order, described in docs/assessment-file.md. Numbers are rounded on output:
/// levels to 0.01 dB, lengths to 1 mm, everything else to six significant digits.
/// </summary>
public static class AssessmentJson
{
    /// <summary>Name and version of the file format.</summary>
    public const string SchemaName = "showsafety-assessment/1";

    internal static JsonSerializerOptions Options { get; } =
        new(JsonSerializerDefaults.Web)
        {
            WriteIndented = true,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { WithoutWhatStandsElsewhere } },
            Converters =
            {
                new RoundedNumberConverter(),
                new QuantityConverter(),
                new GeometryConverter(),
                new PlanPointConverter(),
                new JsonStringEnumConverter(JsonNamingPolicy.CamelCase),
            },
        };

    internal static JsonSerializerOptions Dense { get; } = new(Options) { WriteIndented = false };

    /// <summary>The assessment of a plan as UTF-8 JSON.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="assessment">Its assessment.</param>
    /// <param name="indented">Whether it is laid out for reading; otherwise it takes the least room.</param>
    public static byte[] Write(Plan plan, Assessment assessment, bool indented = true) =>
        JsonSerializer.SerializeToUtf8Bytes(AssessmentDocument.Of(plan, assessment), indented ? Options : Dense);

    /// <summary>
    /// The part of the assessment that is drawn and read while something is dragged, as UTF-8 JSON of least room: the
    /// same document without what to find out, assumptions and sources, with the layout of all rooms only and findings
    /// without their arguments and citations.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="assessment">Its assessment.</param>
    public static byte[] WriteForDrag(Plan plan, Assessment assessment) =>
        JsonSerializer.SerializeToUtf8Bytes(AssessmentDocument.ForDrag(plan, assessment), Dense);

    /// <summary>Findings and zones of all rooms stand in lists of their own, with their sentences.</summary>
    private static void WithoutWhatStandsElsewhere(JsonTypeInfo type)
    {
        if (!type.Type.IsAssignableTo(typeof(RoomAssessment)))
        {
            return;
        }

        foreach (JsonPropertyInfo member in type.Properties.Where(p => p.Name is "findings" or "zones").ToList())
        {
            type.Properties.Remove(member);
        }
    }
}
