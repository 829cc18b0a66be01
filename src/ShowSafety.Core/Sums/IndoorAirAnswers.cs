using ShowSafety.Core.IndoorAir;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.AirSumParts;

namespace ShowSafety.Core.Sums;

/// <summary>The calculations behind <see cref="IndoorAirSums"/>, step by step.</summary>
internal static class IndoorAirAnswers
{
    /// <summary>Solves the sum about concentration.</summary>
    public static SumAnswer Concentration(SumInput i)
    {
        var room = new RoomBalance(
            i.Number("volumeCubicMetres"),
            i.Number("freshAirCubicMetresPerSecond"),
            i.Number("outsideMilligramsPerCubicMetre")
        );
        double source = i.Number("sourceMilligramsPerSecond");
        double start = i.Number("startMilligramsPerCubicMetre");
        double value = room.After(i.Number("seconds"), source, start);
        var parts = new List<(SumResult, FormattableString)>
        {
            (
                new("milligramsPerCubicMetre", value, Unit.MilligramPerCubicMetre, "concentration"),
                $"C = C_a + S/Q (1 − e^(−Qt/V)) + (C_0 − C_a) e^(−Qt/V); C_0 + S t/V without fresh air"
            ),
        };
        if (room.Exchange > 0)
        {
            parts.Add(
                (
                    new(
                        "steadyMilligramsPerCubicMetre",
                        room.Outside + (source / room.Exchange),
                        Unit.MilligramPerCubicMetre,
                        "in the long run"
                    ),
                    $"C_a + {source}/{room.Exchange}"
                )
            );
            parts.Add(
                (
                    new("halfHours", Math.Log(2) / room.Rate / 3600, Unit.Hour, "time to half of the change"),
                    $"ln 2 · V/Q / 3600"
                )
            );
        }

        return Answer([.. parts]);
    }

    /// <summary>Solves the sum about clearing.</summary>
    public static SumAnswer Clearing(SumInput i)
    {
        var room = new RoomBalance(i.Number("volumeCubicMetres"), i.Number("freshAirCubicMetresPerSecond"), 0);
        double start = i.Number("startMilligramsPerCubicMetre");
        double limit = i.Number("limitMilligramsPerCubicMetre");
        double seconds =
            room.SecondsToClear(limit, start) ?? throw new ArgumentException("The room never clears.", nameof(i));
        return Answer("minutes", seconds / 60, Unit.Minute, "time to clear", $"(V/Q) ln({start}/{limit}) / 60");
    }

    /// <summary>Solves the sum about time to limit.</summary>
    public static SumAnswer TimeToLimit(SumInput i)
    {
        var room = new RoomBalance(i.Number("volumeCubicMetres"), i.Number("freshAirCubicMetresPerSecond"), 0);
        double start = i.Number("startMilligramsPerCubicMetre");
        double limit = i.Number("limitMilligramsPerCubicMetre");
        double seconds =
            room.SecondsUntil(limit, i.Number("sourceMilligramsPerSecond"), start)
            ?? throw new ArgumentException("The room never reaches the limit.", nameof(i));
        return Answer(
            "seconds",
            seconds,
            Unit.Second,
            "time to the limit",
            $"t = (V/Q) ln((C_ss − {start})/(C_ss − {limit})), C_ss = S/Q"
        );
    }

    /// <summary>Solves the sum about heat.</summary>
    public static SumAnswer Heat(SumInput i)
    {
        double watts = i.Number("fuelKilogramsPerSecond") * i.Number("heatingValueMegajoulesPerKilogram") * 1e6;
        double perVolume = i.Number("airDensityKilogramsPerCubicMetre") * 1005;
        var room = new RoomBalance(
            perVolume * i.Number("volumeCubicMetres"),
            perVolume * i.Number("freshAirCubicMetresPerSecond"),
            0
        );
        return Answer(
            (
                new("kilowatts", watts / 1000, Unit.Kilowatt, "heat released into the room"),
                $"{i.Number("fuelKilogramsPerSecond")} · {i.Number("heatingValueMegajoulesPerKilogram")} · 1000"
            ),
            (
                new("riseKelvin", room.After(i.Number("seconds"), watts, 0), Unit.Kelvin, "rise after the time"),
                $"P/(ρ cp Q) (1 − e^(−Qt/V)); P t/(ρ V cp) without fresh air"
            )
        );
    }

