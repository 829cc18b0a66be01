using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.AirSumParts;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about the values of an engine sheet.</summary>
internal static class ExhaustEngineSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "static-thrust",
            "thrust from mass flow and exhaust speed",
            [
                Number("massFlowKilogramsPerSecond", "mass flow of the exhaust", Unit.KilogramPerSecond, 0.001, 10),
                Number("exitMetresPerSecond", "exhaust speed", Unit.MetrePerSecond, 1, 1000),
            ],
            ["jet-momentum"],
            i =>
                Answer(
                    "thrustNewtons",
                    EngineCycle.ThrustNewtons(i.Number("massFlowKilogramsPerSecond"), i.Number("exitMetresPerSecond")),
                    Unit.Newton,
                    "static thrust",
                    $"{i.Number("massFlowKilogramsPerSecond")} · {i.Number("exitMetresPerSecond")}"
                )
        ),
        new(
            "fuel-consumption",
            "specific fuel consumption",
            [
                Number("fuelKilogramsPerSecond", "fuel flow", Unit.KilogramPerSecond, 1e-6, 1),
                Number("thrustNewtons", "thrust", Unit.Newton, 0.1, 1e5),
            ],
            ["hand-engines", "model-fuel-contest"],
            i =>
                Answer(
                    "consumption",
                    EngineCycle.SpecificConsumption(i.Number("fuelKilogramsPerSecond"), i.Number("thrustNewtons")),
                    Unit.One,
                    "specific consumption in kg/(N h)",
                    $"3600 · {i.Number("fuelKilogramsPerSecond")} / {i.Number("thrustNewtons")}"
                )
        ),
        new(
            "exhaust-energy",
            "heat carried by the exhaust against heat released by the fuel",
            [
                Number("massFlowKilogramsPerSecond", "mass flow of the exhaust", Unit.KilogramPerSecond, 0.001, 10),
                Number("exitCelsius", "total temperature of the exhaust", Unit.Celsius, 50, 1200),
                Number("airCelsius", "air temperature", Unit.Celsius, -20, 50, 15),
                Number("fuelKilogramsPerSecond", "fuel flow", Unit.KilogramPerSecond, 1e-5, 0.3),
                Number(
                    "heatingValueMegajoulesPerKilogram",
                    "lower heating value",
                    Unit.MegajoulePerKilogram,
                    10,
                    130,
                    43.1
                ),
            ],
            ["jet-energy"],
            Energy
        ),
        new(
            "propulsive-efficiency",
            "propulsive efficiency of a jet engine in flight",
            [
                Number("jetMetresPerSecond", "jet speed", Unit.MetrePerSecond, 1, 5000),
                Number("machNumber", "Mach number of flight", Unit.One, 0, 5),
                Number("airKelvin", "air temperature", Unit.Kelvin, 150, 350),
            ],
            ["propulsion-course"],
            Propulsive
        ),
        new(
            "choking-ratio",
            "pressure ratio at which a nozzle chokes",
            [
                Number("heatRatio", "ratio of specific heats", Unit.One, 1.1, 1.67),
                Number("nozzleEfficiency", "efficiency of the nozzle", Unit.One, 0.7, 1, 1),
            ],
            ["nozzle-flow"],
            i =>
                Answer(
                    "chokingRatio",
                    EngineCycle.ChokingRatio(i.Number("heatRatio"), i.Number("nozzleEfficiency")),
                    Unit.One,
                    "total pressure over ambient pressure",
                    $"1 / [1 − ({i.Number("heatRatio")} − 1)/({i.Number("heatRatio")} + 1)/{i.Number("nozzleEfficiency")}]^(γ/(γ − 1))"
                )
        ),
        new(
            "nozzle-exit",
            "static temperature, Mach number and diameter of a nozzle's exit",
            [
                Number("totalKelvin", "total temperature", Unit.Kelvin, 300, 1500),
                Number("exitMetresPerSecond", "exhaust speed", Unit.MetrePerSecond, 1, 700),
                Number("massFlowKilogramsPerSecond", "mass flow of the exhaust", Unit.KilogramPerSecond, 0.001, 10),
                Number("pressureKilopascals", "air pressure", Unit.Kilopascal, 60, 110, 101.325),
            ],
            ["nozzle-flow"],
            NozzleExit
        ),
        new(
            "turbojet",
            "simple turbojet from pressure ratio and turbine inlet temperature",
            [
                Number("airKelvin", "air temperature", Unit.Kelvin, 200, 330),
                Number("airKilopascals", "air pressure", Unit.Kilopascal, 10, 110),
                Number("flightMetresPerSecond", "flight speed", Unit.MetrePerSecond, 0, 700, 0),
                Number("pressureRatio", "compressor pressure ratio", Unit.One, 1.1, 40),
                Number("turbineInletKelvin", "temperature before the turbine", Unit.Kelvin, 600, 2000),
                Number("intakeEfficiency", "intake", Unit.One, 0.5, 1, 1),
                Number("compressorEfficiency", "compressor", Unit.One, 0.5, 1, 1),
                Number("turbineEfficiency", "turbine", Unit.One, 0.5, 1, 1),
                Number("nozzleEfficiency", "nozzle", Unit.One, 0.5, 1, 1),
                Number("mechanicalEfficiency", "shaft", Unit.One, 0.5, 1, 1),
                Number("combustorLoss", "pressure lost in the combustor", Unit.One, 0, 0.5, 0),
                Number("gasHeat", "specific heat of the gas in J/(kg K)", Unit.One, 900, 1400, 1148),
                Number("gasHeatRatio", "ratio of specific heats of the gas", Unit.One, 1.2, 1.5, 1.333),
                Number("fuelAirRatio", "fuel over air", Unit.One, 0, 0.068, 0.02),
                new("nozzle", "convergent or fully expanding nozzle", Unit.One) { Words = ["convergent", "full"] },
            ],
            ["saravanamuttoo", "cengel-boles"],
            Turbojet
        ),
    ];

    private static SumAnswer Energy(SumInput i)
    {
        double flow = i.Number("massFlowKilogramsPerSecond");
        double carried = EngineCycle.CarriedWatts(flow, i.Number("exitCelsius"), i.Number("airCelsius"));
        double fuel = i.Number("fuelKilogramsPerSecond");
        double value = i.Number("heatingValueMegajoulesPerKilogram");
        double released = EngineCycle.ReleasedWatts(fuel, value);
        return Answer(
            (
                new("carriedKilowatts", carried / 1000, Unit.Kilowatt, "heat carried by the exhaust"),
                $"{flow} · 1148 · ({i.Number("exitCelsius")} − {i.Number("airCelsius")}) / 1000"
            ),
            (
                new("releasedKilowatts", released / 1000, Unit.Kilowatt, "heat released by the fuel"),
                $"{fuel} · {value} · 1000"
            ),
            (
                new("carriedPercent", 100 * carried / released, Unit.Percent, "carried over released"),
                $"100 · {carried:0} / {released:0}"
            )
        );
    }

    private static SumAnswer Propulsive(SumInput i)
    {
        double sound = Math.Sqrt(JetConstants.AirHeatRatio * JetConstants.GasConstant * i.Number("airKelvin"));
        double flight = i.Number("machNumber") * sound;
        double jet = i.Number("jetMetresPerSecond");
        return Answer(
            "efficiencyPercent",
            100 * EngineCycle.PropulsiveEfficiency(jet, flight),
            Unit.Percent,
            "propulsive efficiency",
            $"100 · 2 / (1 + {jet}/{flight:0.#})"
        );
    }

    private static SumAnswer NozzleExit(SumInput i)
    {
        double total = i.Number("totalKelvin");
        double speed = i.Number("exitMetresPerSecond");
        double kelvin = EngineCycle.StaticKelvin(total, speed);
        if (kelvin <= 0)
        {
            throw new ArgumentException("The speed needs more heat than the total temperature holds.", nameof(i));
        }

        double area = EngineCycle.ExitAreaSquareMetres(
            i.Number("massFlowKilogramsPerSecond"),
            kelvin,
            i.Number("pressureKilopascals"),
            speed
        );
        return Answer(
            (
                new("staticKelvin", kelvin, Unit.Kelvin, "static temperature"),
                $"{total} − {speed}² / (2 · {JetConstants.GasHeatJoulesPerKilogramKelvin})"
            ),
            (
                new("machNumber", EngineCycle.MachNumber(speed, kelvin), Unit.One, "Mach number"),
                $"{speed} / √(1.333 · 287.05 · {kelvin:0.#})"
            ),
            (
                new("diameterMillimetres", 1000 * Math.Sqrt(4 * area / Math.PI), Unit.Millimetre, "exit diameter"),
                $"1000 · √(4/π · ṁ R T/(p V))"
            )
        );
    }

    private static SumAnswer Turbojet(SumInput i)
    {
        TurbojetOutput output = TurbojetCycle.Solve(
            new(
                i.Number("airKelvin"),
                i.Number("airKilopascals"),
                i.Number("flightMetresPerSecond"),
                i.Number("pressureRatio"),
                i.Number("turbineInletKelvin")
            )
            {
                IntakeEfficiency = i.Number("intakeEfficiency"),
                CompressorEfficiency = i.Number("compressorEfficiency"),
                TurbineEfficiency = i.Number("turbineEfficiency"),
                NozzleEfficiency = i.Number("nozzleEfficiency"),
                MechanicalEfficiency = i.Number("mechanicalEfficiency"),
                CombustorLoss = i.Number("combustorLoss"),
                GasHeat = i.Number("gasHeat"),
                GasHeatRatio = i.Number("gasHeatRatio"),
                ExpandsFully = i.Word("nozzle") == "full",
            }
        );
        double fuelAir = i.Number("fuelAirRatio");
        return Answer(
            (
                new("compressorOutletKelvin", output.CompressorOutletKelvin, Unit.Kelvin, "after the compressor"),
                $"T02 = T01 + (T01/η_c)(PR^0.2857 − 1)"
            ),
            (
                new("exhaustKelvin", output.ExhaustKelvin, Unit.Kelvin, "total temperature of the exhaust"),
                $"T04 = T03 − cp_a (T02 − T01)/(cp_g η_m)"
            ),
            (
                new("exitMetresPerSecond", output.ExitMetresPerSecond, Unit.MetrePerSecond, "exit speed"),
                $"by expansion, sonic when choked"
            ),
            (
                new("specificThrust", output.SpecificThrust, Unit.One, "thrust per air flow in N s/kg"),
                $"V_j − V_0 + A (p_e − p_a)/ṁ"
            ),
            (
                new(
                    "consumption",
                    EngineCycle.SpecificConsumption(fuelAir, output.SpecificThrust),
                    Unit.One,
                    "specific consumption in kg/(N h)"
                ),
                $"3600 · {fuelAir} / {output.SpecificThrust:0.#}"
            )
        );
    }
}
