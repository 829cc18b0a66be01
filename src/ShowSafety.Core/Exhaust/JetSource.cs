using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>
/// What one throttle state blows out, as far as the sheet tells: stated values, and those that follow from them. Where
/// the sheet gives a value twice the cautious one is kept: high thrust for speed, low thrust for heat, high heat.
/// </summary>
public sealed record JetSource
{
    /// <summary>Id of the throttle state.</summary>
    public required string StateId { get; init; }

    /// <summary>Thrust in N, best estimate, or null when it is neither stated nor to be derived.</summary>
    public double? ThrustNewtons { get; init; }

    /// <summary>Thrust in N, largest the sheet gives.</summary>
    public double? ThrustHighNewtons { get; init; }

    /// <summary>Thrust in N, smallest the sheet gives.</summary>
    public double? ThrustLowNewtons { get; init; }

    /// <summary>Whether the thrust was derived from mass flow and exhaust speed.</summary>
    public bool ThrustDerived { get; init; }

    /// <summary>Mass flow of the exhaust in kg/s, or null.</summary>
    public double? MassFlowKilogramsPerSecond { get; init; }

    /// <summary>Exhaust speed in m/s, or null.</summary>
    public double? ExitMetresPerSecond { get; init; }

    /// <summary>Total temperature of the exhaust in °C, or null.</summary>
    public double? ExitCelsius { get; init; }

    /// <summary>Heat flow over the hottest ambient air in W, or null.</summary>
    public double? HeatWatts { get; init; }

    /// <summary>Whether the heat is that of the whole fuel, because the mass flow is missing or disagrees.</summary>
    public bool HeatFromFuel { get; init; }

    /// <summary>Shaft speed in revolutions per minute, or null.</summary>
    public double? ShaftSpeed { get; init; }

    /// <summary>Weakest pedigree of the values used.</summary>
    public Pedigree Pedigree { get; init; } = Pedigree.Calculated;

    /// <summary>Reads a state of a sheet.</summary>
    public static JetSource Of(ThrottleState state, EngineSheet sheet, AmbientAir air)
    {
        double? stated = state.ThrustNewtons?.Value;
        double? speed = state.ExhaustSpeedMetresPerSecond?.Value;
        double? flow = ExhaustFlow(state) ?? (speed > 0 ? stated / speed : null);
        double? derived = ExhaustFlow(state) * speed;
        (double? heat, bool fromFuel) = Heat(state, sheet, air, flow);
        return new()
        {
            StateId = state.Id,
            ThrustNewtons = stated ?? derived,
            ThrustHighNewtons = Larger(stated, derived),
            ThrustLowNewtons = Smaller(stated, derived),
            ThrustDerived = stated is null && derived is not null,
            MassFlowKilogramsPerSecond = flow,
            ExitMetresPerSecond = speed ?? (flow > 0 ? stated / flow : null),
            ExitCelsius = state.ExhaustTotalTemperatureCelsius?.Value,
            HeatWatts = heat,
            HeatFromFuel = fromFuel,
            ShaftSpeed = state.ShaftSpeedRevolutionsPerMinute?.Value,
            Pedigree = Pedigrees.Weakest(
                state.ThrustNewtons,
                state.AirMassFlowKilogramsPerSecond,
                state.ExhaustSpeedMetresPerSecond,
                state.ExhaustTotalTemperatureCelsius,
                state.FuelFlowKilogramsPerSecond
            ),
        };
    }

    /// <summary>
    /// Air and fuel together in kg/s; where the fuel is not stated, 2.5 % of the air, the high end of what is usual.
    /// </summary>
    public static double? ExhaustFlow(ThrottleState state) =>
        state.AirMassFlowKilogramsPerSecond is { } air
            ? air.Value + (state.FuelFlowKilogramsPerSecond?.Value ?? (ExhaustThresholds.UsualFuelAirHigh * air.Value))
            : null;

    private static (double? Watts, bool FromFuel) Heat(
        ThrottleState state,
        EngineSheet sheet,
        AmbientAir air,
        double? flow
    )
    {
        double? carried =
            flow is { } mass && state.ExhaustTotalTemperatureCelsius is { } exit
                ? Math.Max(0, EngineCycle.CarriedWatts(mass, exit.Value, air.TemperatureCelsius))
                : null;
        double? released = state.FuelFlowKilogramsPerSecond is { } fuel
            ? EngineCycle.ReleasedWatts(
                fuel.Value,
                sheet
                    .LowerHeatingValueMegajoulesPerKilogram.Or<EngineSheet>(
                        nameof(EngineSheet.LowerHeatingValueMegajoulesPerKilogram)
                    )
                    .Value
            )
            : null;
        bool disagree = carried is { } c && released is { } r && !SheetCheck.EnergyAgrees(c, r);
        bool useFuel = released is not null && (carried is null || (disagree && released > carried));
        return useFuel ? (released, true) : (carried, false);
    }

    private static double? Larger(double? first, double? second) =>
        first is { } a && second is { } b ? Math.Max(a, b) : first ?? second;

    private static double? Smaller(double? first, double? second) =>
        first is { } a && second is { } b ? Math.Min(a, b) : first ?? second;
}
