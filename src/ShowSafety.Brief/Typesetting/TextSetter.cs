namespace ShowSafety.Brief.Typesetting;

/// <summary>Sets text as lines that may be parted by a page, but never leave a single line behind or ahead.</summary>
internal static class TextSetter
{
    public static List<Slice> Lines(
        RichText text,
        TextStyle style,
        Tag tag,
        double leftMillimetres,
        double widthMillimetres,
        double gapMillimetres
    )
    {
        IReadOnlyList<SetLine> lines = LineBreaker.Break(text, style, widthMillimetres);
        var slices = new List<Slice>(lines.Count);
        for (int i = 0; i < lines.Count; i++)
        {
            slices.Add(
                new Slice(style.LeadingMillimetres, [.. Items(lines[i], style, leftMillimetres, 0)])
                {
                    SpaceBefore = i == 0 ? gapMillimetres : 0,
                    KeepWithNext = i + 1 < lines.Count && (i == 0 || i == lines.Count - 2),
                }
            );
        }

        return BlockSetter.Wrapped(slices, tag);
    }

    /// <summary>The pieces of one line whose top lies so low.</summary>
    public static IEnumerable<TextItem> Items(
        SetLine line,
        TextStyle style,
        double leftMillimetres,
        double topMillimetres,
        bool artifact = false
    ) =>
        line.Pieces.Select(piece => new TextItem(
            leftMillimetres + piece.XMillimetres,
            topMillimetres + style.BaselineMillimetres,
            piece.Text,
            style.With(piece.Face),
            artifact
        ));
}
