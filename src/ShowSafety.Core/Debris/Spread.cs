using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>Geometry of where pieces go: sectors on the plan and people in the path.</summary>
public static class Spread
{
    /// <summary>Half-width s = D tan θ in m of a sector at a distance from the shaft line.</summary>
    /// <param name="distanceMetres">D in m, 0 or more.</param>
    /// <param name="spreadDegrees">θ in degrees, 0 to below 90.</param>
    public static double HalfWidth(double distanceMetres, double spreadDegrees) =>
        distanceMetres * Math.Tan(Heading.ToRadians(spreadDegrees));

    /// <summary>
    /// Angle on the plan in degrees of a piece that leaves at θ from the rotor plane and climbs at e: tan ψ =
    /// tan θ / cos e. The sectors on the plan hold for level flight only.
    /// </summary>
    /// <param name="spreadDegrees">θ in degrees, 0 to below 90.</param>
    /// <param name="elevationDegrees">e in degrees, 0 to below 90.</param>
    public static double PlanAngle(double spreadDegrees, double elevationDegrees) =>
        Heading.ToDegrees(
            Math.Atan(Math.Tan(Heading.ToRadians(spreadDegrees)) / Math.Cos(Heading.ToRadians(elevationDegrees)))
        );

    /// <summary>
    /// Angle in degrees a standing person takes up as seen from the shaft in the rotor plane: atan(h/D) +
    /// atan((H − h)/D) (the translational risk angle of AC 20-128A, from memory). Divided by 360 it is the chance that
    /// one piece goes that way, given a burst.
    /// </summary>
    /// <param name="shaftHeightMetres">h in m, 0 or more.</param>
    /// <param name="personHeightMetres">H in m, above 0.</param>
    /// <param name="distanceMetres">D in m, above 0.</param>
    public static double PersonAngle(double shaftHeightMetres, double personHeightMetres, double distanceMetres) =>
        Heading.ToDegrees(
            Math.Atan(shaftHeightMetres / distanceMetres)
                + Math.Atan((personHeightMetres - shaftHeightMetres) / distanceMetres)
        );
}
