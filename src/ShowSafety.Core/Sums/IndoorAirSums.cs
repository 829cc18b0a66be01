using ShowSafety.Core.IndoorAir;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.AirSumParts;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of the rooms of IndoorAir.</summary>
public static class IndoorAirSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "room-concentration",
            "gas in a well-mixed room with a constant source",
            [
                Number("volumeCubicMetres", "volume of air", Unit.CubicMetre, 1, 1e6),
                Number("freshAirCubicMetresPerSecond", "fresh air", Unit.CubicMetrePerSecond, 0, 1e4),
                Number("sourceMilligramsPerSecond", "source", Unit.One, 0, 1e9),
                Number("seconds", "time", Unit.Second, 0, 1e7),
                Number("startMilligramsPerCubicMetre", "at the start", Unit.MilligramPerCubicMetre, 0, 1e7, 0),
                Number("outsideMilligramsPerCubicMetre", "in the fresh air", Unit.MilligramPerCubicMetre, 0, 1e6, 0),
            ],
            ["room-balance", "choice-mixing-factor"],
            Concentration
        ),
        new(
            "room-clearing",
            "time for a room to clear after shut-down",
            [
                Number("volumeCubicMetres", "volume of air", Unit.CubicMetre, 1, 1e6),
                Number("freshAirCubicMetresPerSecond", "fresh air", Unit.CubicMetrePerSecond, 0.001, 1e4),
                Number("startMilligramsPerCubicMetre", "at shut-down", Unit.MilligramPerCubicMetre, 0, 1e7),
                Number("limitMilligramsPerCubicMetre", "limit", Unit.MilligramPerCubicMetre, 0.001, 1e6),
            ],
            ["room-balance"],
            Clearing
        ),
        new(
            "room-time-to-limit",
            "time for a room to reach a limit from where it stands",
            [
                Number("volumeCubicMetres", "volume of air", Unit.CubicMetre, 1, 1e6),
                Number("freshAirCubicMetresPerSecond", "fresh air", Unit.CubicMetrePerSecond, 0, 1e4),
                Number("sourceMilligramsPerSecond", "source", Unit.One, 0, 1e9),
                Number("startMilligramsPerCubicMetre", "at the start", Unit.MilligramPerCubicMetre, 0, 1e7, 0),
                Number("limitMilligramsPerCubicMetre", "limit", Unit.MilligramPerCubicMetre, 0.001, 1e7),
            ],
            ["room-balance"],
            TimeToLimit
        ),
        new(
            "room-heat",
            "how fast an engine heats a room",
            [
                Number("fuelKilogramsPerSecond", "fuel flow", Unit.KilogramPerSecond, 1e-5, 1),
                Number(
                    "heatingValueMegajoulesPerKilogram",
                    "lower heating value",
                    Unit.MegajoulePerKilogram,
                    10,
                    130,
                    43.1
                ),
                Number("volumeCubicMetres", "volume of air", Unit.CubicMetre, 1, 1e6),
                Number("freshAirCubicMetresPerSecond", "fresh air", Unit.CubicMetrePerSecond, 0, 1e4, 0),
                Number("seconds", "time", Unit.Second, 0, 1e6, 60),
                Number(
                    "airDensityKilogramsPerCubicMetre",
                    "density of the air",
                    Unit.KilogramPerCubicMetre,
                    0.5,
                    1.7,
                    1.2
                ),
            ],
            ["room-balance", "choice-heat-stays-inside", "choice-largest-rise", "choice-room-heat"],
            Heat
        ),
        new(
            "room-gases",
            "carbon monoxide and carbon dioxide in a closed room",
            [
                Number("fuelKilogramsPerSecond", "fuel flow", Unit.KilogramPerSecond, 1e-5, 1),
                Number(
                    "carbonMonoxideGramsPerKilogram",
                    "emission index of carbon monoxide",
                    Unit.GramPerKilogram,
                    0,
                    2000
                ),
                Number("volumeCubicMetres", "volume of air", Unit.CubicMetre, 1, 1e6),
                Number("seconds", "time", Unit.Second, 0, 1e6),
            ],
            ["room-balance", "kerosene-formula"],
            ClosedRoom
        ),
        new(
            "combustion",
            "products of complete combustion per kilogram of fuel",
            [
                Number("carbonAtoms", "carbon atoms", Unit.One, 0.5, 60),
                Number("hydrogenAtoms", "hydrogen atoms", Unit.One, 0, 130),
            ],
            ["combustion-balance", "kerosene-formula"],
            Combustion
        ),
        new(
            "combustion-efficiency",
            "combustion efficiency from emission indices",
            [
                Number("carbonMonoxideGramsPerKilogram", "carbon monoxide", Unit.GramPerKilogram, 0, 2000),
                Number("hydrocarbonsGramsPerKilogram", "hydrocarbons", Unit.GramPerKilogram, 0, 1000),
                Number(
                    "heatingValueMegajoulesPerKilogram",
                    "lower heating value",
                    Unit.MegajoulePerKilogram,
                    10,
                    130,
                    43.1
                ),
            ],
            ["combustion-efficiency"],
            Efficiency
        ),
        new(
            "gas-units",
            "mg/m³ from ppm at 20 °C and 1 atm",
            [
                Number("ppm", "concentration", Unit.PartPerMillion, 0, 1e6),
                Number("molarMassGrams", "molar mass in g/mol", Unit.One, 1, 500),
            ],
            ["eh40", "niosh-co", "niosh-idlh", "aegl-co", "aegl-no2", "nrc-no2"],
            i =>
                Answer(
                    "milligramsPerCubicMetre",
                    Gases.MilligramsPerCubicMetre(i.Number("ppm"), i.Number("molarMassGrams")),
                    Unit.MilligramPerCubicMetre,
                    "concentration",
                    $"{i.Number("ppm")} · {i.Number("molarMassGrams")} / {Gases.LitresPerMole}"
                )
        ),
        new(
            "eight-hour-average",
            "eight-hour time-weighted average",
            [
                new("concentrations", "concentrations", Unit.One) { Min = 0, ListLength = 0 },
                new("hours", "hours at each", Unit.Hour)
                {
                    Min = 0,
                    Max = 24,
                    ListLength = 0,
                },
            ],
            ["eh40", "who-air-2000", "who-air-2010"],
            i =>
                Answer(
                    "average",
                    AirExposure.EightHourAverage(i.Numbers("concentrations"), i.Numbers("hours")),
                    Unit.One,
                    "average in the unit of the concentrations",
                    $"Σ C t / 8"
                )
        ),
        new(
            "people-carbon-dioxide",
            "steady rise of carbon dioxide from people",
            [
                Number("litresPerMinutePerPerson", "breathed out per person in L/min", Unit.One, 0.05, 5, 0.31),
                Number("freshAirLitresPerSecondPerPerson", "fresh air per person in L/s", Unit.One, 0.1, 100),
            ],
            ["ashrae-62-1", "choice-public-co2"],
            i =>
                Answer(
                    "risePpm",
                    AirExposure.PeopleRisePpm(
                        i.Number("litresPerMinutePerPerson"),
                        i.Number("freshAirLitresPerSecondPerPerson")
                    ),
                    Unit.PartPerMillion,
                    "rise over outside air",
                    $"10⁶ · {i.Number("litresPerMinutePerPerson")}/60 / {i.Number("freshAirLitresPerSecondPerPerson")}"
                )
        ),
        new(
            "co-dose",
            "dose of carbon monoxide, 1 at incapacitation",
            [
                new("ppm", "concentrations", Unit.PartPerMillion)
                {
                    Min = 0,
                    Max = 1e6,
                    ListLength = 0,
                },
                new("minutes", "minutes at each", Unit.Minute)
                {
                    Min = 0,
                    Max = 1e5,
                    ListLength = 0,
                },
            ],
            ["iso-13571-fed"],
            Dose
        ),
        new(
            "ceiling-jet",
            "rise of the air under a ceiling over a heat source",
            [
                Number("kilowatts", "heat", Unit.Kilowatt, 1, 1e5),
                Number("heightMetres", "height of the ceiling over the source", Unit.Metre, 0.5, 60),
            ],
            ["alpert-1972", "en-54-5"],
            i =>
                Answer(
                    "riseKelvin",
                    CeilingJet.RiseKelvin(i.Number("kilowatts"), i.Number("heightMetres")),
                    Unit.Kelvin,
                    "rise over ambient",
                    $"16.9 · {i.Number("kilowatts")}^(2/3) / {i.Number("heightMetres")}^(5/3)"
                )
        ),
    ];

    private static SumAnswer Concentration(SumInput i)
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

    private static SumAnswer Clearing(SumInput i)
    {
        var room = new RoomBalance(i.Number("volumeCubicMetres"), i.Number("freshAirCubicMetresPerSecond"), 0);
        double start = i.Number("startMilligramsPerCubicMetre");
        double limit = i.Number("limitMilligramsPerCubicMetre");
        double seconds =
            room.SecondsToClear(limit, start) ?? throw new ArgumentException("The room never clears.", nameof(i));
        return Answer("minutes", seconds / 60, Unit.Minute, "time to clear", $"(V/Q) ln({start}/{limit}) / 60");
    }

    private static SumAnswer TimeToLimit(SumInput i)
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

    private static SumAnswer Heat(SumInput i)
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

    private static SumAnswer ClosedRoom(SumInput i)
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

    private static SumAnswer Combustion(SumInput i)
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

    private static SumAnswer Efficiency(SumInput i)
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

    private static SumAnswer Dose(SumInput i)
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
