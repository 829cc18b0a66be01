namespace ShowSafety.Brief.Typesetting;

/// <summary>Turns blocks into slices: everything about line breaks and white, nothing about pages.</summary>
internal sealed class BlockSetter(double leftMillimetres, double widthMillimetres)
{
    private const double ParagraphGap = 2.2;
    private const double ListIndent = 6;

    public static BlockSetter ForBody { get; } = new(Paper.SideMillimetres, Paper.BodyWidthMillimetres);

    public IEnumerable<Slice> Set(IEnumerable<Block> blocks)
    {
        bool startsPage = false;
        foreach (Block block in blocks)
        {
            if (block is PageBreak)
            {
                startsPage = true;
                continue;
            }

            foreach (Slice slice in Set(block))
            {
                yield return startsPage ? slice with { StartsPage = true } : slice;
                startsPage = false;
            }
        }
    }

    private List<Slice> Set(Block block) =>
        block switch
        {
            DocumentTitle title => SetHeading(title.Text, 1, TextStyles.Title, 0),
            SectionHeading heading => SetHeading(
                heading.Text,
                heading.Level,
                StyleOf(heading.Level),
                GapOf(heading.Level)
            ),
            Paragraph paragraph => SetParagraph(paragraph),
            ListBlock list => SetList(list),
            Table table => new TableSetter(table, leftMillimetres, widthMillimetres).Set(),
            Illustration figure => SetFigure(figure),
            Callout callout => CalloutSetter.Set(callout, leftMillimetres, widthMillimetres),
            SignatureLines lines => SignatureSetter.Set(lines, leftMillimetres, widthMillimetres),
            KeepTogether together => Held(Set(together.Blocks)),
            _ => throw new ArgumentOutOfRangeException(nameof(block), block, "No setter for this block."),
        };

    private static TextStyle StyleOf(int level) =>
        level switch
        {
            1 => TextStyles.Heading1,
            2 => TextStyles.Heading2,
            _ => TextStyles.Heading3,
        };

    private static double GapOf(int level) => level == 1 ? 8 : 5;

    private List<Slice> SetHeading(string text, int level, TextStyle style, double gap)
    {
        Tag tag = level switch
        {
            1 => Tag.Heading1,
            2 => Tag.Heading2,
            _ => Tag.Heading3,
        };
        List<Slice> slices = TextSetter.Lines(text, style, tag, leftMillimetres, widthMillimetres, gap);
        slices[0] = slices[0] with { Items = [new OutlineEntry(level, text), .. slices[0].Items] };
        return [.. slices.Select(slice => slice with { KeepWithNext = true })];
    }

    private List<Slice> SetParagraph(Paragraph paragraph)
    {
        TextStyle style = paragraph.Style ?? TextStyles.Body;
        List<Slice> slices = TextSetter.Lines(
            paragraph.Text,
            style,
            Tag.Paragraph,
            leftMillimetres,
            widthMillimetres,
            ParagraphGap
        );
        return paragraph.KeepWithNext ? [.. slices.Select(slice => slice with { KeepWithNext = true })] : slices;
    }

    private List<Slice> SetList(ListBlock list)
    {
        var slices = new List<Slice>();
        for (int i = 0; i < list.Items.Count; i++)
        {
            string mark = ListMarks.Of(list.Mark, i + 1);
            List<Slice> lines = TextSetter.Lines(
                list.Items[i],
                TextStyles.Body,
                Tag.ListBody,
                leftMillimetres + ListIndent,
                widthMillimetres - ListIndent,
                i == 0 ? ParagraphGap : ParagraphGap / 2
            );
            PageItem[] label =
            [
                new OpenTag(Tag.ListItem),
                new OpenTag(Tag.ListLabel),
                new TextItem(leftMillimetres, TextStyles.Body.BaselineMillimetres, mark, ListMarks.StyleOf(list.Mark)),
                new CloseTag(),
            ];
            lines[0] = lines[0] with { Items = [.. label, .. lines[0].Items] };
            lines[^1] = lines[^1] with { Items = [.. lines[^1].Items, new CloseTag()] };
            slices.AddRange(lines);
        }

        return Wrapped(slices, Tag.List);
    }

    private List<Slice> SetFigure(Illustration figure)
    {
        double x = leftMillimetres + Math.Max(0, (widthMillimetres - figure.Picture.WidthMillimetres) / 2);
        var slices = new List<Slice>
        {
            new(figure.Picture.HeightMillimetres, [new FigureItem(x, 0, figure.Picture, figure.AltText)])
            {
                SpaceBefore = ParagraphGap,
                KeepWithNext = figure.Caption is not null,
            },
        };
        if (figure.Caption is { } caption)
        {
            slices.AddRange(
                TextSetter.Lines(caption, TextStyles.Note, Tag.Paragraph, leftMillimetres, widthMillimetres, 1.5)
            );
        }

        return slices;
    }

    private static List<Slice> Held(IEnumerable<Slice> slices)
    {
        List<Slice> all = [.. slices];
        for (int i = 0; i + 1 < all.Count; i++)
        {
            all[i] = all[i] with { KeepWithNext = true };
        }

        return all;
    }

    internal static List<Slice> Wrapped(List<Slice> slices, Tag tag)
    {
        if (slices.Count > 0)
        {
            slices[0] = slices[0] with { Items = [new OpenTag(tag), .. slices[0].Items] };
            slices[^1] = slices[^1] with { Items = [.. slices[^1].Items, new CloseTag()] };
        }

        return slices;
    }
}
