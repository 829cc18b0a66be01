namespace ShowSafety.Core.Exhaust;

/// <summary>What a simple turbojet is calculated from. Temperatures in K, pressures in kPa, speeds in m/s.</summary>
/// <param name="AirKelvin">Static temperature of the air, K.</param>
/// <param name="AirKilopascals">Static pressure of the air, kPa.</param>
/// <param name="FlightMetresPerSecond">Speed through the air, m/s; 0 on a bench.</param>
/// <param name="PressureRatio">Total pressure ratio of the compressor, over 1.</param>
/// <param name="TurbineInletKelvin">Total temperature before the turbine, K.</param>
public sealed record TurbojetInput(
    double AirKelvin,
    double AirKilopascals,
    double FlightMetresPerSecond,
    double PressureRatio,
    double TurbineInletKelvin
)
{
    /// <summary>Isentropic efficiency of the intake, 0 to 1.</summary>
    public double IntakeEfficiency { get; init; } = 1;

    /// <summary>Isentropic efficiency of the compressor, 0 to 1.</summary>
    public double CompressorEfficiency { get; init; } = 1;

    /// <summary>Isentropic efficiency of the turbine, 0 to 1.</summary>
    public double TurbineEfficiency { get; init; } = 1;

    /// <summary>Isentropic efficiency of the nozzle, 0 to 1.</summary>
    public double NozzleEfficiency { get; init; } = 1;

    /// <summary>Mechanical efficiency of the shaft, 0 to 1.</summary>
    public double MechanicalEfficiency { get; init; } = 1;

    /// <summary>Share of the compressor's delivery pressure lost in the combustor, 0 to 1.</summary>
    public double CombustorLoss { get; init; }

    /// <summary>Specific heat of the gas after the combustor, J/(kg K).</summary>
    public double GasHeat { get; init; } = JetConstants.GasHeatJoulesPerKilogramKelvin;

    /// <summary>Ratio of specific heats of the gas after the combustor.</summary>
    public double GasHeatRatio { get; init; } = JetConstants.GasHeatRatio;

    /// <summary>Whether the nozzle expands to ambient pressure whatever the speed; else a convergent one may choke.</summary>
    public bool ExpandsFully { get; init; }
}

/// <summary>What comes of a simple turbojet.</summary>
/// <param name="CompressorOutletKelvin">Total temperature after the compressor, K.</param>
/// <param name="ExhaustKelvin">Total temperature of the exhaust, K.</param>
/// <param name="ExitMetresPerSecond">Exit speed, m/s.</param>
/// <param name="SpecificThrust">Thrust per air flow, N s/kg, fuel mass left out.</param>
public sealed record TurbojetOutput(
    double CompressorOutletKelvin,
    double ExhaustKelvin,
    double ExitMetresPerSecond,
    double SpecificThrust
);

/// <summary>
/// The simple turbojet with constant specific heats, station by station: Saravanamuttoo, Rogers and Cohen, Gas Turbine
/// Theory, ch. 3 (memory). For asking whether a sheet can be true, never for filling one in.
/// </summary>
public static class TurbojetCycle
{
    /// <summary>Solves the cycle.</summary>
    /// <exception cref="ArgumentException">The turbine cannot drive the compressor, or nothing is left to expand.</exception>
    public static TurbojetOutput Solve(TurbojetInput input)
    {
        double ram =
            input.FlightMetresPerSecond
            * input.FlightMetresPerSecond
            / (2 * JetConstants.AirHeatJoulesPerKilogramKelvin);
        double intakeKelvin = input.AirKelvin + ram;
        double intakePressure =
            input.AirKilopascals * Math.Pow(1 + (input.IntakeEfficiency * ram / input.AirKelvin), 3.5);
        double rise = EngineCycle.CompressorRiseKelvin(intakeKelvin, input.PressureRatio, input.CompressorEfficiency);
        double drop = JetConstants.AirHeatJoulesPerKilogramKelvin * rise / (input.GasHeat * input.MechanicalEfficiency);
        double expanded = 1 - (drop / input.TurbineEfficiency / input.TurbineInletKelvin);
        double exponent = input.GasHeatRatio / (input.GasHeatRatio - 1);
        double before = intakePressure * input.PressureRatio * (1 - input.CombustorLoss);
        double ratio = expanded > 0 ? before * Math.Pow(expanded, exponent) / input.AirKilopascals : 0;
        return ratio > 1
            ? Expand(input, intakeKelvin + rise, input.TurbineInletKelvin - drop, ratio)
            : throw new ArgumentException(
                "The turbine cannot drive the compressor at this temperature.",
                nameof(input)
            );
    }

    private static TurbojetOutput Expand(TurbojetInput input, double outletKelvin, double exhaustKelvin, double ratio)
    {
        double choking = EngineCycle.ChokingRatio(input.GasHeatRatio, input.NozzleEfficiency);
        if (input.ExpandsFully || ratio <= choking)
        {
            double power = (input.GasHeatRatio - 1) / input.GasHeatRatio;
            double fall = input.NozzleEfficiency * exhaustKelvin * (1 - Math.Pow(ratio, -power));
            double speed = Math.Sqrt(2 * input.GasHeat * fall);
            return new(outletKelvin, exhaustKelvin, speed, speed - input.FlightMetresPerSecond);
        }

        double throatKelvin = 2 * exhaustKelvin / (input.GasHeatRatio + 1);
        double sonic = Math.Sqrt(input.GasHeatRatio * JetConstants.GasConstant * throatKelvin);
        double throatPressure = ratio / choking * input.AirKilopascals;
        double areaPerFlow = JetConstants.GasConstant * throatKelvin / (1000 * throatPressure * sonic);
        double pressureThrust = areaPerFlow * 1000 * (throatPressure - input.AirKilopascals);
        return new(outletKelvin, exhaustKelvin, sonic, sonic - input.FlightMetresPerSecond + pressureThrust);
    }
}
