using System.Text.RegularExpressions;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Says of a zone what it is, whom it binds and when, and which value draws its edge.</summary>
public static partial class ZoneSentences
{
    /// <summary>What people call the zone, beginning with a capital.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="partTitle">Title of its part where that is the id of something with a title, or null.</param>
    public static string Label(Zone zone, string? partTitle = null)
    {
        string called = Phrase(zone)?.Called ?? zone.Part.Replace('-', ' ');
        string part = called.Replace("{part}", partTitle ?? zone.Part, StringComparison.Ordinal);
        return Capital(RowLabels.Of(zone.Row)) + (part.Length == 0 ? "" : $": {part}");
    }

    /// <summary>One sentence: what it is, whom it keeps out or what it asks of them, when, and what draws its edge.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="words">Names of the plan's elements.</param>
    /// <param name="partTitle">Title of its part where that is the id of something with a title, or null.</param>
    public static string Of(Zone zone, Phrasebook words, string? partTitle = null)
    {
        ZonePhrase? phrase = Phrase(zone);
        string matter = phrase?.Matter ?? RowLabels.Of(zone.Row);
        string edge = phrase?.Edge ?? "its edge is drawn from {boundary}";
        string effect = Effect(zone, phrase?.Asks ?? "");
        return Capital(
            Placeholder()
                .Replace($"{matter}: {effect} {ZoneWords.Spoken(zone.When)}; {edge}.", m => Value(m.Groups[1].Value))
        );

        string Value(string name) =>
            name switch
            {
                "element" => words.Name(zone.ElementId)!,
                "part" => partTitle ?? zone.Part,
                "reach" => Said(zone.Reach),
                _ => Said(zone.Boundary ?? zone.Reach),
            };
    }

    private static string Effect(Zone zone, string asks) =>
        zone switch
        {
            { Effect: ZoneEffect.Excludes, Whom: Audience.Everyone } => "it keeps everyone out",
            { Effect: ZoneEffect.Excludes } => $"it keeps out {ZoneWords.Spoken(zone.Whom)}",
            { Effect: ZoneEffect.Informs, Whom: Audience.Everyone } => "everyone there is to know of it",
            { Effect: ZoneEffect.Informs } => $"{ZoneWords.Spoken(zone.Whom)} there are to know of it",
            { Whom: Audience.None } => $"it asks that {asks}",
            _ => $"it asks of {ZoneWords.Spoken(zone.Whom)} that {asks}",
        };

    private static string Said(Quantity? value) =>
        value is null ? "a value that can't be told" : ValueFormat.Planning(value);

    private static ZonePhrase? Phrase(Zone zone) =>
        ZonePhrases.All.FirstOrDefault(p => p.Row == zone.Row && (p.Part is null || p.Part == zone.Part));

    internal static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    [GeneratedRegex(@"\{([a-z]+)\}")]
    private static partial Regex Placeholder();
}
