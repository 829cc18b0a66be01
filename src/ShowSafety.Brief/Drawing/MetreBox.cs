using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>An upright box of the site in metres, never empty: a box of one point has no width.</summary>
internal readonly record struct MetreBox(double LeftMetres, double BottomMetres, double RightMetres, double TopMetres)
{
    public double WidthMetres => RightMetres - LeftMetres;

    public double HeightMetres => TopMetres - BottomMetres;

    public PlanPoint Centre => new((LeftMetres + RightMetres) / 2, (BottomMetres + TopMetres) / 2);

    public static bool IsFinite(PlanPoint point) => double.IsFinite(point.XMetres) && double.IsFinite(point.YMetres);

    public bool Overlaps(MetreBox other) =>
        LeftMetres < other.RightMetres
        && other.LeftMetres < RightMetres
        && BottomMetres < other.TopMetres
        && other.BottomMetres < TopMetres;

    /// <summary>The smallest box that holds both.</summary>
    public MetreBox With(MetreBox other) =>
        new(
            Math.Min(LeftMetres, other.LeftMetres),
            Math.Min(BottomMetres, other.BottomMetres),
            Math.Max(RightMetres, other.RightMetres),
            Math.Max(TopMetres, other.TopMetres)
        );

    public MetreBox Grown(double metres) =>
        new(LeftMetres - metres, BottomMetres - metres, RightMetres + metres, TopMetres + metres);

    /// <summary>The box round all points; null when there is none.</summary>
    public static MetreBox? Around(IEnumerable<PlanPoint> points)
    {
        MetreBox? box = null;
        foreach (PlanPoint point in points)
        {
            MetreBox have = box ?? new(point.XMetres, point.YMetres, point.XMetres, point.YMetres);
            box = new(
                Math.Min(have.LeftMetres, point.XMetres),
                Math.Min(have.BottomMetres, point.YMetres),
                Math.Max(have.RightMetres, point.XMetres),
                Math.Max(have.TopMetres, point.YMetres)
            );
        }

        return box;
    }
}
