using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>Something drawn at a place of the site.</summary>
internal abstract record DrawingElement
{
    /// <summary>The points that decide how much of the site the drawing must show.</summary>
    public abstract IEnumerable<PlanPoint> Points { get; }

    /// <summary>Labels stay off it: for what must be seen whole.</summary>
    public bool KeepClear { get; init; }
}

/// <summary>
/// A filled or outlined area: one or more rings, closed by themselves, filled by the even-odd rule, so that a ring
/// inside another is a hole. <see cref="FillGrey"/> from 0 (black) to 1 (white); null leaves what lies below.
/// </summary>
internal sealed record Area(
    ValueList<ValueList<PlanPoint>> Rings,
    Stroke? Outline = null,
    Hatch? Hatch = null,
    double? FillGrey = null
) : DrawingElement
{
    public override IEnumerable<PlanPoint> Points => Rings.SelectMany(ring => ring);
}

/// <summary>An open line through points, with an arrow head at its end on demand.</summary>
internal sealed record Polyline(ValueList<PlanPoint> Line, Stroke Stroke, bool ArrowAtEnd = false) : DrawingElement
{
    public override IEnumerable<PlanPoint> Points => Line;
}

/// <summary>The shapes a marker can have; all are told apart by form alone.</summary>
internal enum MarkerShape
{
    Disc,
    Ring,
    Square,
    OpenSquare,
    Triangle,
    Cross,
    Plus,
    Diamond,
}

/// <summary>A mark of fixed size on paper at a point of the site.</summary>
internal sealed record Marker(PlanPoint At, MarkerShape Shape, double SizeMillimetres = 2.4) : DrawingElement
{
    public override IEnumerable<PlanPoint> Points => [At];
}

/// <summary>
/// Words that belong to a point of the site. They are set beside it where there is room; the lower the rank, the
/// earlier the label chooses. A centred label, the name of an area, tries to stand on its point first. A label that finds no room becomes a number, explained in the legend: none is dropped.
/// </summary>
internal sealed record Label(PlanPoint At, string Text, int Rank = 5, bool Strong = false, bool Centred = false)
    : DrawingElement
{
    public override IEnumerable<PlanPoint> Points => [At];
}