    /// <summary>Solves the sum about closed room.</summary>
    public static SumAnswer ClosedRoom(SumInput i)
    {
        var room = new RoomBalance(i.Number("volumeCubicMetres"), 0, 0);
        double fuel = i.Number("fuelKilogramsPerSecond");
        double seconds = i.Number("seconds");
        double monoxide = room.After(seconds, 1000 * fuel * i.Number("carbonMonoxideGramsPerKilogram"), 0);
        double index = FuelProducts.Of(FuelProducts.KeroseneCarbon, FuelProducts.KeroseneHydrogen).CarbonDioxide;
        double dioxide = room.After(seconds, 1e6 * fuel * index, 0);
        return Answer(
            (
                new(
                    "carbonMonoxidePpm",
                    Gases.Ppm(monoxide, Gases.CarbonMonoxide),
                    Unit.PartPerMillion,
                    "carbon monoxide"
                ),
                $"ṁ_f EI t/V · {Gases.LitresPerMole}/{Gases.CarbonMonoxide}"
            ),
            (
                new(
                    "carbonDioxideRisePercent",
                    Gases.Ppm(dioxide, Gases.CarbonDioxide) / 1e4,
                    Unit.Percent,
                    "rise of carbon dioxide by volume"
                ),
                $"ṁ_f · {index:0.###} · t/V · {Gases.LitresPerMole}/{Gases.CarbonDioxide}"
            )
        );
    }

    /// <summary>Solves the sum about combustion.</summary>
    public static SumAnswer Combustion(SumInput i)
    {
        CombustionProducts products = FuelProducts.Of(i.Number("carbonAtoms"), i.Number("hydrogenAtoms"));
        return Answer(
            (new("carbonDioxide", products.CarbonDioxide, Unit.One, "kg CO2 per kg fuel"), $"c · 44.009 / M_f"),
            (new("water", products.Water, Unit.One, "kg water per kg fuel"), $"h/2 · 18.015 / M_f"),
            (new("oxygen", products.Oxygen, Unit.One, "kg oxygen per kg fuel"), $"(c + h/4) · 31.998 / M_f"),
            (new("air", products.Air, Unit.One, "kg air per kg fuel"), $"(c + h/4) · 4.76 · 28.97 / M_f"),
            (
                new("fuelAirRatio", products.FuelAirRatio, Unit.One, "stoichiometric fuel over air"),
                $"1 / {products.Air:0.###}"
            )
        );
    }

    /// <summary>Solves the sum about efficiency.</summary>
    public static SumAnswer Efficiency(SumInput i)
    {
        double value = i.Number("heatingValueMegajoulesPerKilogram");
        double monoxide = i.Number("carbonMonoxideGramsPerKilogram");
        double hydrocarbons = i.Number("hydrocarbonsGramsPerKilogram");
        double efficiency = Gases.CombustionEfficiency(monoxide, hydrocarbons, value);
        return Answer(
            (
                new("efficiency", efficiency, Unit.One, "combustion efficiency"),
                $"1 − {monoxide} · 10.1/(1000 · {value}) − {hydrocarbons}/1000"
            ),
            (
                new(
                    "largestCarbonMonoxideGramsPerKilogram",
                    Gases.LargestCarbonMonoxideIndex(efficiency, value),
                    Unit.GramPerKilogram,
                    "largest index of carbon monoxide at that efficiency"
                ),
                $"1000 · (1 − {efficiency:0.####}) · {value} / 10.1"
            )
        );
    }

    /// <summary>Solves the sum about dose.</summary>
    public static SumAnswer Dose(SumInput i)
    {
        ValueList<double> ppm = i.Numbers("ppm");
        ValueList<double> minutes = i.Numbers("minutes");
        return ppm.Count == minutes.Count
            ? Answer(
                "dose",
                Gases.CarbonMonoxideDose(ppm.Zip(minutes, (c, t) => c * t).Sum()),
                Unit.One,
                "share of the dose that incapacitates",
                $"Σ C Δt / 35 000"
            )
            : throw new ArgumentException("As many times as concentrations are needed.", nameof(i));
    }
}
