using System.Globalization;
using ShowSafety.Core;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Documents;

/// <summary>The sources a brief rests on, each with the number it is quoted by.</summary>
internal sealed class SourceNumbers
{
    private readonly List<Citation> sources;
    private readonly Dictionary<string, int> numbers;

    private SourceNumbers(List<Citation> sources)
    {
        this.sources = sources;
        numbers = sources.Select((source, index) => (source.Id, index + 1)).ToDictionary(StringComparer.Ordinal);
    }

    public IReadOnlyList<Citation> Sources => sources;

    public static SourceNumbers Of(BriefInput input)
    {
        HashSet<string> used =
        [
            .. input.Findings.SelectMany(finding => finding.Citations),
            .. input.Findings.SelectMany(f => f.Arguments).SelectMany(a => Of(a.Quantity)),
            .. input.Zones.SelectMany(zone => zone.Citations),
            .. input.Zones.SelectMany(zone => Of(zone.Boundary).Concat(Of(zone.Reach))),
            .. input.Figures.SelectMany(figure => figure.Value.Citations),
        ];
        return new([.. CitationRegistry.All.Where(citation => used.Contains(citation.Id))]);
    }

    /// <summary>The numbers of some citations in brackets; empty when there are none.</summary>
    public string Quoted(IEnumerable<string> citations)
    {
        int[] quoted = [.. citations.Where(numbers.ContainsKey).Select(id => numbers[id]).Distinct().Order()];
        return quoted.Length == 0
            ? ""
            : $"[{string.Join(", ", quoted.Select(n => n.ToString(CultureInfo.InvariantCulture)))}]";
    }

    private static ValueList<string> Of(Quantity? quantity) => quantity?.Citations ?? [];
}
