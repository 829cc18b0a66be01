namespace ShowSafety.Core.Debris;

/// <summary>Speed left behind a perforated sheet (Recht and Ipson 1963, from memory).</summary>
public static class Residual
{
    /// <summary>
    /// Blunt piece that pushes out a plug: v_r = m/(m + m_p) √(v² − v50²), 0 at or below v50. Without a plug (0 kg) it
    /// is the sharp piece's √(v² − v50²).
    /// </summary>
    /// <param name="massKilograms">m in kg, above 0.</param>
    /// <param name="plugKilograms">m_p in kg, 0 or more.</param>
    /// <param name="speedMetresPerSecond">v in m/s, 0 or more.</param>
    /// <param name="limitMetresPerSecond">v50 in m/s, 0 or more.</param>
    public static double Speed(
        double massKilograms,
        double plugKilograms,
        double speedMetresPerSecond,
        double limitMetresPerSecond
    ) =>
        speedMetresPerSecond <= limitMetresPerSecond
            ? 0
            : massKilograms
                / (massKilograms + plugKilograms)
                * Math.Sqrt(
                    (speedMetresPerSecond * speedMetresPerSecond) - (limitMetresPerSecond * limitMetresPerSecond)
                );

    /// <summary>General form v_r = a (v^p − v50^p)^(1/p), 0 at or below v50.</summary>
    /// <param name="factor">a, above 0 to 1.</param>
    /// <param name="exponent">p, above 0; 2 in the forms above.</param>
    /// <param name="speedMetresPerSecond">v in m/s, 0 or more.</param>
    /// <param name="limitMetresPerSecond">v50 in m/s, 0 or more.</param>
    public static double General(
        double factor,
        double exponent,
        double speedMetresPerSecond,
        double limitMetresPerSecond
    ) =>
        speedMetresPerSecond <= limitMetresPerSecond
            ? 0
            : factor
                * Math.Pow(
                    Math.Pow(speedMetresPerSecond, exponent) - Math.Pow(limitMetresPerSecond, exponent),
                    1 / exponent
                );

    /// <summary>Mass in kg of the plug a blunt piece pushes out: ρ π D² t / 4.</summary>
    /// <param name="densityKilogramsPerCubicMetre">ρ of the sheet in kg/m³, above 0.</param>
    /// <param name="diameterMetres">D in m, above 0.</param>
    /// <param name="thicknessMetres">t in m, above 0.</param>
    public static double Plug(double densityKilogramsPerCubicMetre, double diameterMetres, double thicknessMetres) =>
        densityKilogramsPerCubicMetre * Math.PI * diameterMetres * diameterMetres / 4 * thicknessMetres;
}
