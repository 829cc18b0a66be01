namespace ShowSafety.Core.Debris;

/// <summary>When small pieces go through skin, and what a blunt blow does. Formulas from memory: confirm.</summary>
public static class SkinCriteria
{
    private const double LewisOffset = -28.42;
    private const double LewisSlope = 2.94;

    /// <summary>
    /// Speed in m/s at which half the pieces go through skin: V50 = 1247.1 A/M + 22.03 (Sperrazza and Kokinakis 1968).
    /// Pieces to about 15 g. A/M is in m²/kg: in cm²/g it comes out ten times too large.
    /// </summary>
    /// <param name="areaPerMassSquareMetresPerKilogram">A/M in m²/kg, above 0.</param>
    public static double SperrazzaSpeed(double areaPerMassSquareMetresPerKilogram) =>
        (1247.1 * areaPerMassSquareMetresPerKilogram) + 22.03;

    /// <summary>
    /// Chance of going through bare skin: 1/(1 + e^(−(−28.42 + 2.94 ln(M V²/A)))), M in g, V in m/s, A in cm² (Lewis
    /// and others 1978).
    /// </summary>
    /// <param name="massKilograms">M in kg, above 0.</param>
    /// <param name="speedMetresPerSecond">V in m/s, above 0.</param>
    /// <param name="areaSquareMetres">A in m², above 0.</param>
    public static double LewisChance(double massKilograms, double speedMetresPerSecond, double areaSquareMetres)
    {
        double loading =
            massKilograms * 1000 * speedMetresPerSecond * speedMetresPerSecond / (areaSquareMetres * 10_000);
        return 1 / (1 + Math.Exp(-(LewisOffset + (LewisSlope * Math.Log(loading)))));
    }

    /// <summary>Energy per area in J/m² at which the chance of <see cref="LewisChance"/> is one half.</summary>
    public static double LewisHalfEnergyPerArea()
    {
        double gramsSpeedSquaredPerSquareCentimetre = Math.Exp(-LewisOffset / LewisSlope);
        return gramsSpeedSquaredPerSquareCentimetre / 1000 * 10_000 / 2;
    }

    /// <summary>
    /// Blunt criterion ln(E/(W^(1/3) T D)) with T = c W^(1/3) in cm (Sturdivan, Bir): about 0.37 for a 50 % chance of
    /// a moderate to serious chest injury.
    /// </summary>
    /// <param name="energyJoules">E in J, above 0.</param>
    /// <param name="bodyKilograms">W in kg, above 0.</param>
    /// <param name="wallFactor">c in cm/kg^(1/3): 0.711 men, 0.593 women.</param>
    /// <param name="diameterMetres">D of the piece in m, above 0.</param>
    public static double BluntCriterion(
        double energyJoules,
        double bodyKilograms,
        double wallFactor,
        double diameterMetres
    )
    {
        double root = Math.Cbrt(bodyKilograms);
        return Math.Log(energyJoules / (root * wallFactor * root * diameterMetres * 100));
    }
}
