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
            IndoorAirAnswers.Concentration
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
            IndoorAirAnswers.Clearing
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
            IndoorAirAnswers.TimeToLimit
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
            IndoorAirAnswers.Heat
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
            IndoorAirAnswers.ClosedRoom
        ),
        new(
            "combustion",
            "products of complete combustion per kilogram of fuel",
            [
                Number("carbonAtoms", "carbon atoms", Unit.One, 0.5, 60),
                Number("hydrogenAtoms", "hydrogen atoms", Unit.One, 0, 130),
            ],
            ["combustion-balance", "kerosene-formula"],
            IndoorAirAnswers.Combustion
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
            IndoorAirAnswers.Efficiency
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
            IndoorAirAnswers.Dose
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
}
