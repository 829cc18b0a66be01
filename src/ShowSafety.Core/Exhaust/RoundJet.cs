namespace ShowSafety.Core.Exhaust;

/// <summary>
/// Textbook formulas of the round turbulent jet: decay, spread, entrainment and the exact consequences of a Gaussian
/// profile. Lengths may be in metres or in nozzle diameters as long as one call uses one of them. Validity: x beyond
/// about ten diameters; the caller caps values at those of the nozzle.
/// </summary>
public static class RoundJet
{
    /// <summary>
    /// Centre value over nozzle value, B d_e/(x − x0), not over 1: speed with B (Pope, Turbulent Flows, 2000, Table
    /// 5.1), temperature or mass fraction with K (Becker, Hottel and Williams 1967).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not beyond the virtual origin.</exception>
    public static double CentreRatio(double decayConstant, double diameter, double distance, double origin)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(distance, origin);
        return Math.Min(1, decayConstant * diameter / (distance - origin));
    }

    /// <summary>Radius where the value is half the centre's: S (x − x0), same sources.</summary>
    public static double HalfRadius(double slope, double distance, double origin) =>
        Math.Max(0, slope * (distance - origin));

    /// <summary>Diameter that carries the same momentum at ambient density: d √(ρ_j/ρ_a) (exact).</summary>
    public static double MomentumDiameter(double diameter, double densityRatio) => diameter * Math.Sqrt(densityRatio);

    /// <summary>Gaussian profile over the centre value at η = r/(x − x0): exp(−ln 2 (η/S)²) (exact).</summary>
    public static double ProfileRatio(double slope, double radiusPerDistance) =>
        Math.Exp(-Math.Log(2) * Square(radiusPerDistance / slope));

    /// <summary>Mass flow over nozzle mass flow, 0.32 (x/d) √(ρ_a/ρ_j), not under 1: Ricou and Spalding 1961.</summary>
    public static double MassFlowRatio(double distancePerDiameter, double densityRatio) =>
        Math.Max(1, 0.32 * distancePerDiameter / Math.Sqrt(densityRatio));

    /// <summary>Share of the nozzle's momentum that a set (B, S) carries at constant density: 2 B² S²/ln 2 (exact).</summary>
    public static double MomentumShare(double decayConstant, double slope) =>
        2 * Square(decayConstant * slope) / Math.Log(2);

    /// <summary>Decay constant that conserves momentum with a spread S: √(ln 2)/(√2 S) (exact).</summary>
    public static double DecayConservingMomentum(double slope) => Math.Sqrt(Math.Log(2)) / (Math.Sqrt(2) * slope);

    /// <summary>Decay constant of a top-hat entrainment coefficient a: 1/(2a) (exact).</summary>
    public static double DecayOfEntrainment(double topHatEntrainment) => 1 / (2 * topHatEntrainment);

    /// <summary>Half-speed slope of a top-hat entrainment coefficient a: √(2 ln 2) a (exact).</summary>
    public static double SpreadOfEntrainment(double topHatEntrainment) =>
        Math.Sqrt(2 * Math.Log(2)) * topHatEntrainment;

    /// <summary>Slope of mass flow ratio per diameter of a top-hat entrainment coefficient a: 4a (exact).</summary>
    public static double MassSlopeOfEntrainment(double topHatEntrainment) => 4 * topHatEntrainment;

    /// <summary>Volume flow of a Gaussian jet, m³/s: π b² U_c (exact).</summary>
    public static double VolumeFlow(double widthMetres, double centreSpeedMetresPerSecond) =>
        Math.PI * Square(widthMetres) * centreSpeedMetresPerSecond;

    /// <summary>Kinematic momentum of a Gaussian jet, m⁴/s²: (π/2) b² U_c² (exact).</summary>
    public static double Momentum(double widthMetres, double centreSpeedMetresPerSecond) =>
        Math.PI / 2 * Square(widthMetres * centreSpeedMetresPerSecond);

    /// <summary>Flow of a scalar through a Gaussian jet: π U_c C_c b² λ²/(1 + λ²) (exact).</summary>
    public static double ScalarFlow(
        double widthMetres,
        double centreSpeedMetresPerSecond,
        double centreValue,
        double widthRatio
    ) =>
        VolumeFlow(widthMetres, centreSpeedMetresPerSecond)
        * centreValue
        * Square(widthRatio)
        / (1 + Square(widthRatio));

    /// <summary>Gaussian entrainment coefficient from a volume flow law: (dQ/dx)/(2π b U_c) (exact).</summary>
    public static double Entrainment(double volumeCoefficient, double speedCoefficient, double widthSlope) =>
        volumeCoefficient / (2 * Math.PI * speedCoefficient * widthSlope);

    /// <summary>Angle between the edges where the value is a share of the centre's, degrees (exact).</summary>
    public static double IncludedAngleDegrees(double slope, double edgeShare) =>
        2 * Measures.Heading.ToDegrees(Math.Atan(EdgeSlope(slope, edgeShare)));

    /// <summary>Slope of the edge where the value is a share of the centre's: S √(ln(1/share)/ln 2) (exact).</summary>
    public static double EdgeSlope(double slope, double edgeShare) =>
        slope * Math.Sqrt(-Math.Log(edgeShare) / Math.Log(2));

    private static double Square(double value) => value * value;
}
