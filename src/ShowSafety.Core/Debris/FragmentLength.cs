namespace ShowSafety.Core.Debris;

/// <summary>
/// Fragments of one shape and material by mass alone (DDESB TP-12): A = (m/k)^(2/3), so that the length over which
/// speed falls is L₁ m^(1/3).
/// </summary>
public static class FragmentLength
{
    /// <summary>
    /// L₁ = 2 k^(2/3)/(C_d ρ) in m/kg^(1/3). A public summary prints 2 (k² m)^(1/2)/(C_d ρ), whose units do not work.
    /// </summary>
    /// <param name="shapeKilogramsPerCubicMetre">k in kg/m³, above 0.</param>
    /// <param name="dragCoefficient">C_d, above 0.</param>
    /// <param name="airDensityKilogramsPerCubicMetre">ρ in kg/m³, above 0.</param>
    public static double PerCubeRootKilogram(
        double shapeKilogramsPerCubicMetre,
        double dragCoefficient,
        double airDensityKilogramsPerCubicMetre
    ) => 2 * Math.Pow(shapeKilogramsPerCubicMetre, 2.0 / 3) / (dragCoefficient * airDensityKilogramsPerCubicMetre);

    /// <summary>Smallest mass in kg that falls with an energy: g L₁ m^(4/3) = 2 E.</summary>
    /// <param name="energyJoules">E in J, above 0.</param>
    /// <param name="lengthPerCubeRootKilogram">L₁ in m/kg^(1/3), above 0.</param>
    public static double FallingMass(double energyJoules, double lengthPerCubeRootKilogram) =>
        Math.Pow(2 * energyJoules / (VerticalShot.StandardGravity * lengthPerCubeRootKilogram), 0.75);

    /// <summary>Energy in J of a piece in straight flight after a distance: (m V²/2) e^(−2R/(L₁ m^(1/3))).</summary>
    /// <param name="massKilograms">m in kg, above 0.</param>
    /// <param name="speedMetresPerSecond">V at the start in m/s, 0 or more.</param>
    /// <param name="distanceMetres">R in m, 0 or more.</param>
    /// <param name="lengthPerCubeRootKilogram">L₁ in m/kg^(1/3), above 0.</param>
    public static double EnergyAt(
        double massKilograms,
        double speedMetresPerSecond,
        double distanceMetres,
        double lengthPerCubeRootKilogram
    ) =>
        FlatFire.Energy(massKilograms, speedMetresPerSecond)
        * Math.Exp(-2 * distanceMetres / (lengthPerCubeRootKilogram * Math.Cbrt(massKilograms)));
}
