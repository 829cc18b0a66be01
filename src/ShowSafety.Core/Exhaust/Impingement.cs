namespace ShowSafety.Core.Exhaust;

/// <summary>A round jet square on a wall. The wall jet along the wall is not calculated.</summary>
public static class Impingement
{
    /// <summary>Distance over nozzle diameter from which <see cref="PressureShare"/> holds.</summary>
    public const double PressureFromDiameters = 8.3;

    /// <summary>
    /// Stagnation pressure over the dynamic pressure at the nozzle: 50 (d/H)², not over 1. Beltaos and Rajaratnam 1974
    /// (memory), from 8.3 diameters; nearer the core reaches the wall and the share is 1.
    /// </summary>
    public static double PressureShare(double distancePerDiameter) =>
        distancePerDiameter <= PressureFromDiameters
            ? 1
            : Math.Min(1, 50 / (distancePerDiameter * distancePerDiameter));

    /// <summary>The same in thrust, Pa: (100/π) T/H² (Beltaos and Rajaratnam 1974, memory).</summary>
    public static double PressurePascals(double thrustNewtons, double distanceMetres) =>
        100 / Math.PI * thrustNewtons / (distanceMetres * distanceMetres);

    /// <summary>Dynamic pressure of the free jet's centre speed, Pa: ½ ρ_a U_c², from the thrust law.</summary>
    public static double FreeJetPressurePascals(double coefficient, double thrustNewtons, double distanceMetres) =>
        0.5 * coefficient * coefficient * thrustNewtons / (distanceMetres * distanceMetres);

    /// <summary>Pressure over stagnation pressure beside the point of impact: exp(−114 (r/H)²), same source.</summary>
    public static double PressureProfile(double radiusPerDistance) => Math.Exp(-114 * Square(radiusPerDistance));

    /// <summary>Force of the pressure fit over the jet's thrust: 50 · (4/114) · ½; the fit is not exactly conserving.</summary>
    public static double ForceShare => 50.0 * 4 / 114 / 2;

    /// <summary>
    /// Rise of an adiabatic wall at the point of impact over the nozzle's rise: K d_e/(H − x_T), not over 1; a wall
    /// takes the free jet's total temperature. Validity: beyond about eight diameters.
    /// </summary>
    public static double WallRiseRatio(double decayConstant, double diameter, double distance, double origin) =>
        RoundJet.CentreRatio(decayConstant, diameter, distance, origin);

    /// <summary>Largest speed of the radial wall jet over nozzle speed: 1.03 d/r, not over 1 (Rajaratnam 1976, memory).</summary>
    public static double WallJetSpeedRatio(double radiusPerDiameter) => Math.Min(1, 1.03 / radiusPerDiameter);

    /// <summary>
    /// Mean Nusselt number over a disc under one round nozzle: Martin 1977. Area ratio d²/(4r²) from 0.004 to 0.04,
    /// distance over diameter 2 to 12, Reynolds number 2 000 to 400 000.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">An input is outside the range of the correlation.</exception>
    public static double Nusselt(double reynolds, double prandtl, double areaRatio, double distancePerDiameter)
    {
        Demand(reynolds, 2e3, 4e5, nameof(reynolds));
        Demand(areaRatio, 0.004, 0.04, nameof(areaRatio));
        Demand(distancePerDiameter, 2, 12, nameof(distancePerDiameter));
        double root = Math.Sqrt(areaRatio);
        double shape = 2 * root * (1 - (2.2 * root)) / (1 + (0.2 * (distancePerDiameter - 6) * root));
        double flow = 2 * Math.Sqrt(reynolds) * Math.Sqrt(1 + (0.005 * Math.Pow(reynolds, 0.55)));
        return shape * flow * Math.Pow(prandtl, 0.42);
    }

    private static void Demand(double value, double min, double max, string name)
    {
        if (!(value >= min && value <= max))
        {
            throw new ArgumentOutOfRangeException(name, value, $"The correlation holds from {min} to {max}.");
        }
    }

    private static double Square(double value) => value * value;
}
