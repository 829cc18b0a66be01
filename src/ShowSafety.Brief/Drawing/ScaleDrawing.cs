using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>A named group of elements, drawn in order.</summary>
internal sealed record Layer(string Name, ValueList<DrawingElement> Elements);

/// <summary>One line of the legend: a sample of how something is drawn, and what it is.</summary>
internal sealed record LegendEntry(
    string Text,
    Stroke? Outline = null,
    Hatch? Hatch = null,
    double? FillGrey = null,
    MarkerShape? Marker = null,
    bool IsLine = false,
    bool Arrow = false
);

/// <summary>
/// A drawing as data: layers from the bottom up, in metres of the site frame. It knows nothing of paper; a
/// <see cref="DrawingSheet"/> puts it there at a stated scale.
/// </summary>
internal sealed record ScaleDrawing(
    string Title,
    string Description,
    ValueList<Layer> Layers,
    ValueList<LegendEntry> Legend
)
{
    /// <summary>Where north lies, in degrees clockwise from +y; null when it was not given.</summary>
    public double? NorthDegrees { get; init; }

    /// <summary>What must be shown; null shows everything that is drawn.</summary>
    public MetreBox? Extent { get; init; }

    /// <summary>A line of text over the whole drawing, such as NOT TO RUN; null for none.</summary>
    public string? Banner { get; init; }

    public MetreBox ExtentOrContent =>
        Extent
        ?? MetreBox.Around(Layers.SelectMany(l => l.Elements).SelectMany(e => e.Points).Where(MetreBox.IsFinite))
        ?? new MetreBox(0, 0, 10, 10);
}
