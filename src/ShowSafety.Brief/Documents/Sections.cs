using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>Shared by the sections: capital letters, absent values.</summary>
internal static class Sections
{
    public static string Sentence(string phrase) =>
        phrase.Length == 0 ? phrase : char.ToUpperInvariant(phrase[0]) + phrase[1..];

    public static string OrNotStated(string? text) => string.IsNullOrWhiteSpace(text) ? BriefLabels.NotStated : text;

    /// <summary>Names of an element and its part; the plan itself for none.</summary>
    public static string Place(this Phrasebook words, string? elementId, string? partId) =>
        elementId is null
            ? BriefLabels.WholePlan
            : string.Join(", ", new[] { elementId, partId }.Select(words.Name).Where(name => name is not null));

    /// <summary>Text with the numbers of its sources behind it.</summary>
    public static string WithSources(string text, string quoted) => quoted.Length == 0 ? text : $"{text} {quoted}";

    /// <summary>Rows under a head of their own for each group, in the order the groups first appear.</summary>
    public static ValueList<ValueList<RichText>> Grouped<T>(
        IEnumerable<T> items,
        Func<T, string> groupOf,
        Func<T, ValueList<RichText>> row
    ) =>
        [
            .. items
                .GroupBy(groupOf, StringComparer.Ordinal)
                .SelectMany(group => group.Select(row).Prepend([RichText.Strong(group.Key)])),
        ];

    public static SectionHeading Head(string text) => new(1, text);
}
