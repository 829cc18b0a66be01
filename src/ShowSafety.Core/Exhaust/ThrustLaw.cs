namespace ShowSafety.Core.Exhaust;

/// <summary>
/// The far field of a jet from its thrust and heat alone: an exact consequence of the decay laws of
/// <see cref="RoundJet"/> with the momentum diameter. Both give the constant of a hyperbola: value = constant/x.
/// </summary>
public static class ThrustLaw
{
    /// <summary>Speed times distance on the centre line, m²/s: C √(T/ρ_a), thrust in N, density in kg/m³.</summary>
    public static double SpeedConstant(double coefficient, double thrustNewtons, double airDensity) =>
        coefficient * Math.Sqrt(thrustNewtons / airDensity);

    /// <summary>
    /// Temperature rise times distance on the centre line, K m: C_T [H/(ρ_a cp_a)]/√(T/ρ_a), with the heat flow H of
    /// the exhaust over ambient in W. At fixed heat a larger thrust makes it smaller: more air is drawn in.
    /// </summary>
    public static double RiseConstant(double coefficient, double heatWatts, double thrustNewtons, double airDensity) =>
        coefficient
        * heatWatts
        / (airDensity * JetConstants.AirHeatJoulesPerKilogramKelvin)
        / Math.Sqrt(thrustNewtons / airDensity);

    /// <summary>Heat flow of the exhaust over ambient, W: ṁ cp ΔT0 with the cp of exhaust gas.</summary>
    public static double HeatWatts(double massFlowKilogramsPerSecond, double totalRiseKelvin) =>
        massFlowKilogramsPerSecond * JetConstants.GasHeatJoulesPerKilogramKelvin * totalRiseKelvin;

    /// <summary>Density of air, kg/m³: p/(R T).</summary>
    public static double AirDensity(double temperatureCelsius, double pressureKilopascals) =>
        1000 * pressureKilopascals / (JetConstants.GasConstant * (temperatureCelsius + JetConstants.ZeroCelsiusKelvin));
}
