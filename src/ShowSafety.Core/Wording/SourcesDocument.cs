using System.Text;
using ShowSafety.Core.Citations;

namespace ShowSafety.Core.Wording;

/// <summary>Writes docs/sources.md from the registry of citations, so that the page and the outputs can't differ.</summary>
public static class SourcesDocument
{
    /// <summary>The page as Markdown with LF line ends.</summary>
    public static string Write()
    {
        var page = new StringBuilder(
            """
            # Sources

            Made from the registry in `src/ShowSafety.Core/Citations`; do not edit by hand. *Basis* says how well we know what a
            source says: whoever opens one that is "from memory" should correct the entry. Choices of this project are listed
            with the sources, because a number somebody chose must be as easy to find as one somebody published.


            """
        );
        page.Append("| id | source | edition | clause | basis | used for |\n|---|---|---|---|---|---|\n");
        foreach (Citation citation in CitationRegistry.All)
        {
            page.AppendJoin(
                    " | ",
                    $"| `{citation.Id}`",
                    Cell(citation.Title),
                    Cell(EditionLabels.Of(citation)),
                    Cell(citation.Clause),
                    BasisLabels.Of(citation.Basis),
                    Cell(citation.Use)
                )
                .Append(" |\n");
        }

        return page.ToString().ReplaceLineEndings("\n");
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
