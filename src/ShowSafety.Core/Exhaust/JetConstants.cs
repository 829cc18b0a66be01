namespace ShowSafety.Core.Exhaust;

/// <summary>
/// Constants of the round turbulent jet and of the gas in it. Decided set: Fischer et al. 1979, Tables 9.2 and 9.3
/// (memory); it conserves momentum, which the other well-known sets do not. Validity: fully developed jet, beyond
/// about ten nozzle diameters.
/// </summary>
public static class JetConstants
{
    /// <summary>Coefficient C of U_c = C √(T/ρ_a)/x, a pure number: Fischer et al. 1979, 7.0 ± 0.1 (memory).</summary>
    public const double SpeedCoefficient = 7.0;

    /// <summary>Coefficient of the temperature rise, a pure number: Fischer et al. 1979, 5.6 ± 0.1 (memory).</summary>
    public const double RiseCoefficient = 5.6;

    /// <summary>Slope of the radius where the speed is 1/e of the centre's: Fischer et al. 1979 (memory).</summary>
    public const double SpeedWidthSlope = 0.107;

    /// <summary>Slope of the radius where the temperature rise is 1/e of the centre's: Fischer et al. 1979 (memory).</summary>
    public const double RiseWidthSlope = 0.127;

    /// <summary>Low end of the published band of the speed decay constant B.</summary>
    public const double SpeedDecayLow = 5.7;

    /// <summary>High end of the published band of the speed decay constant B: the cautious one.</summary>
    public const double SpeedDecayHigh = 6.6;

    /// <summary>Low end of the published band of the temperature decay constant K.</summary>
    public const double RiseDecayLow = 4.5;

    /// <summary>High end of the published band of the temperature decay constant K: the cautious one.</summary>
    public const double RiseDecayHigh = 5.7;

    /// <summary>High end of the published band of the half-speed radius slope S (Pope 2000, Table 5.1).</summary>
    public const double HalfSpeedSlopeHigh = 0.102;

    /// <summary>High end of the published band of the half-rise radius slope S_T.</summary>
    public const double HalfRiseSlopeHigh = 0.127;

    /// <summary>Factor on the mean speed for gusts in the jet: this project's choice.</summary>
    public const double GustFactor = 1.5;

    /// <summary>Specific heat of exhaust gas at constant pressure, J/(kg K): common value for air-breathing engines.</summary>
    public const double GasHeatJoulesPerKilogramKelvin = 1148;

    /// <summary>Specific heat of air at constant pressure, J/(kg K).</summary>
    public const double AirHeatJoulesPerKilogramKelvin = 1005;

    /// <summary>Ratio of specific heats of exhaust gas.</summary>
    public const double GasHeatRatio = 1.333;

    /// <summary>Ratio of specific heats of air.</summary>
    public const double AirHeatRatio = 1.4;

    /// <summary>Gas constant of air, J/(kg K); exhaust of kerosene differs by under 1 %.</summary>
    public const double GasConstant = 287.05;

    /// <summary>0 °C in kelvin.</summary>
    public const double ZeroCelsiusKelvin = 273.15;

    /// <summary>Coefficient of the thrust law from a decay constant per nozzle diameter: 2B/√π (exact).</summary>
    public static double ThrustCoefficient(double decayConstant) => 2 * decayConstant / Math.Sqrt(Math.PI);

    /// <summary>Decay constant per nozzle diameter from a coefficient of the thrust law: C √π/2 (exact).</summary>
    public static double DecayConstant(double thrustCoefficient) => thrustCoefficient * Math.Sqrt(Math.PI) / 2;

    /// <summary>Slope of the 1/e radius from the slope of the half-value radius: S/√(ln 2) (exact for a Gaussian).</summary>
    public static double WidthSlope(double halfSlope) => halfSlope / Math.Sqrt(Math.Log(2));
}
