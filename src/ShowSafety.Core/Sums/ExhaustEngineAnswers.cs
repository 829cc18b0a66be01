using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.AirSumParts;

namespace ShowSafety.Core.Sums;

/// <summary>The calculations behind <see cref="ExhaustEngineSums"/>, step by step.</summary>
internal static class ExhaustEngineAnswers
{
    /// <summary>Solves the sum about energy.</summary>
    public static SumAnswer Energy(SumInput i)
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

    /// <summary>Solves the sum about propulsive.</summary>
    public static SumAnswer Propulsive(SumInput i)
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

    /// <summary>Solves the sum about nozzle exit.</summary>
    public static SumAnswer NozzleExit(SumInput i)
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

    /// <summary>Solves the sum about turbojet.</summary>
    public static SumAnswer Turbojet(SumInput i)
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
