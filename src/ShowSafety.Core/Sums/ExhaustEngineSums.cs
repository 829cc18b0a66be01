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
            ExhaustEngineAnswers.Energy
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
            ExhaustEngineAnswers.Propulsive
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
            ExhaustEngineAnswers.NozzleExit
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
            ExhaustEngineAnswers.Turbojet
        ),
    ];
}
