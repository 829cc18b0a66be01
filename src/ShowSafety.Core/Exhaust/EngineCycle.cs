namespace ShowSafety.Core.Exhaust;

/// <summary>Relations between the values of an engine sheet: momentum, energy and state of the gas at the nozzle.</summary>
public static class EngineCycle
{
    /// <summary>Static thrust of an unchoked nozzle, N: ṁ V (momentum balance).</summary>
    public static double ThrustNewtons(double massFlowKilogramsPerSecond, double exitSpeedMetresPerSecond) =>
        massFlowKilogramsPerSecond * exitSpeedMetresPerSecond;

    /// <summary>Propulsive efficiency, 0 to 1: 2/(1 + V_j/V_0).</summary>
    public static double PropulsiveEfficiency(double jetMetresPerSecond, double flightMetresPerSecond) =>
        2 / (1 + (jetMetresPerSecond / flightMetresPerSecond));

    /// <summary>Specific fuel consumption, kg/(N h): 3600 ṁ_f/T.</summary>
    public static double SpecificConsumption(double fuelKilogramsPerSecond, double thrustNewtons) =>
        3600 * fuelKilogramsPerSecond / thrustNewtons;

    /// <summary>Heat taken up by the gas, W: ṁ cp (T_exit − T_air).</summary>
    public static double CarriedWatts(double massFlowKilogramsPerSecond, double exitCelsius, double airCelsius) =>
        ThrustLaw.HeatWatts(massFlowKilogramsPerSecond, exitCelsius - airCelsius);

    /// <summary>Heat released by the fuel, W: ṁ_f LHV.</summary>
    public static double ReleasedWatts(double fuelKilogramsPerSecond, double heatingValueMegajoulesPerKilogram) =>
        fuelKilogramsPerSecond * heatingValueMegajoulesPerKilogram * 1e6;

    /// <summary>Static temperature at the exit, K: T0 − V²/(2 cp_g). Not over 0 when the sheet is impossible.</summary>
    public static double StaticKelvin(double totalKelvin, double exitSpeedMetresPerSecond) =>
        totalKelvin
        - (exitSpeedMetresPerSecond * exitSpeedMetresPerSecond / (2 * JetConstants.GasHeatJoulesPerKilogramKelvin));

    /// <summary>Mach number at the exit: V/√(γ R T).</summary>
    public static double MachNumber(double exitSpeedMetresPerSecond, double staticKelvin) =>
        exitSpeedMetresPerSecond / Math.Sqrt(JetConstants.GasHeatRatio * JetConstants.GasConstant * staticKelvin);

    /// <summary>Exit area, m²: ṁ R T/(p V).</summary>
    public static double ExitAreaSquareMetres(
        double massFlowKilogramsPerSecond,
        double staticKelvin,
        double pressureKilopascals,
        double exitSpeedMetresPerSecond
    ) =>
        massFlowKilogramsPerSecond
        * JetConstants.GasConstant
        * staticKelvin
        / (1000 * pressureKilopascals * exitSpeedMetresPerSecond);

    /// <summary>Pressure ratio at which a nozzle chokes: ((γ + 1)/2)^(γ/(γ − 1)), for a nozzle without losses.</summary>
    public static double ChokingRatio(double heatRatio) => Math.Pow((heatRatio + 1) / 2, heatRatio / (heatRatio - 1));

    /// <summary>The same for a nozzle of an efficiency: 1/[1 − (1/η)(γ − 1)/(γ + 1)]^(γ/(γ − 1)).</summary>
    public static double ChokingRatio(double heatRatio, double nozzleEfficiency) =>
        1 / Math.Pow(1 - ((heatRatio - 1) / (heatRatio + 1) / nozzleEfficiency), heatRatio / (heatRatio - 1));

    /// <summary>Temperature rise over a compressor, K: (T1/η)(PR^((γ − 1)/γ) − 1).</summary>
    public static double CompressorRiseKelvin(double inletKelvin, double pressureRatio, double efficiency) =>
        inletKelvin
        / efficiency
        * (Math.Pow(pressureRatio, (JetConstants.AirHeatRatio - 1) / JetConstants.AirHeatRatio) - 1);
}
