namespace ShowSafety.Core.Measures;

/// <summary>A point on the plan in metres: x to the right, y up the sheet. The default value is the origin.</summary>
/// <param name="XMetres">Metres to the right of the origin.</param>
/// <param name="YMetres">Metres up from the origin.</param>
public readonly record struct PlanPoint(double XMetres, double YMetres)
{
    /// <summary>Distance to another point in metres.</summary>
    public double DistanceMetres(PlanPoint other) =>
        Math.Sqrt(Square(other.XMetres - XMetres) + Square(other.YMetres - YMetres));

    /// <summary>
    /// Bearing from this point to another in degrees clockwise from +y, 0 inclusive to 360 exclusive; 0 when both
    /// coincide.
    /// </summary>
    public double BearingDegrees(PlanPoint other) =>
        Heading.Normalised(Heading.ToDegrees(Math.Atan2(other.XMetres - XMetres, other.YMetres - YMetres)));

    /// <summary>The point <paramref name="distanceMetres"/> away along a heading in degrees clockwise from +y.</summary>
    public PlanPoint Along(double headingDegrees, double distanceMetres)
    {
        (double sin, double cos) = Math.SinCos(Heading.ToRadians(headingDegrees));
        return new(XMetres + (distanceMetres * sin), YMetres + (distanceMetres * cos));
    }

    private static double Square(double value) => value * value;
}
