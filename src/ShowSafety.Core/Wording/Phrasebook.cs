using System.Collections.Frozen;
using System.Text.RegularExpressions;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>
/// Makes sentences from findings and labels from figures, in English. Needs the names of the plan's elements, so that
/// a sentence says "Bench north" and not an id.
/// </summary>
/// <param name="elementNames">Name of each element by its id; an id that is not there is printed itself.</param>
public sealed partial class Phrasebook(IReadOnlyDictionary<string, string> elementNames)
{
    private static readonly FrozenDictionary<string, FindingPhrase> Findings = AllFindings()
        .ToFrozenDictionary(p => p.Code);

    private static readonly FrozenDictionary<string, FigurePhrase> Figures = AllFigures()
        .ToFrozenDictionary(p => p.Key);

    /// <summary>Codes of all findings there is a sentence for.</summary>
    public static ValueList<string> Codes { get; } = [.. AllFindings().Select(p => p.Code)];

    /// <summary>Keys of all figures there is a label for.</summary>
    public static ValueList<string> FigureKeys { get; } = [.. AllFigures().Select(p => p.Key)];

    /// <summary>Every phrase there is, for the house test on forbidden words.</summary>
    public static IEnumerable<string> AllPhrases() =>
        AllFindings()
            .SelectMany(p => new[] { p.Sentence, p.Remedy })
            .Concat(AllFigures().Select(p => p.Label))
            .Concat(Enum.GetValues<ZoneRow>().Select(RowLabels.Of));

    /// <summary>The sentence of a finding.</summary>
    /// <exception cref="KeyNotFoundException">There is no sentence for its code.</exception>
    public string Sentence(Finding finding) => Filled(Findings[finding.Code].Sentence, finding);

    /// <summary>What to do about a finding.</summary>
    /// <exception cref="KeyNotFoundException">There is no sentence for its code.</exception>
    public string Remedy(Finding finding) => Filled(Findings[finding.Code].Remedy, finding);

    /// <summary>The label of a figure, with the name of its element and part.</summary>
    /// <exception cref="KeyNotFoundException">There is no label for its key.</exception>
    public string Label(Figure figure) =>
        string.Join(
            ", ",
            new[] { Figures[figure.Key].Label, Name(figure.ElementId), Name(figure.PartId) }.Where(t => t is not null)
        );

    /// <summary>Name of an element: as the plan has it, else its id; null for none.</summary>
    public string? Name(string? elementId) =>
        elementId is null ? null : elementNames.GetValueOrDefault(elementId, elementId);

    private string Filled(string template, Finding finding)
    {
        string text = Placeholder().Replace(template, m => Value(m.Groups[1].Value, m.Groups[2].Success, finding));
        return text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
    }

    private string Value(string name, bool best, Finding finding) =>
        name switch
        {
            "element" => Name(finding.ElementId) ?? "the plan",
            "row" => finding.Row is { } row ? RowLabels.Of(row) : "no row",
            _ => finding.Arguments.FirstOrDefault(a => a.Name == name) switch
            {
                { Quantity: { } quantity } => best ? ValueFormat.Best(quantity) : ValueFormat.Planning(quantity),
                { Text: { } text } => Name(text)!,
                _ => throw new KeyNotFoundException($"Finding '{finding.Code}' has no argument '{name}'."),
            },
        };

    private static IEnumerable<FindingPhrase> AllFindings() =>
        [
            .. PlanPhrases.Findings,
            .. SoundPhrases.Findings,
            .. ExposurePhrases.Findings,
            .. ExhaustPhrases.Findings,
            .. IndoorAirPhrases.Findings,
            .. DebrisPhrases.Findings,
            .. SitePhrases.Findings,
            .. LayoutPhrases.Findings,
        ];

    private static IEnumerable<FigurePhrase> AllFigures() =>
        [
            .. SoundPhrases.Figures,
            .. ExposurePhrases.Figures,
            .. ExhaustPhrases.Figures,
            .. IndoorAirPhrases.Figures,
            .. DebrisPhrases.Figures,
            .. SitePhrases.Figures,
            .. LayoutPhrases.Figures,
        ];

    [GeneratedRegex(@"\{([a-zA-Z]+)(:best)?\}")]
    private static partial Regex Placeholder();
}
