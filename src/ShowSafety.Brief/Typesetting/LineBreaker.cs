using System.Text;

namespace ShowSafety.Brief.Typesetting;

/// <summary>A piece of a line in one face, at its distance from the line's left end.</summary>
internal sealed record LinePiece(double XMillimetres, string Text, Face Face);

/// <summary>One set line: its pieces from left to right, and how wide it is.</summary>
internal sealed record SetLine(IReadOnlyList<LinePiece> Pieces, double WidthMillimetres)
{
    public string Text => string.Concat(Pieces.Select(piece => piece.Text));
}

/// <summary>
/// Breaks text into lines no wider than the measure: at spaces, after hyphens, dashes and slashes, and, only where a
/// single word is wider than the whole measure, between its characters. Line feeds always break.
/// </summary>
internal static class LineBreaker
{
    public static IReadOnlyList<SetLine> Break(RichText text, TextStyle style, double widthMillimetres)
    {
        var builder = new LineBuilder(style, widthMillimetres);
        foreach (IReadOnlyList<Fragment> atom in Atoms(text, style.Face))
        {
            builder.Add(atom);
        }

        return builder.Finish();
    }

    /// <summary>Words, spaces and line feeds; a word may change face on its way.</summary>
    private static List<IReadOnlyList<Fragment>> Atoms(RichText text, Face face)
    {
        var atoms = new List<IReadOnlyList<Fragment>>();
        var word = new List<Fragment>();
        foreach (TextRun run in text.Runs)
        {
            var letters = new StringBuilder();
            string cleaned = Cleaned(run.Text);
            for (int i = 0; i < cleaned.Length; i++)
            {
                char c = cleaned[i];
                if (c is ' ' or '\n')
                {
                    EndWord(atoms, word, letters, run.Face ?? face);
                    atoms.Add([new Fragment(c.ToString(), run.Face ?? face)]);
                    continue;
                }

                letters.Append(c);
                if (MayBreakAfter(c) && letters.Length > 2 && i + 1 < cleaned.Length && char.IsLetter(cleaned[i + 1]))
                {
                    EndWord(atoms, word, letters, run.Face ?? face);
                }
            }

            EndPiece(word, letters, run.Face ?? face);
        }

        EndWord(atoms, word, new StringBuilder(), face);
        return atoms;
    }

    // Dates, ranges and fractions stay whole: a break needs a letter to go on with.
    private static bool MayBreakAfter(char c) => c is '-' or '–' or '—' or '/';

    private static string Cleaned(string text) =>
        string.Concat(text.ReplaceLineEndings("\n").Select(c => c != '\n' && char.IsControl(c) ? ' ' : c));

    private static void EndPiece(List<Fragment> word, StringBuilder letters, Face face)
    {
        if (letters.Length > 0)
        {
            word.Add(new Fragment(letters.ToString(), face));
            letters.Clear();
        }
    }

    private static void EndWord(
        List<IReadOnlyList<Fragment>> atoms,
        List<Fragment> word,
        StringBuilder letters,
        Face face
    )
    {
        EndPiece(word, letters, face);
        if (word.Count > 0)
        {
            atoms.Add([.. word]);
            word.Clear();
        }
    }
}

/// <summary>A stretch of characters in one face.</summary>
internal readonly record struct Fragment(string Text, Face Face)
{
    public bool IsSpace => Text == " ";

    public bool IsLineFeed => Text == "\n";
}
