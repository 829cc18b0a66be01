using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

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
    public static byte[] Write(Plan plan, Assessment assessment, bool indented = true)
    {
        var phrases = new Phrasebook(assessment.Names);
        var document = new AssessmentDocument(
            SchemaName,
            plan.Title,
            assessment.PlanHash,
            assessment.IsExample,
            assessment.NotToRun ? "notToRun" : "noStopFound",
            assessment.HeadlineSentence,
            [.. assessment.Findings.Select(f => new FindingEntry(phrases.Sentence(f), phrases.Remedy(f), f))],
            assessment.Rooms.ToDictionary(r => r.Name, r => (object)r.Assessment),
            [.. assessment.Zones],
            assessment.FindOut,
            assessment.Assumptions,
            [.. assessment.CitationIds.Select(CitationRegistry.Get)]
        );
        return JsonSerializer.SerializeToUtf8Bytes(document, indented ? Options : Dense);
    }

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

    private sealed record FindingEntry(string Sentence, string Remedy, Finding Finding);

    private sealed record AssessmentDocument(
        string Schema,
        string Title,
        string PlanHash,
        bool Example,
        string Verdict,
        string Headline,
        IReadOnlyList<FindingEntry> Findings,
        IReadOnlyDictionary<string, object> Rooms,
        IReadOnlyList<Zone> Zones,
        IReadOnlyList<FindOutItem> FindOut,
        IReadOnlyList<Assumption> Assumptions,
        IReadOnlyList<Citation> Sources
    );
}
