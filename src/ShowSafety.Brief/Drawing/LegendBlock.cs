using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>The legend in columns: samples beside their words, filled row by row from the top.</summary>
internal sealed class LegendBlock
{
    private const double SampleWidth = 9;
    private const double SampleHeight = 4.4;
    private const double Between = 2;
    private const double RowGap = 1.2;

    private readonly List<(LegendEntry Entry, IReadOnlyList<SetLine> Lines)> entries;
    private readonly int columns;
    private readonly double columnWidth;

    public LegendBlock(IEnumerable<LegendEntry> legend, double widthMillimetres)
    {
        columns = Math.Max(1, (int)(widthMillimetres / 55));
        columnWidth = widthMillimetres / columns;
        double textWidth = columnWidth - SampleWidth - Between - 3;
        entries =
        [
            .. legend.Select(entry => (entry, LineBreaker.Break(entry.Text, TextStyles.DrawingLabel, textWidth))),
        ];
    }

    public double HeightMillimetres => Rows().Sum(RowHeight);

    public IEnumerable<PaperItem> Draw(PaperPoint topLeft)
    {
        double top = topLeft.Y;
        foreach ((LegendEntry Entry, IReadOnlyList<SetLine> Lines)[] row in Rows())
        {
            for (int i = 0; i < row.Length; i++)
            {
                double left = topLeft.X + (i * columnWidth);
                foreach (PaperItem item in Sample(row[i].Entry, left, top).Concat(Words(row[i].Lines, left, top)))
                {
                    yield return item;
                }
            }

            top += RowHeight(row);
        }
    }

    private IEnumerable<(LegendEntry Entry, IReadOnlyList<SetLine> Lines)[]> Rows() => entries.Chunk(columns);

    private static double RowHeight((LegendEntry Entry, IReadOnlyList<SetLine> Lines)[] row) =>
        Math.Max(SampleHeight, row.Max(e => e.Lines.Count) * TextStyles.DrawingLabel.LeadingMillimetres) + RowGap;

    private static IEnumerable<PaperItem> Words(IReadOnlyList<SetLine> lines, double left, double top)
    {
        TextStyle style = TextStyles.DrawingLabel;
        double down = Math.Max(0, (SampleHeight - style.LeadingMillimetres) / 2);
        return lines.Select(
            (line, i) =>
                new PaperText(
                    new(
                        left + SampleWidth + Between,
                        top + down + (i * style.LeadingMillimetres) + style.BaselineMillimetres
                    ),
                    line.Text.TrimEnd(),
                    style
                )
        );
    }

    private static IEnumerable<PaperItem> Sample(LegendEntry entry, double left, double top)
    {
        double middle = top + (SampleHeight / 2);
        if (entry.Marker is { } shape)
        {
            return Markers.Draw(shape, new(left + (SampleWidth / 2), middle), 2.4);
        }

        if (!entry.IsLine)
        {
            ValueList<PaperPoint> box =
            [
                new(left, top),
                new(left + SampleWidth, top),
                new(left + SampleWidth, top + SampleHeight),
                new(left, top + SampleHeight),
            ];
            return entry is { Outline: null, Hatch: null, FillGrey: null }
                ? []
                : [new PaperPath([box], true, entry.Outline, entry.FillGrey, entry.Hatch)];
        }

        PaperPoint from = new(left, middle);
        PaperPoint to = new(left + SampleWidth, middle);
        var line = new PaperPath(
            [
                [from, to],
            ],
            false,
            entry.Outline ?? Stroke.Thin
        );
        return entry.Arrow ? [line, Markers.ArrowHead(from, to, 2.6)] : [line];
    }
}
