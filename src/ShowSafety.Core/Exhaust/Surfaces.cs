namespace ShowSafety.Core.Exhaust;

/// <summary>A jet beside a floor or a wall. The attached jet is the image of a free one; no wall jet is calculated.</summary>
public static class Surfaces
{
    /// <summary>Share of the axis value taken as the jet's edge: 5 %.</summary>
    public const double EdgeShare = 0.05;

    /// <summary>Spread used for the floor contact: Hussein, Capp and George 1994 in Pope 2000, Table 5.1.</summary>
    public const double ContactSlope = 0.094;

    /// <summary>
    /// Factor on reach for each plane the jet runs along: √2, by the image of the jet in the plane (exact for the
    /// model; ASHRAE Handbook Fundamentals, space air diffusion, memory).
    /// </summary>
    public static double AttachedFactor { get; } = Math.Sqrt(2);

    /// <summary>Distance in metres at which the edge of a level jet meets a plane that many metres beside its axis.</summary>
    public static double ContactMetres(double axisHeightMetres, double halfSpeedSlope = ContactSlope) =>
        axisHeightMetres / RoundJet.EdgeSlope(halfSpeedSlope, EdgeShare);
}
