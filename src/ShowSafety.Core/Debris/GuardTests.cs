using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>
/// Tests of machine guards, the nearest published evidence for screens against flying wheels: 100 g projectile at up
/// to 115 m/s held by 3 mm steel, 5 mm aluminium, 8 mm polycarbonate; acrylic to about 25 m/s only (IFA project 6054).
/// </summary>
public static class GuardTests
{
    /// <summary>Mass of the test projectile in kg.</summary>
    public const double ProjectileKilograms = 0.1;

    /// <summary>
    /// Highest speed held in m/s. The published summary calls it a cutting speed, so the energy is an inference.
    /// </summary>
    public const double SpeedMetresPerSecond = 115;

    /// <summary>Diameter of the projectile's face in m: 20 mm, from memory.</summary>
    public const double ProjectileDiameterMetres = 0.020;

    /// <summary>Speed in m/s above which acrylic is refused.</summary>
    public const double AcrylicSpeedMetresPerSecond = 25;

    /// <summary>Energy of the test in J.</summary>
    public static double EnergyJoules => FlatFire.Energy(ProjectileKilograms, SpeedMetresPerSecond);

    /// <summary>Thickness in m that held the test; null for materials that did not or were not tested.</summary>
    public static double? TestedThicknessMetres(ScreenMaterial material) =>
        material switch
        {
            ScreenMaterial.Steel => 0.003,
            ScreenMaterial.Aluminium => 0.005,
            ScreenMaterial.Polycarbonate => 0.008,
            _ => null,
        };

    /// <summary>
    /// How much more than a tested piece another piece asks of the same sheet: the larger of E/E₀ and
    /// (E/E₀)^(2/3) D₀/D. Energy alone is not cautious, a small hard piece punches through.
    /// </summary>
    /// <param name="energyJoules">E of the piece in J, 0 or more.</param>
    /// <param name="edgeDiameterMetres">D of the piece edge on in m, above 0.</param>
    /// <param name="testedJoules">E₀ held in the test in J, above 0.</param>
    /// <param name="testedDiameterMetres">D₀ of the test projectile in m, above 0.</param>
    public static double Demand(
        double energyJoules,
        double edgeDiameterMetres,
        double testedJoules,
        double testedDiameterMetres
    )
    {
        double ratio = energyJoules / testedJoules;
        return Math.Max(ratio, Math.Pow(ratio, 2.0 / 3) * testedDiameterMetres / edgeDiameterMetres);
    }

    /// <summary>
    /// Thickness in m to start a test with, not an acceptance: tested thickness × <see cref="Demand"/>; null for
    /// materials without a test.
    /// </summary>
    /// <param name="material">Material of the sheet.</param>
    /// <param name="energyJoules">Energy of the piece in J, 0 or more.</param>
    /// <param name="edgeDiameterMetres">Diameter of the piece edge on in m, above 0.</param>
    public static double? StartingThickness(ScreenMaterial material, double energyJoules, double edgeDiameterMetres) =>
        TestedThicknessMetres(material)
        * Demand(energyJoules, edgeDiameterMetres, EnergyJoules, ProjectileDiameterMetres);

    /// <summary>Whether the test covers a 100 g projectile at a speed on the tested sheet; acrylic to 25 m/s.</summary>
    /// <param name="material">Material of the sheet.</param>
    /// <param name="speedMetresPerSecond">Speed in m/s, 0 or more.</param>
    public static bool Holds(ScreenMaterial material, double speedMetresPerSecond) =>
        material switch
        {
            ScreenMaterial.Steel or ScreenMaterial.Aluminium or ScreenMaterial.Polycarbonate => speedMetresPerSecond
                <= SpeedMetresPerSecond,
            ScreenMaterial.Acrylic => speedMetresPerSecond <= AcrylicSpeedMetresPerSecond,
            _ => false,
        };
}
