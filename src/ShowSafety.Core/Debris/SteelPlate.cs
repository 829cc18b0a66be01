namespace ShowSafety.Core.Debris;

/// <summary>
/// Steel plate against missiles, the form of the Ballistic Research Laboratory as used for turbine missiles
/// (BC-TOP-9A 1974, from memory): T = E^(2/3)/(672 D), E in ft·lb, T and D in inches.
/// </summary>
public static class SteelPlate
{
    /// <summary>Factor usual for a design thickness.</summary>
    public const double DesignFactor = 1.25;

    private const double Inch = 0.0254;

    /// <summary>Thickness in m just perforated.</summary>
    /// <param name="energyJoules">E in J, 0 or more.</param>
    /// <param name="diameterMetres">D in m, above 0; edge on for a sharp piece.</param>
    public static double PerforationThickness(double energyJoules, double diameterMetres)
    {
        double footPounds = energyJoules / InjuryEnergy.JoulesPerFootPound;
        return Math.Pow(footPounds, 2.0 / 3) / (672 * diameterMetres / Inch) * Inch;
    }

    /// <summary>Energy in J that just perforates a thickness: the same equation turned round.</summary>
    /// <param name="thicknessMetres">T in m, 0 or more.</param>
    /// <param name="diameterMetres">D in m, above 0.</param>
    public static double PerforationEnergy(double thicknessMetres, double diameterMetres) =>
        Math.Pow(672 * (diameterMetres / Inch) * (thicknessMetres / Inch), 1.5) * InjuryEnergy.JoulesPerFootPound;
}
