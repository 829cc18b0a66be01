namespace ShowSafety.Core.Debris;

/// <summary>Published energies above which a piece counts as able to hurt.</summary>
public static class InjuryEnergy
{
    /// <summary>One foot-pound force in J: 0.3048 m × 0.45359237 kg × 9.80665 m/s², exact.</summary>
    public const double JoulesPerFootPound = 0.3048 * 0.45359237 * 9.80665;

    /// <summary>One square foot in m², exact.</summary>
    public const double SquareMetresPerSquareFoot = 0.3048 * 0.3048;

    /// <summary>11 ft·lb in J: debris counted as able to injure (14 CFR Part 417 Appendix C, (b)(3)).</summary>
    public const double AbleToInjureJoules = 11 * JoulesPerFootPound;

    /// <summary>25 ft·lb in J: severe injury, third tier (14 CFR 107.130).</summary>
    public const double SevereJoules = 25 * JoulesPerFootPound;

    /// <summary>58 ft·lb in J: hazardous fragment of explosive safety (DoD 6055.09, from memory).</summary>
    public const double HazardousFragmentJoules = 58 * JoulesPerFootPound;

    /// <summary>600 ft² in m²: at most one hazardous piece on this area (DoD 6055.09, from memory).</summary>
    public const double AreaPerHazardousPieceSquareMetres = 600 * SquareMetresPerSquareFoot;

    /// <summary>Area of a standing person in m² (DDESB TP-12).</summary>
    public const double PersonAreaSquareMetres = 0.58;

    /// <summary>Chance 1 − e^(−qA) that a person is struck where q pieces fall on a square metre (DDESB TP-12).</summary>
    /// <param name="piecesPerSquareMetre">q in 1/m², 0 or more.</param>
    /// <param name="personAreaSquareMetres">A in m², 0 or more.</param>
    public static double HitChance(double piecesPerSquareMetre, double personAreaSquareMetres) =>
        1 - Math.Exp(-piecesPerSquareMetre * personAreaSquareMetres);
}
