using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// A patch of ground about an engine: all places of a narrow sector between two distances. What is asked of it are
/// ranges that no place in it leaves.
/// </summary>
public readonly record struct Patch
{
    // Far above the rounding of the sums below, far under anything that matters.
    private const double RoundingMetres = 1e-9;
    private const double RoundingCosine = 1e-12;

    private readonly Sector _sector;

    /// <summary>Makes a patch.</summary>
    /// <param name="sector">The sector.</param>
    /// <param name="nearMetres">The smaller distance, 0 or more.</param>
    /// <param name="farMetres">The larger distance.</param>
    public Patch(Sector sector, double nearMetres, double farMetres)
    {
        _sector = sector;
        NearMetres = nearMetres;
        FarMetres = farMetres;
    }

    /// <summary>The distance from the engine it begins at, in metres.</summary>
    public double NearMetres { get; }

    /// <summary>The distance from the engine it ends at, in metres.</summary>
    public double FarMetres { get; }

    /// <summary>Middle of a circle that covers the patch.</summary>
    public PlanPoint Middle => At(_sector.MiddleX, _sector.MiddleY, MiddleMetres);

    /// <summary>
    /// Radius of that circle in metres: it reaches the corners, and the farthest places of a patch from a point of its
    /// middle ray are corners, because the distance is largest at the ends of arcs and of sides.
    /// </summary>
    public double RadiusMetres =>
        Math.Sqrt(Square((FarMetres - NearMetres) / 2) + (MiddleMetres * FarMetres * Square(_sector.HalfChord)))
        + RoundingMetres;

    /// <summary>Cosines of the angles, seen from above, from the engine of the patch along its exhaust.</summary>
    public (double Least, double Most) OwnCosines => _sector.OwnCosines;

    private double MiddleMetres => (NearMetres + FarMetres) / 2;

    /// <summary>Whether a point is the engine's place and a unit vector the axis of its exhaust.</summary>
    public bool IsSeenFrom(PlanPoint from, double axisX, double axisY) =>
        from == _sector.Seed && axisX == _sector.AxisX && axisY == _sector.AxisY;

    /// <summary>Distances along the ground from a point to places of the patch, in metres.</summary>
    public (double Least, double Most) DistancesMetres(PlanPoint from)
    {
        double x = from.XMetres - _sector.Seed.XMetres;
        double y = from.YMetres - _sector.Seed.YMetres;
        double away = Math.Sqrt((x * x) + (y * y));
        if (away == 0)
        {
            return (NearMetres, FarMetres);
        }

        // Within the sector's directions the nearest place lies on the way to the engine, else on a side.
        double least = _sector.Holds(x, y)
            ? Math.Max(0, Math.Max(NearMetres - away, away - FarMetres))
            : Math.Min(ToSide(x, y, _sector.FromX, _sector.FromY), ToSide(x, y, _sector.ToX, _sector.ToY));
        double most = _sector.Holds(-x, -y)
            ? away + FarMetres
            : Math.Max(ToEnds(x, y, _sector.FromX, _sector.FromY), ToEnds(x, y, _sector.ToX, _sector.ToY));
        return (Math.Max(0, least - RoundingMetres), most + RoundingMetres);
    }

    /// <summary>
    /// Cosines of the angles, seen from above, between an axis through a point and the ways from there to the patch.
    /// </summary>
    /// <param name="from">The point.</param>
    /// <param name="axisX">x of the unit vector along the axis.</param>
    /// <param name="axisY">y of that vector.</param>
    public (double Least, double Most) Cosines(PlanPoint from, double axisX, double axisY)
    {
        Span<PlanPoint> corners = stackalloc PlanPoint[CornerCount];
        WriteCorners(corners);
        (double least, double most) = (1, -1);
        (double leftmost, double rightmost) = (double.MaxValue, double.MinValue);
        (double backmost, double foremost) = (double.MaxValue, double.MinValue);
        foreach (PlanPoint corner in corners)
        {
            double x = corner.XMetres - from.XMetres;
            double y = corner.YMetres - from.YMetres;
            double along = (x * axisX) + (y * axisY);
            double across = (x * axisY) - (y * axisX);
            double cosine = along / Math.Sqrt((x * x) + (y * y));
            if (double.IsNaN(cosine))
            {
                return (-1, 1);
            }

            least = Math.Min(least, cosine);
            most = Math.Max(most, cosine);
            leftmost = Math.Min(leftmost, across);
            rightmost = Math.Max(rightmost, across);
            backmost = Math.Min(backmost, along);
            foremost = Math.Max(foremost, along);
        }

        // Corners on both sides of the axis: it may meet the patch, before the point or behind it.
        bool isCrossed = leftmost <= RoundingMetres && rightmost >= -RoundingMetres;
        return (
            isCrossed && backmost <= RoundingMetres ? -1 : least - RoundingCosine,
            isCrossed && foremost >= -RoundingMetres ? 1 : most + RoundingCosine
        );
    }

    /// <summary>The number of corners of <see cref="WriteCorners"/>.</summary>
    internal const int CornerCount = 4;

    /// <summary>Writes the corners, in order, of the smallest quadrilateral on its sides that holds the patch.</summary>
    internal void WriteCorners(Span<PlanPoint> corners)
    {
        double far = FarMetres * _sector.OverArc;
        corners[0] = At(_sector.FromX, _sector.FromY, NearMetres);
        corners[1] = At(_sector.FromX, _sector.FromY, far);
        corners[2] = At(_sector.ToX, _sector.ToY, far);
        corners[3] = At(_sector.ToX, _sector.ToY, NearMetres);
    }

    private PlanPoint At(double x, double y, double metres) =>
        new(_sector.Seed.XMetres + (x * metres), _sector.Seed.YMetres + (y * metres));

    private double ToSide(double x, double y, double sideX, double sideY)
    {
        double along = Math.Clamp((x * sideX) + (y * sideY), NearMetres, FarMetres);
        return Distance(x - (along * sideX), y - (along * sideY));
    }

    private double ToEnds(double x, double y, double sideX, double sideY) =>
        Math.Max(
            Distance(x - (NearMetres * sideX), y - (NearMetres * sideY)),
            Distance(x - (FarMetres * sideX), y - (FarMetres * sideY))
        );

    private static double Distance(double x, double y) => Math.Sqrt((x * x) + (y * y));

    private static double Square(double value) => value * value;
}
