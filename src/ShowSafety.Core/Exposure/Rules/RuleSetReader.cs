using System.Text.Json;
using System.Text.Json.Serialization;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.Rules;

/// <summary>
/// Reads the text of one rule set. Unknown, missing and duplicate members are refused by name, and so is a clause
/// whose members do not fit its metric: a rule that is half understood is worse than none.
/// </summary>
public static class RuleSetReader
{
    private static readonly JsonSerializerOptions Strict = new(JsonSerializerOptions.Strict)
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Converters =
        {
            new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false),
            new ListConverter<RuleClause>(),
            new ListConverter<LegalClass>(),
        },
    };

    /// <summary>Reads and checks a rule set.</summary>
    /// <exception cref="FormatException">The text is not a rule set; the message names the member.</exception>
    public static RuleSet Read(string text)
    {
        RuleSet read;
        try
        {
            read = JsonSerializer.Deserialize<RuleSet>(text, Strict) ?? throw new FormatException("The file is null.");
        }
        catch (JsonException refused)
        {
            throw new FormatException(refused.Message, refused);
        }

        string? fault = Fault(read);
        return fault is null ? read : throw new FormatException($"{read.Id}: {fault}");
    }

    private static string? Fault(RuleSet set) =>
        set.Id.Length == 0 ? "id is empty."
        : set.Clauses.Count == 0 ? "clauses is empty."
        : set.Covers.LegalClasses.Count == 0 ? "legalClasses is empty."
        : set.Clauses.Select(c => c.Id).Distinct().Count() < set.Clauses.Count ? "two clauses have the same id."
        : set.Clauses.Select(Fault).FirstOrDefault(fault => fault is not null);

    private static string? Fault(RuleClause clause)
    {
        bool isWindow = clause.Metric == RuleMetric.WindowLevel;
        bool isDose = clause.Metric == RuleMetric.Dose;
        return clause switch
        {
            { Limit: not (> 0 and < 1000) } => $"limit of {clause.Id} is out of range.",
            { WindowMinutes: not (null or (> 0 and <= 1440)) } => $"windowMinutes of {clause.Id} is out of range.",
            { ExchangeDb: not (null or (>= 3 and <= 6)) } => $"exchangeDb of {clause.Id} is out of range.",
            { CriterionHours: not (null or (> 0 and <= 24)) } => $"criterionHours of {clause.Id} is out of range.",
            { CriterionDbA: not (null or (>= 60 and <= 120)) } => $"criterionDbA of {clause.Id} is out of range.",
            _ when isWindow != clause.WindowMinutes is not null =>
                $"windowMinutes of {clause.Id} does not fit its metric.",
            _ when isWindow != clause.Window is not null => $"window of {clause.Id} does not fit its metric.",
            _ when isDose != clause.CriterionDbA is not null => $"criterionDbA of {clause.Id} does not fit its metric.",
            _ when isDose != clause.CriterionHours is not null =>
                $"criterionHours of {clause.Id} does not fit its metric.",
            _ when isDose != clause.ExchangeDb is not null => $"exchangeDb of {clause.Id} does not fit its metric.",
            _ when !isDose && clause.ThresholdDbA is not null =>
                $"thresholdDbA of {clause.Id} does not fit its metric.",
            _ => null,
        };
    }

    private sealed class ListConverter<T> : JsonConverter<ValueList<T>>
    {
        public override ValueList<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            T[] items =
                JsonSerializer.Deserialize<T[]>(ref reader, options) ?? throw new JsonException("A list is null.");
            return items.Any(item => item is null) ? throw new JsonException("A list has a null in it.") : [.. items];
        }

        public override void Write(Utf8JsonWriter writer, ValueList<T> value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, value.ToArray(), options);
    }
}
