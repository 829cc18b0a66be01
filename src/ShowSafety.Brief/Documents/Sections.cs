using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Documents;

/// <summary>Shared by the sections: capital letters, absent values.</summary>
internal static class Sections
{
    public static string Sentence(string phrase) =>
        phrase.Length == 0 ? phrase : char.ToUpperInvariant(phrase[0]) + phrase[1..];

    public static string OrNotStated(string? text) => string.IsNullOrWhiteSpace(text) ? BriefLabels.NotStated : text;

    /// <summary>Text with the numbers of its sources behind it.</summary>
    public static string WithSources(string text, string quoted) => quoted.Length == 0 ? text : $"{text} {quoted}";

    public static SectionHeading Head(string text) => new(1, text);
}
