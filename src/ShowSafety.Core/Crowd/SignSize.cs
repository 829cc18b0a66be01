namespace ShowSafety.Core.Crowd;

/// <summary>How large a sign must be to be read from a distance.</summary>
public static class SignSize
{
    /// <summary>Distance factor of an escape-route sign lit from outside (EN 1838, as quoted).</summary>
    public const double LitFromOutside = 100;

    /// <summary>Distance factor of an escape-route sign lit from inside (EN 1838, as quoted).</summary>
    public const double LitFromInside = 200;

    /// <summary>Distance from which an escape-route sign is read, L = Z h (EN 1838, as quoted).</summary>
    /// <param name="heightMetres">Height h of the sign in m, zero or more.</param>
    /// <param name="factor">Distance factor Z.</param>
    /// <returns>Distance in m.</returns>
    public static double EscapeSignDistanceMetres(double heightMetres, double factor) => heightMetres * factor;

    /// <summary>
    /// Area of a prohibition, warning or mandatory sign read from a distance, A = L²/2000, up to about 50 m (Directive
    /// 92/58/EEC as adopted by D.Lgs. 81/2008, annex XXV).
    /// </summary>
    /// <param name="distanceMetres">Distance L in m, 0 to 50.</param>
    /// <returns>Area in m².</returns>
    public static double AreaSquareMetres(double distanceMetres) => distanceMetres * distanceMetres / 2000;

    /// <summary>Diameter of a round sign of an area, d = √(4 A/π).</summary>
    /// <param name="areaSquareMetres">Area A in m², zero or more.</param>
    /// <returns>Diameter in m.</returns>
    public static double DiscMetres(double areaSquareMetres) => Math.Sqrt(4 * areaSquareMetres / Math.PI);

    /// <summary>Side of an equilateral triangle of an area, s = √(4 A/√3).</summary>
    /// <param name="areaSquareMetres">Area A in m², zero or more.</param>
    /// <returns>Side in m.</returns>
    public static double TriangleMetres(double areaSquareMetres) => Math.Sqrt(4 * areaSquareMetres / Math.Sqrt(3));
}
