using System.Text;

namespace ShowSafety.Brief.Typesetting;

/// <summary>Fills lines with words, one after the other.</summary>
internal sealed class LineBuilder(TextStyle style, double measureMillimetres)
{
    // Sums of widths carry rounding; a word that fits exactly must not be sent to the next line by the last bit.
    private const double SlackMillimetres = 1e-6;

    private readonly List<SetLine> lines = [];
    private readonly List<Fragment> line = [];
    private double lineWidth;
    private Fragment? space;

    public void Add(IReadOnlyList<Fragment> atom)
    {
        if (atom[0].IsLineFeed)
        {
            EndLine(false);
            return;
        }

        if (atom[0].IsSpace)
        {
            space ??= line.Count > 0 ? atom[0] : null;
            return;
        }

        AddWord(atom);
    }

    public IReadOnlyList<SetLine> Finish()
    {
        if (line.Count > 0 || lines.Count == 0)
        {
            EndLine(false);
        }

        return lines;
    }

    private void AddWord(IReadOnlyList<Fragment> word)
    {
        double wordWidth = word.Sum(Width);
        double spaceWidth = space is { } s ? Width(s) : 0;
        if (line.Count > 0 && lineWidth + spaceWidth + wordWidth > measureMillimetres + SlackMillimetres)
        {
            EndLine(space is not null);
            spaceWidth = 0;
        }

        if (wordWidth > measureMillimetres + SlackMillimetres)
        {
            AddByCharacter(word);
            return;
        }

        if (space is { } between)
        {
            line.Add(between);
        }

        line.AddRange(word);
        lineWidth += spaceWidth + wordWidth;
        space = null;
    }

    private void AddByCharacter(IReadOnlyList<Fragment> word)
    {
        space = null;
        foreach (Fragment fragment in word)
        {
            foreach (Rune rune in fragment.Text.EnumerateRunes())
            {
                var letter = new Fragment(rune.ToString(), fragment.Face);
                double width = Width(letter);
                if (line.Count > 0 && lineWidth + width > measureMillimetres + SlackMillimetres)
                {
                    EndLine(false);
                }

                line.Add(letter);
                lineWidth += width;
            }
        }
    }

    private void EndLine(bool atSpace)
    {
        lines.Add(new SetLine(Pieces(atSpace), lineWidth));
        line.Clear();
        lineWidth = 0;
        space = null;
    }

    /// <summary>Neighbours in one face become one piece; a line broken at a space keeps it, so that copied text reads on.</summary>
    private List<LinePiece> Pieces(bool atSpace)
    {
        var pieces = new List<LinePiece>();
        double x = 0;
        foreach (Fragment fragment in line)
        {
            if (pieces.Count > 0 && (pieces[^1].Face == fragment.Face || fragment.IsSpace))
            {
                pieces[^1] = pieces[^1] with { Text = pieces[^1].Text + fragment.Text };
            }
            else
            {
                pieces.Add(new LinePiece(x, fragment.Text, fragment.Face));
            }

            x =
                pieces[^1].XMillimetres
                + TextMeasure.WidthMillimetres(pieces[^1].Text, pieces[^1].Face, style.SizePoints);
        }

        if (atSpace && pieces.Count > 0)
        {
            pieces[^1] = pieces[^1] with { Text = pieces[^1].Text + " " };
        }

        return pieces;
    }

    private double Width(Fragment fragment) =>
        TextMeasure.WidthMillimetres(fragment.Text, fragment.Face, style.SizePoints);
}
