using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.AirSumParts;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about heat on people.</summary>
internal static class ExhaustHeatSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "hot-air-time",
            "how long people bear still hot air, by three published laws of escape",
            [Number("airCelsius", "air temperature", Unit.Celsius, 30, 300)],
            ["nfpa-130", "iso-13571"],
            HotAir
        ),
        new(
            "radiation-time",
            "how long bare skin bears radiation",
            [Number("fluxKilowattsPerSquareMetre", "radiation", Unit.KilowattPerSquareMetre, 2.51, 200)],
            ["iso-13571", "stoll-chianta"],
            Radiation
        ),
        new(
            "radiation-dose-time",
            "time to a thermal dose",
            [
                Number("dose", "dose in (kW/m²)^(4/3) s: pain 92, second degree 290", Unit.One, 1, 1e5),
                Number("fluxKilowattsPerSquareMetre", "radiation", Unit.KilowattPerSquareMetre, 0.5, 200),
            ],
            ["hsl-dose-2007"],
            i =>
                Answer(
                    "seconds",
                    HeatOnPeople.DoseSeconds(i.Number("dose"), i.Number("fluxKilowattsPerSquareMetre")),
                    Unit.Second,
                    "time to the dose",
                    $"{i.Number("dose")} / {i.Number("fluxKilowattsPerSquareMetre")}^(4/3)"
                )
        ),
        new(
            "fire-dose",
            "share of a dose of hot air and radiation taken in a time",
            [
                Number("minutes", "time", Unit.Minute, 0, 600),
                Number(
                    "fluxKilowattsPerSquareMetre",
                    "radiation; nothing counts up to 2.5",
                    Unit.KilowattPerSquareMetre,
                    0,
                    200,
                    0
                ),
                Number("airCelsius", "air temperature", Unit.Celsius, 30, 300),
            ],
            ["nchrp-415", "nfpa-130", "iso-13571"],
            i =>
                Answer(
                    "doseShare",
                    HeatOnPeople.DoseShare(
                        i.Number("minutes"),
                        i.Number("fluxKilowattsPerSquareMetre"),
                        i.Number("airCelsius")
                    ),
                    Unit.One,
                    "share of the dose",
                    $"{i.Number("minutes")} · (1/t_rad + 1/t_conv)"
                )
        ),
        new(
            "radiation-units",
            "radiation from Btu/(h ft²)",
            [Number("btuPerHourSquareFoot", "radiation in Btu/(h ft²)", Unit.One, 0, 1e6)],
            ["radiation-api-521"],
            i =>
                Answer(
                    "fluxKilowattsPerSquareMetre",
                    HeatOnPeople.KilowattsPerSquareMetre(i.Number("btuPerHourSquareFoot")),
                    Unit.KilowattPerSquareMetre,
                    "radiation",
                    $"{i.Number("btuPerHourSquareFoot")} · {HeatOnPeople.BtuPerHourSquareFootWatts} / 1000"
                )
        ),
        new(
            "touch-burn",
            "temperature of bare metal that may burn at a touch",
            [Number("touchSeconds", "time of the touch", Unit.Second, 0.5, 28800)],
            ["iso-13732-1"],
            i =>
                Answer(
                    "burnCelsius",
                    BurnTimes.BareMetalCelsius(i.Number("touchSeconds")),
                    Unit.Celsius,
                    "burn threshold, low end",
                    $"table row for {i.Number("touchSeconds")} s or the next longer one"
                )
        ),
    ];

    private static SumAnswer HotAir(SumInput i)
    {
        double celsius = i.Number("airCelsius");
        return Answer(
            (
                new("cautiousMinutes", HeatOnPeople.CautiousMinutes(celsius), Unit.Minute, "cautious law"),
                $"1.125e7 · {celsius}^−3.4"
            ),
            (
                new(
                    "lightlyClothedMinutes",
                    HeatOnPeople.LightlyClothedMinutes(celsius),
                    Unit.Minute,
                    "lightly clothed"
                ),
                $"5.0e7 · {celsius}^−3.4"
            ),
            (
                new("fullyClothedMinutes", HeatOnPeople.FullyClothedMinutes(celsius), Unit.Minute, "fully clothed"),
                $"4.1e8 · {celsius}^−3.61"
            )
        );
    }

    private static SumAnswer Radiation(SumInput i)
    {
        double flux = i.Number("fluxKilowattsPerSquareMetre");
        var parts = new List<(SumResult, FormattableString)>
        {
            (
                new("burnMinutes", HeatOnPeople.BurnMinutes(flux), Unit.Minute, "second-degree burn"),
                $"6.9 · {flux}^−1.56"
            ),
            (new("painMinutes", HeatOnPeople.PainMinutes(flux), Unit.Minute, "pain"), $"4.2 · {flux}^−1.9"),
        };
        if (BurnTimes.BareSkinSeconds(flux) is { } seconds)
        {
            parts.Add(
                (
                    new("tableSeconds", seconds, Unit.Second, "second-degree burn by table"),
                    $"table row at or over {flux} kW/m²"
                )
            );
        }

        return Answer([.. parts]);
    }
}
