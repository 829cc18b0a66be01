using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// A patch of ground about an engine: all places whose bearing from it lies in a narrow sector, between two distances.
/// What is asked of it are ranges that no place in it leaves.
/// </summary>
public readonly record struct Patch
{
    // Far above the rounding of the sums below, far under anything that matters.
    private const double RoundingMetres = 1e-9;

    private readonly double _leastCosine;
    private readonly double _mostCosine;

    /// <summary>Makes a patch.</summary>
    /// <param name="seed">The engine's place.</param>
    /// <param name="headingDegrees">Heading the engine's exhaust blows to.</param>
    /// <param name="fromDegrees">Where the sector begins, from that heading clockwise, 0 to 180 or 180 to 360.</param>
    /// <param name="toDegrees">Where it ends: beyond its beginning by less than 90, on the same side of the axis.</param>
    /// <param name="nearMetres">The smaller distance, 0 or more.</param>
    /// <param name="farMetres">The larger distance.</param>
    public Patch(
        PlanPoint seed,
        double headingDegrees,
        double fromDegrees,
        double toDegrees,
        double nearMetres,
        double farMetres
    )
    {
        Seed = seed;
        HeadingDegrees = headingDegrees;
        NearMetres = nearMetres;
        FarMetres = farMetres;
        double from = Math.Cos(Heading.ToRadians(fromDegrees));
        double to = Math.Cos(Heading.ToRadians(toDegrees));
        (_leastCosine, _mostCosine) = from < to ? (from, to) : (to, from);

        // The circle about the middle of the patch that reaches its corners. Its farthest places are corners, because
        // the distance to a point on the middle ray is largest at the ends of arcs and of sides.
        double half = Heading.ToRadians((toDegrees - fromDegrees) / 2);
        double middle = (nearMetres + farMetres) / 2;
        double across = 2 * Math.Sin(half / 2);
        Middle = seed.Along(headingDegrees + ((fromDegrees + toDegrees) / 2), middle);
        RadiusMetres =
            Math.Sqrt(Square((farMetres - nearMetres) / 2) + (middle * farMetres * Square(across))) + RoundingMetres;
    }

    /// <summary>The engine's place.</summary>
    public PlanPoint Seed { get; }

    /// <summary>Heading the engine's exhaust blows to.</summary>
    public double HeadingDegrees { get; }

    /// <summary>The distance from the engine it begins at, in metres.</summary>
    public double NearMetres { get; }

    /// <summary>The distance from the engine it ends at, in metres.</summary>
    public double FarMetres { get; }

    /// <summary>Middle of a circle that covers the patch.</summary>
    public PlanPoint Middle { get; }

    /// <summary>Radius of that circle in metres.</summary>
    public double RadiusMetres { get; }

    /// <summary>Distances along the ground from a point to places of the patch, in metres.</summary>
    public (double Least, double Most) DistancesMetres(PlanPoint from)
    {
        if (from == Seed)
        {
            return (NearMetres, FarMetres);
        }

        double middle = from.DistanceMetres(Middle);
        return (Math.Max(0, middle - RadiusMetres), middle + RadiusMetres);
    }

    /// <summary>
    /// Cosines of the angles, seen from above, between an axis through a point and the ways from there to the patch.
    /// </summary>
    /// <param name="from">The point.</param>
    /// <param name="axisX">x of the unit vector along the axis.</param>
    /// <param name="axisY">y of that vector.</param>
    public (double Least, double Most) Cosines(PlanPoint from, double axisX, double axisY)
    {
        double toX = Middle.XMetres - from.XMetres;
        double toY = Middle.YMetres - from.YMetres;
        double middle = Math.Sqrt((toX * toX) + (toY * toY));
        if (middle <= RadiusMetres)
        {
            return (-1, 1);
        }

        double angle = Math.Acos(Math.Clamp(((toX * axisX) + (toY * axisY)) / middle, -1, 1));
        double spread = Math.Asin(RadiusMetres / middle);
        return (Math.Cos(Math.Min(Math.PI, angle + spread)), Math.Cos(Math.Max(0, angle - spread)));
    }

    /// <summary>The same from the engine of the patch along its exhaust.</summary>
    public (double Least, double Most) OwnCosines => (_leastCosine, _mostCosine);

    /// <summary>Whether a unit vector is the axis of the engine's exhaust.</summary>
    public bool HasAxis(double axisX, double axisY) => (axisX, axisY) == Math.SinCos(Heading.ToRadians(HeadingDegrees));

    private static double Square(double value) => value * value;
}
