using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>Something inked at a place on paper, in millimetres from the top left of its picture.</summary>
internal abstract record PaperItem;

/// <summary>Rings or lines; even-odd filling. A path that is not closed is never filled.</summary>
internal sealed record PaperPath(
    ValueList<ValueList<PaperPoint>> Rings,
    bool Closed,
    Stroke? Outline = null,
    double? FillGrey = null,
    Hatch? Hatch = null
) : PaperItem;

/// <summary>A full circle.</summary>
internal sealed record PaperDisc(PaperPoint Centre, double Radius, Stroke? Outline, double? FillGrey) : PaperItem;

/// <summary>One line of text, from its left end on its baseline.</summary>
internal sealed record PaperText(PaperPoint Start, string Text, TextStyle Style) : PaperItem
{
    public double WidthMillimetres => TextMeasure.WidthMillimetres(Text, Style);
}

/// <summary>A named group. A layer with a clip shows only what lies within it.</summary>
internal sealed record PaperLayer(string Name, ValueList<PaperItem> Items, PaperBox? Clip = null);

/// <summary>A picture on paper, finished: every line, hatch and word has its place in millimetres.</summary>
internal sealed record PaperPicture(
    string Title,
    string Description,
    double WidthMillimetres,
    double HeightMillimetres,
    DrawingFrame Frame,
    ValueList<PaperLayer> Layers
);
