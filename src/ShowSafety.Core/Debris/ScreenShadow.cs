using NetTopologySuite.Geometries;
using NetTopologySuite.LinearReferencing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>
/// The ground behind a screen that a straight level flight from the wheels cannot reach. A piece can start anywhere on
/// the wheels and strike the end of the screen with its edge, so the ground must lie behind the screen as seen from
/// every part of the wheels, and the screen counts shorter by a wheel's size at each end.
/// </summary>
public static class ScreenShadow
{
    private const int SourcesPerSide = 3;

    /// <summary>Height in m of a tall person standing, with something on the head: what a flight line must clear.</summary>
    public const double StandingHeadMetres = 2.2;

    /// <summary>
    /// Whether a screen from the ground to a height stands in the line from the wheels to every standing head behind.
    /// </summary>
    /// <param name="screenHeightMetres">Height of the screen in m.</param>
    /// <param name="shaftHeightMetres">Height of the shaft in m.</param>
    /// <param name="wheelRadiusMetres">Radius of the largest wheel in m.</param>
    public static bool IsTallEnough(double screenHeightMetres, double shaftHeightMetres, double wheelRadiusMetres) =>
        screenHeightMetres >= Math.Max(StandingHeadMetres, shaftHeightMetres + wheelRadiusMetres);

    /// <summary>The shadow out to a reach; empty where the screen is too short or the wheels touch it.</summary>
    /// <param name="sector">The sector the pieces leave in.</param>
    /// <param name="screen">Line of the screen, two points or more.</param>
    /// <param name="reachMetres">How far from the wheels the shadow must reach in m, above 0.</param>
    public static Geometry Behind(DirectFlightSector sector, IReadOnlyList<PlanPoint> screen, double reachMetres)
    {
        LineString whole = SiteGeometry.Line(screen);
        double margin = 2 * sector.PieceHalfSizeMetres;
        Geometry wheels = sector.Area(0, sector.PieceHalfSizeMetres);
        if (whole.Length <= 2 * margin || whole.Intersects(wheels))
        {
            return SiteGeometry.Empty;
        }

        Geometry shortened = new LengthIndexedLine(whole).ExtractLine(margin, whole.Length - margin);
        PlanPoint[] line = [.. shortened.Coordinates.Select(SiteGeometry.PlanPoint)];
        Geometry? hidden = null;
        foreach (PlanPoint source in Sources(sector))
        {
            Geometry shadow = From(source, line, reachMetres);
            hidden = hidden is null ? shadow : hidden.Intersection(shadow);
        }

        return hidden ?? SiteGeometry.Empty;
    }

    private static IEnumerable<PlanPoint> Sources(DirectFlightSector sector)
    {
        double near = sector.NearestPlaneMetres - sector.PieceHalfSizeMetres;
        double far = sector.FarthestPlaneMetres + sector.PieceHalfSizeMetres;
        for (int i = 0; i < SourcesPerSide; i++)
        {
            double along = near + ((far - near) * i / (SourcesPerSide - 1));
            for (int j = 0; j < SourcesPerSide; j++)
            {
                double right = sector.PieceHalfSizeMetres * ((2.0 * j / (SourcesPerSide - 1)) - 1);
                yield return sector.At(along, right);
            }
        }
    }

    private static Geometry From(PlanPoint source, PlanPoint[] line, double reachMetres) =>
        SiteGeometry.Union(line.Zip(line.Skip(1), (a, b) => Quad(source, a, b, reachMetres)));

    private static Geometry Quad(PlanPoint source, PlanPoint a, PlanPoint b, double reachMetres)
    {
        double turn = Heading.Between(source.BearingDegrees(a), source.BearingDegrees(b));
        // Seen end on a screen hides nothing; nearly half round it the far edge would run back over the source.
        if (turn < 1e-6 || turn > 170)
        {
            return SiteGeometry.Empty;
        }

        // The chord between the far corners must lie beyond the reach in the middle too.
        double far =
            (reachMetres + source.DistanceMetres(a) + source.DistanceMetres(b))
            * 1.1
            / Math.Cos(Heading.ToRadians(turn / 2));
        return SiteGeometry.Polygon([
            a,
            b,
            source.Along(source.BearingDegrees(b), far),
            source.Along(source.BearingDegrees(a), far),
        ]);
    }
}
