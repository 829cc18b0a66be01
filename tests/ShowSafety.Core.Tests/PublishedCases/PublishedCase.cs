using System.Text.Json;
using System.Text.Json.Serialization;

namespace ShowSafety.Core.Tests.PublishedCases;

/// <summary>
/// One check value from the outside world: the inputs of a worked sum and what a published source says the result is.
/// A misprint is a value the source prints that its own formula does not give: the case demands the right value and
/// that the printed one is out of tolerance. The basis says how the source is known (read, secondary, memory); "derived"
/// marks a consequence of mathematics or mechanics that no publication stands behind: it checks the code, not nature.
/// </summary>
public sealed record PublishedCase(
    string Id,
    string Case,
    string Sum,
    IReadOnlyDictionary<string, JsonElement> Inputs,
    IReadOnlyDictionary<string, double> Expect,
    double Tolerance,
    string Source,
    string Basis,
    string Kind
)
{
    /// <summary>Whether the tolerance is a share of the expected value instead of an amount.</summary>
    public bool Relative { get; init; }

    /// <summary>Values the source misprints, by result.</summary>
    public IReadOnlyDictionary<string, double> Misprint { get; init; } = new Dictionary<string, double>();

    /// <summary>What a reader should know about the tolerance or the source.</summary>
    public string? Note { get; init; }

    private static readonly JsonSerializerOptions Strict = new(JsonSerializerDefaults.Web)
    {
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectRequiredConstructorParameters = true,
        RespectNullableAnnotations = true,
    };

    /// <summary>Reads every table of the folder, file by file in name order.</summary>
    public static IReadOnlyList<PublishedCase> ReadAll() =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "published-cases"), "*.json")
                .Order(StringComparer.Ordinal)
                .SelectMany(file =>
                    JsonSerializer.Deserialize<List<PublishedCase>>(File.ReadAllText(file), Strict) ?? []
                ),
        ];
}
