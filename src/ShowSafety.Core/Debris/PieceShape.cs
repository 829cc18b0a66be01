namespace ShowSafety.Core.Debris;

/// <summary>
/// Areas a flying piece shows to the air and to a screen. By Cauchy's theorem the mean over all orientations of the
/// shadow of a convex body is a quarter of its surface.
/// </summary>
/// <param name="TumblingAreaSquareMetres">Mean shadow over all orientations in m², above 0.</param>
/// <param name="LeastAreaSquareMetres">Mean shadow in the attitude with the least drag in m², above 0.</param>
/// <param name="EdgeDiameterMetres">
/// Diameter in m of the circle as large as the smallest face the piece can strike a screen with.
/// </param>
public readonly record struct PieceShape(
    double TumblingAreaSquareMetres,
    double LeastAreaSquareMetres,
    double EdgeDiameterMetres
)
{
    /// <summary>
    /// A sector of a flat disc, hollow at the bore, by its convex hull. It keeps the wheel's turning about the shaft's
    /// direction and so can fly edge on: then it shows its mean width, perimeter/π (Cauchy in the plane), times its
    /// thickness.
    /// </summary>
    /// <param name="radiusMetres">R in m, above 0.</param>
    /// <param name="boreRadiusMetres">a in m, 0 to below R.</param>
    /// <param name="thicknessMetres">t in m, above 0.</param>
    /// <param name="pieces">Number of equal sectors, 2 or more.</param>
    public static PieceShape Sector(double radiusMetres, double boreRadiusMetres, double thicknessMetres, int pieces)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pieces, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(boreRadiusMetres, radiusMetres);
        (double sine, double cosine) = Math.SinCos(Math.PI / pieces);
        double face =
            (Math.PI / pieces * radiusMetres * radiusMetres) - (boreRadiusMetres * boreRadiusMetres * sine * cosine);
        double perimeter =
            (2 * Math.PI / pieces * radiusMetres)
            + (2 * (radiusMetres - boreRadiusMetres))
            + (2 * boreRadiusMetres * sine);
        return new(
            ((2 * face) + (perimeter * thicknessMetres)) / 4,
            perimeter / Math.PI * thicknessMetres,
            DiameterOfArea((radiusMetres - boreRadiusMetres) * thicknessMetres)
        );
    }

    /// <summary>A compact piece taken as a cube of its mass: tumbling 1.5 a², least a² (a face ahead).</summary>
    /// <param name="massKilograms">Mass in kg, above 0.</param>
    /// <param name="densityKilogramsPerCubicMetre">Density in kg/m³, above 0.</param>
    public static PieceShape Cube(double massKilograms, double densityKilogramsPerCubicMetre)
    {
        double side = Math.Cbrt(massKilograms / densityKilogramsPerCubicMetre);
        return new(TumblingAreaOfBox(side, side, side), side * side, DiameterOfArea(side * side));
    }

    /// <summary>Mean shadow in m² of a box with three sides in m: (ab + bc + ca)/2.</summary>
    public static double TumblingAreaOfBox(double lengthMetres, double widthMetres, double heightMetres) =>
        ((lengthMetres * widthMetres) + (widthMetres * heightMetres) + (heightMetres * lengthMetres)) / 2;

    /// <summary>Diameter in m of the circle with an area in m².</summary>
    public static double DiameterOfArea(double areaSquareMetres) => Math.Sqrt(4 * areaSquareMetres / Math.PI);
}
