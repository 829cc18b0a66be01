namespace ShowSafety.Brief.Drawing;

/// <summary>A point of the site in metres: x to the right, y up.</summary>
internal readonly record struct MetrePoint(double XMetres, double YMetres)
{
    public bool IsFinite => double.IsFinite(XMetres) && double.IsFinite(YMetres);

    /// <summary>The point so many metres away on a heading, in degrees clockwise from +y.</summary>
    public MetrePoint Towards(double headingDegrees, double distanceMetres)
    {
        double radians = headingDegrees * Math.PI / 180;
        return new(XMetres + (distanceMetres * Math.Sin(radians)), YMetres + (distanceMetres * Math.Cos(radians)));
    }
}
