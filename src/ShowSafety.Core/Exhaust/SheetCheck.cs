using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>
/// Whether the values of a throttle state can be true together, and which one is odd. Asks only: no value of a sheet
/// is changed or filled in because of it.
/// </summary>
public static class SheetCheck
{
    private const string Thrust = "thrust";
    private const string Flow = "air mass flow";
    private const string Speed = "exhaust speed";
    private const string Fuel = "fuel flow";
    private const string Temperature = "exhaust temperature";

    /// <summary>Whether heat carried by the gas is 75 to 115 % of the heat released by the fuel (choice of band).</summary>
    public static bool EnergyAgrees(double carriedWatts, double releasedWatts) =>
        carriedWatts >= 0.75 * releasedWatts && carriedWatts <= 1.15 * releasedWatts;

    /// <summary>Whether two values of a sheet agree within <see cref="ExhaustThresholds.SheetTolerance"/>.</summary>
    public static bool Agree(double first, double second) =>
        Math.Abs(first - second) <= ExhaustThresholds.SheetTolerance * Math.Max(Math.Abs(first), Math.Abs(second));

    /// <summary>The findings on one state, in a fixed order.</summary>
    public static ValueList<Finding> Findings(Engine engine, EngineSheet sheet, ThrottleState state, AmbientAir air)
    {
        var facts = new SheetFacts(sheet, state, air);
        Finding?[] findings =
        [
            ThrustFinding(engine, facts),
            FuelAirFinding(engine, facts),
            IsStrongest(sheet, facts) ? ConsumptionFinding(engine, facts) : null,
            EnergyFinding(engine, facts),
            NozzleFinding(engine, facts),
        ];
        return [.. findings.OfType<Finding>()];
    }

    /// <summary>
    /// Which of thrust, mass flow and exhaust speed is odd when they disagree: each is replaced in turn by what the
    /// other two say, and the replacement that fits most of the sheet names it; several when they fit alike.
    /// </summary>
    public static string OddOne(SheetFacts facts, double thrust, double flow, double speed)
    {
        (string Name, int Fits)[] trials =
        [
            (Thrust, facts.Fits(flow * speed, flow, speed)),
            (Flow, facts.Fits(thrust, thrust / speed, speed)),
            (Speed, facts.Fits(thrust, flow, thrust / flow)),
        ];
        int best = trials.Max(t => t.Fits);
        return string.Join(" / ", trials.Where(t => t.Fits == best).Select(t => t.Name));
    }

    private static Finding? ThrustFinding(Engine engine, SheetFacts facts) =>
        facts is { Thrust: { } thrust, ExhaustFlow: { } flow, Speed: { } speed } && !Agree(thrust, flow * speed)
            ? new Finding("exhaust.thrust-disagrees", Severity.Act)
            {
                ElementId = engine.Id,
                Arguments =
                [
                    FindingArgument.Of("state", facts.Name),
                    FindingArgument.Of("thrust", Quantity.Plain(thrust, Unit.Newton)),
                    FindingArgument.Of("product", Quantity.Plain(flow * speed, Unit.Newton)),
                    FindingArgument.Of("odd", OddOne(facts, thrust, flow, speed)),
                ],
                Field = "ThrottleState.ThrustNewtons",
                Citations = ["jet-momentum"],
            }
            : null;

    private static Finding? FuelAirFinding(Engine engine, SheetFacts facts)
    {
        if (facts.FuelAir is not { } ratio || facts.FuelAirUsual)
        {
            return null;
        }

        bool impossible = ratio > ExhaustThresholds.StoichiometricFuelAir;
        return new Finding("exhaust.fuel-air-unusual", impossible ? Severity.Act : Severity.Note)
        {
            ElementId = engine.Id,
            Arguments =
            [
                FindingArgument.Of("state", facts.Name),
                FindingArgument.Of("ratio", Quantity.Plain(100 * ratio, Unit.Percent)),
                FindingArgument.Of("odd", facts.ConsumptionUsual == false ? Fuel : Flow),
            ],
            Field = "ThrottleState.FuelFlowKilogramsPerSecond",
            Citations = ["hand-engines"],
        };
    }

    // Consumption per newton is a figure of the rated state; every engine idles on a lot of fuel for little thrust.
    private static bool IsStrongest(EngineSheet sheet, SheetFacts facts) =>
        sheet.States.All(s => !(s.ThrustNewtons?.Value > facts.Thrust));

    private static Finding? ConsumptionFinding(Engine engine, SheetFacts facts) =>
        facts is { Consumption: { } consumption, ConsumptionUsual: false }
            ? new Finding("exhaust.consumption-unusual", Severity.Note)
            {
                ElementId = engine.Id,
                Arguments =
                [
                    FindingArgument.Of("state", facts.Name),
                    FindingArgument.Of("consumption", Quantity.Plain(consumption, Unit.One)),
                    FindingArgument.Of("odd", facts.FuelAirUsual ? Thrust : Fuel),
                ],
                Field = "ThrottleState.FuelFlowKilogramsPerSecond",
                Citations = ["hand-engines", "model-fuel-contest"],
            }
            : null;

    private static Finding? EnergyFinding(Engine engine, SheetFacts facts)
    {
        if (facts is not { Carried: { } carried, Released: { } released } || EnergyAgrees(carried, released))
        {
            return null;
        }

        bool fuelFitsAll = facts.FuelAirUsual && facts.ConsumptionUsual != false;
        string odd =
            fuelFitsAll ? Temperature
            : facts.FuelAirUsual ? Fuel
            : facts.ConsumptionUsual == true ? Flow
            : Fuel;
        return new Finding("exhaust.energy-disagrees", Severity.Act)
        {
            ElementId = engine.Id,
            Arguments =
            [
                FindingArgument.Of("state", facts.Name),
                FindingArgument.Of("carried", Quantity.Plain(carried / 1000, Unit.Kilowatt)),
                FindingArgument.Of("released", Quantity.Plain(released / 1000, Unit.Kilowatt)),
                FindingArgument.Of("odd", odd),
            ],
            Field = "ThrottleState.ExhaustTotalTemperatureCelsius",
            Citations = ["jet-energy"],
        };
    }

    private static Finding? NozzleFinding(Engine engine, SheetFacts facts) =>
        facts is { Temperature: { } celsius, Speed: { } speed } && facts.Mach(speed) is null or >= 1
            ? new Finding("exhaust.nozzle-choked", Severity.Act)
            {
                ElementId = engine.Id,
                Arguments =
                [
                    FindingArgument.Of("state", facts.Name),
                    FindingArgument.Of("speed", Quantity.Plain(speed, Unit.MetrePerSecond)),
                    FindingArgument.Of("temperature", Quantity.Plain(celsius, Unit.Celsius)),
                ],
                Field = "ThrottleState.ExhaustSpeedMetresPerSecond",
                Citations = ["nozzle-flow"],
            }
            : null;
}
