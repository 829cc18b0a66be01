using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Typesetting;

/// <summary>Sets a table as one slice a row, with its head to repeat.</summary>
internal sealed class TableSetter
{
    private const double PadX = 1.8;
    private const double PadY = 1.1;
    private const double Gap = 2.6;

    // A row higher than this is parted between its lines; every other row is kept whole.
    private static readonly double TallestWholeRow = Paper.BodyHeightMillimetres * 0.6;

    private readonly Table table;
    private readonly double left;
    private readonly double width;
    private readonly double[] lefts;
    private readonly double[] widths;

    public TableSetter(Table table, double leftMillimetres, double widthMillimetres)
    {
        this.table = table;
        left = leftMillimetres;
        width = widthMillimetres;
        double shares = table.Columns.Sum(column => column.Share);
        widths = [.. table.Columns.Select(column => widthMillimetres * column.Share / shares)];
        lefts = new double[widths.Length];
        for (int i = 0; i < lefts.Length; i++)
        {
            lefts[i] = leftMillimetres + widths.Take(i).Sum();
        }
    }

    public List<Slice> Set()
    {
        if (table.Rows.Count == 0)
        {
            return TextSetter.Lines(table.WhenEmpty, TextStyles.Note, Tag.Paragraph, left, width, Gap);
        }

        Slice head = HeadSlice(false) with { SpaceBefore = Gap, KeepWithNext = true };
        return BlockSetter.Wrapped([head, .. Rows()], Tag.Table);
    }

    private List<Slice> Rows()
    {
        Slice? tableHead = table.HasHead ? HeadSlice(true) : null;
        Slice? repeated = tableHead;
        var rows = new List<Slice>();
        foreach (ValueList<RichText> row in table.Rows)
        {
            if (IsGroupHead(row))
            {
                rows.Add(GroupHead(row[0], false) with { Repeated = tableHead, KeepWithNext = true });
                repeated = Below(tableHead, GroupHead(row[0], true));
                continue;
            }

            rows.AddRange(RowSlices(row).Select(slice => slice with { Repeated = repeated }));
        }

        if (rows.Count > 2)
        {
            // The last two rows hold together, so that no page begins with a lonely last row.
            rows[^2] = rows[^2] with
            {
                KeepWithNext = true,
            };
        }

        return rows;
    }

    private bool IsGroupHead(ValueList<RichText> row) => row.Count == 1 && table.Columns.Count > 1;

    private Slice GroupHead(RichText text, bool artifact)
    {
        TextStyle style = TextStyles.CellHead;
        IReadOnlyList<SetLine> lines = LineBreaker.Break(text, style, width - (2 * PadX));
        double height = (lines.Count * style.LeadingMillimetres) + (2 * PadY) + 1;
        var items = new List<PageItem> { new RuleItem(left, height, left + width, height, 0.3) };
        IEnumerable<PageItem> words = lines.SelectMany(
            (line, i) => TextSetter.Items(line, style, left + PadX, PadY + 1 + (i * style.LeadingMillimetres), artifact)
        );
        items.AddRange(
            artifact
                ? words
                :
                [
                    new OpenTag(Tag.TableRow),
                    new OpenTag(Tag.TableHead, table.Columns.Count),
                    .. words,
                    new CloseTag(),
                    new CloseTag(),
                ]
        );
        return new Slice(height, items);
    }

    private static Slice Below(Slice? upper, Slice lower) =>
        upper is null
            ? lower
            : new(
                upper.HeightMillimetres + lower.HeightMillimetres,
                [.. upper.Items, .. lower.Items.Select(item => item.Lowered(upper.HeightMillimetres))]
            );

    private Slice HeadSlice(bool artifact)
    {
        if (!table.HasHead)
        {
            return new Slice(0.5, [new RuleItem(left, 0, left + width, 0, 0.5)]);
        }

        var cells = new List<IReadOnlyList<SetLine>>();
        for (int i = 0; i < widths.Length; i++)
        {
            cells.Add(LineBreaker.Break(table.Columns[i].Head, TextStyles.CellHead, widths[i] - (2 * PadX)));
        }

        int lines = cells.Max(cell => cell.Count);
        double height = (lines * TextStyles.CellHead.LeadingMillimetres) + (2 * PadY);
        var items = new List<PageItem>
        {
            new RuleItem(left, 0, left + width, 0, 0.5),
            new RuleItem(left, height, left + width, height, 0.3),
        };
        items.AddRange(RowItems(cells, TextStyles.CellHead, _ => Tag.TableHead, artifact));
        return new Slice(height, items);
    }

    private IEnumerable<Slice> RowSlices(ValueList<RichText> row)
    {
        List<IReadOnlyList<SetLine>> cells = [];
        for (int i = 0; i < widths.Length; i++)
        {
            RichText text = i < row.Count ? row[i] : RichText.Empty;
            cells.Add(LineBreaker.Break(text, TextStyles.Cell, widths[i] - (2 * PadX)));
        }

        int lines = cells.Max(cell => cell.Count);
        double leading = TextStyles.Cell.LeadingMillimetres;
        int linesAtOnce = lines * leading <= TallestWholeRow ? lines : (int)(TallestWholeRow / 2 / leading);
        for (int from = 0; from < lines; from += linesAtOnce)
        {
            int count = Math.Min(linesAtOnce, lines - from);
            int start = from;
            yield return RowSlice([.. cells.Select(cell => (IReadOnlyList<SetLine>)[.. cell.Skip(start).Take(count)])]);
        }
    }

    private Slice RowSlice(List<IReadOnlyList<SetLine>> cells)
    {
        int lines = cells.Max(cell => cell.Count);
        double height = (lines * TextStyles.Cell.LeadingMillimetres) + (2 * PadY);
        var items = new List<PageItem> { new RuleItem(left, height, left + width, height, 0.13, 0.35) };
        items.AddRange(RowItems(cells, TextStyles.Cell, TagOf, false));
        return new Slice(height, items);
    }

    private Tag TagOf(int column) => column == 0 && table.FirstColumnIsHead ? Tag.TableHead : Tag.TableCell;

    private List<PageItem> RowItems(
        List<IReadOnlyList<SetLine>> cells,
        TextStyle style,
        Func<int, Tag> tagOf,
        bool artifact
    )
    {
        var items = new List<PageItem>();
        for (int i = 0; i < cells.Count; i++)
        {
            IEnumerable<PageItem> text = CellItems(cells[i], i, style, artifact);
            items.AddRange(artifact ? text : [new OpenTag(tagOf(i)), .. text, new CloseTag()]);
        }

        return artifact ? items : [new OpenTag(Tag.TableRow), .. items, new CloseTag()];
    }

    private IEnumerable<PageItem> CellItems(IReadOnlyList<SetLine> lines, int column, TextStyle style, bool artifact)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            double x =
                table.Columns[column].Alignment == ColumnAlignment.Right
                    ? lefts[column] + widths[column] - PadX - lines[i].WidthMillimetres
                    : lefts[column] + PadX;
            foreach (
                TextItem item in TextSetter.Items(lines[i], style, x, PadY + (i * style.LeadingMillimetres), artifact)
            )
            {
                yield return item;
            }
        }
    }
}
