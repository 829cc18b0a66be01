using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>
/// The plan of the directions pieces leave in: a band across the shaft, as long as all rotor planes together at the
/// shaft line and D tan θ longer at each end at a distance D, on both sides of the engine.
/// </summary>
public sealed record DirectFlightSector
{
    /// <summary>Middle of the nozzle's exit.</summary>
    public required PlanPoint Nozzle { get; init; }

    /// <summary>Heading from the nozzle to the intake in degrees clockwise from +y.</summary>
    public required double IntakeHeadingDegrees { get; init; }

    /// <summary>Distance of the rotor plane nearest to the nozzle in m.</summary>
    public required double NearestPlaneMetres { get; init; }

    /// <summary>Distance of the rotor plane farthest from the nozzle in m.</summary>
    public required double FarthestPlaneMetres { get; init; }

    /// <summary>Half the extent of the largest piece in m, which the band is longer at each end; above 0.</summary>
    public required double PieceHalfSizeMetres { get; init; }

    /// <summary>The band out to a reach, circumscribed: a piece at the edge of the spread flies along a slant.</summary>
    /// <param name="spreadDegrees">θ in degrees, 0 to below 90.</param>
    /// <param name="reachMetres">Distance from the shaft line in m, above 0.</param>
    public Polygon Area(double spreadDegrees, double reachMetres)
    {
        double near = NearestPlaneMetres - PieceHalfSizeMetres;
        double far = FarthestPlaneMetres + PieceHalfSizeMetres;
        double wider = Spread.HalfWidth(reachMetres, spreadDegrees);
        return SiteGeometry.Polygon([
            At(near, 0),
            At(near - wider, reachMetres),
            At(far + wider, reachMetres),
            At(far, 0),
            At(far + wider, -reachMetres),
            At(near - wider, -reachMetres),
        ]);
    }

    /// <summary>The plan point at a distance from the nozzle towards the intake, and to the right of the shaft.</summary>
    /// <param name="alongMetres">Distance towards the intake in m.</param>
    /// <param name="rightMetres">Distance to the right, looking towards the intake, in m.</param>
    public PlanPoint At(double alongMetres, double rightMetres) =>
        Nozzle.Along(IntakeHeadingDegrees, alongMetres).Along(IntakeHeadingDegrees + 90, rightMetres);
}
