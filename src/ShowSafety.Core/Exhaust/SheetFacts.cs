using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>The values of one throttle state as plain numbers in SI, with what follows from them; null where unknown.</summary>
public sealed class SheetFacts
{
    private readonly double? _exitArea;
    private readonly AmbientAir _air;

    /// <summary>Takes the values of a state.</summary>
    public SheetFacts(EngineSheet sheet, ThrottleState state, AmbientAir air)
    {
        _air = air;
        _exitArea = sheet.NozzleDiameterMetres is { } diameter ? Math.PI / 4 * diameter.Value * diameter.Value : null;
        Name = state.Name ?? state.Id;
        Thrust = state.ThrustNewtons?.Value;
        AirFlow = state.AirMassFlowKilogramsPerSecond?.Value;
        ExhaustFlow = JetSource.ExhaustFlow(state);
        Speed = state.ExhaustSpeedMetresPerSecond?.Value;
        Temperature = state.ExhaustTotalTemperatureCelsius?.Value;
        FuelFlow = state.FuelFlowKilogramsPerSecond?.Value;
        double heatingValue = sheet
            .LowerHeatingValueMegajoulesPerKilogram.Or<EngineSheet>(
                nameof(EngineSheet.LowerHeatingValueMegajoulesPerKilogram)
            )
            .Value;
        Released = FuelFlow is { } fuel ? EngineCycle.ReleasedWatts(fuel, heatingValue) : null;
        Carried = ExhaustFlow is { } flow && Temperature is { } exit ? CarriedBy(flow, exit) : null;
    }

    /// <summary>Name people know the state by.</summary>
    public string Name { get; }

    /// <summary>Thrust, N.</summary>
    public double? Thrust { get; }

    /// <summary>Air mass flow, kg/s.</summary>
    public double? AirFlow { get; }

    /// <summary>Exhaust mass flow, kg/s.</summary>
    public double? ExhaustFlow { get; }

    /// <summary>Exhaust speed, m/s.</summary>
    public double? Speed { get; }

    /// <summary>Exhaust total temperature, °C.</summary>
    public double? Temperature { get; }

    /// <summary>Fuel flow, kg/s.</summary>
    public double? FuelFlow { get; }

    /// <summary>Heat released by the fuel, W.</summary>
    public double? Released { get; }

    /// <summary>Heat carried by the gas, W.</summary>
    public double? Carried { get; }

    /// <summary>Fuel over air.</summary>
    public double? FuelAir => AirFlow > 0 ? FuelFlow / AirFlow : null;

    /// <summary>Specific fuel consumption, kg/(N h).</summary>
    public double? Consumption =>
        FuelFlow is { } fuel && Thrust is > 0 and { } thrust ? EngineCycle.SpecificConsumption(fuel, thrust) : null;

    /// <summary>Whether fuel over air is known and usual.</summary>
    public bool FuelAirUsual =>
        FuelAir is >= ExhaustThresholds.UsualFuelAirLow and <= ExhaustThresholds.UsualFuelAirHigh;

    /// <summary>Whether the specific consumption is usual; null when it is unknown.</summary>
    public bool? ConsumptionUsual => Consumption is { } consumption ? IsUsual(consumption) : null;

    /// <summary>Mach number at the exit for a speed; null when no temperature is known or the sheet is impossible.</summary>
    public double? Mach(double speed) =>
        StaticKelvin(speed) is > 0 and { } kelvin ? EngineCycle.MachNumber(speed, kelvin) : null;

    /// <summary>How many relations of the sheet a thrust, a mass flow and an exhaust speed fit.</summary>
    public int Fits(double thrust, double flow, double speed)
    {
        bool[] relations =
        [
            Temperature is { } exit
                && Released is { } released
                && SheetCheck.EnergyAgrees(CarriedBy(flow, exit), released),
            FuelFlow is { } fuel
                && fuel / flow is >= ExhaustThresholds.UsualFuelAirLow and <= ExhaustThresholds.UsualFuelAirHigh,
            FuelFlow is { } burnt && IsUsual(EngineCycle.SpecificConsumption(burnt, thrust)),
            _exitArea is { } area
                && StaticKelvin(speed) is > 0 and { } kelvin
                && SheetCheck.Agree(
                    area,
                    EngineCycle.ExitAreaSquareMetres(flow, kelvin, _air.PressureKilopascals, speed)
                ),
            Mach(speed) < 1,
        ];
        return relations.Count(fits => fits);
    }

    private double CarriedBy(double flow, double exitCelsius) =>
        EngineCycle.CarriedWatts(flow, exitCelsius, _air.TemperatureCelsius);

    private double? StaticKelvin(double speed) =>
        Temperature is { } exit ? EngineCycle.StaticKelvin(exit + JetConstants.ZeroCelsiusKelvin, speed) : null;

    private static bool IsUsual(double consumption) =>
        consumption is >= ExhaustThresholds.UsualConsumptionLow and <= ExhaustThresholds.UsualConsumptionHigh;
}
