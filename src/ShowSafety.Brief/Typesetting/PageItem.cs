using ShowSafety.Brief.Drawing;

namespace ShowSafety.Brief.Typesetting;

/// <summary>The structure a reader is told of: the standard structure types of PDF (ISO 32000-1:2008, 14.8.4).</summary>
internal enum Tag
{
    Heading1,
    Heading2,
    Heading3,
    Paragraph,
    List,
    ListItem,
    ListLabel,
    ListBody,
    Table,
    TableRow,
    TableHead,
    TableCell,
}

/// <summary>Something at a place, in millimetres; within a slice from the slice's top, on a page from the page's.</summary>
internal abstract record PageItem
{
    /// <summary>The same, lower by so much.</summary>
    public abstract PageItem Lowered(double byMillimetres);
}

/// <summary>A piece of a line on its baseline. An artifact is not read out: it repeats or frames something.</summary>
internal sealed record TextItem(double X, double Baseline, string Text, TextStyle Style, bool Artifact = false)
    : PageItem
{
    public double Width => TextMeasure.WidthMillimetres(Text.TrimEnd(' '), Style);

    public override PageItem Lowered(double byMillimetres) => this with { Baseline = Baseline + byMillimetres };
}

/// <summary>A ruled line. Never read out.</summary>
internal sealed record RuleItem(double X1, double Y1, double X2, double Y2, double WidthMillimetres, double Grey = 0)
    : PageItem
{
    public override PageItem Lowered(double byMillimetres) =>
        this with
        {
            Y1 = Y1 + byMillimetres,
            Y2 = Y2 + byMillimetres,
        };
}

/// <summary>A filled or outlined box. Never read out.</summary>
internal sealed record BoxItem(double X, double Y, double Width, double Height, double? FillGrey, double? Outline)
    : PageItem
{
    public override PageItem Lowered(double byMillimetres) => this with { Y = Y + byMillimetres };
}

/// <summary>A picture with the text that stands for it.</summary>
internal sealed record FigureItem(double X, double Y, PaperPicture Picture, string AltText) : PageItem
{
    public override PageItem Lowered(double byMillimetres) => this with { Y = Y + byMillimetres };
}

/// <summary>What follows, up to the matching close, belongs to a structure element.</summary>
internal sealed record OpenTag(Tag Tag, int Columns = 1) : PageItem
{
    public override PageItem Lowered(double byMillimetres) => this;
}

/// <summary>Ends the innermost open structure element.</summary>
internal sealed record CloseTag : PageItem
{
    public override PageItem Lowered(double byMillimetres) => this;
}

/// <summary>A place the document's outline points at.</summary>
internal sealed record OutlineEntry(int Level, string Text) : PageItem
{
    public override PageItem Lowered(double byMillimetres) => this;
}
