namespace ShowSafety.Core.Exhaust;

/// <summary>Tables of burns: bare skin under radiation, and a touch of hot bare metal.</summary>
public static class BurnTimes
{
    // Stoll and Chianta as given in ASTM test methods: seconds and kW/m² to a second-degree burn on bare skin.
    private static readonly (double Seconds, double Flux)[] Stoll =
    [
        (1, 50),
        (2, 31),
        (3, 23),
        (4, 19),
        (5, 16),
        (6, 14),
        (7, 13),
        (8, 11.5),
        (9, 10.6),
        (10, 9.8),
        (20, 6.0),
        (30, 4.5),
    ];

    // ISO 13732-1, bare smooth metal, lower ends (memory): longest touch in seconds and temperature in °C.
    private static readonly (double Seconds, double Celsius)[] BareMetal =
    [
        (0.5, 65),
        (1, 65),
        (4, 58),
        (60, 51),
        (600, 48),
        (28800, 43),
    ];

    /// <summary>
    /// Seconds to a second-degree burn on bare skin by the table of Stoll and Chianta, between rows the shorter time;
    /// 0 over its strongest row, 50 kW/m², null under its weakest, 4.5 kW/m².
    /// </summary>
    public static double? BareSkinSeconds(double kilowattsPerSquareMetre) =>
        kilowattsPerSquareMetre < Stoll[^1].Flux ? null
        : kilowattsPerSquareMetre > Stoll[0].Flux ? 0
        : Stoll.Last(row => row.Flux >= kilowattsPerSquareMetre).Seconds;

    /// <summary>
    /// Temperature in °C from which a touch of bare metal for that many seconds may burn (ISO 13732-1, memory), the
    /// next longer row of the table. Valid from 0.5 s to 8 h.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the table.</exception>
    public static double BareMetalCelsius(double touchSeconds) =>
        touchSeconds is >= 0.5 and <= 28800
            ? BareMetal.First(row => row.Seconds >= touchSeconds).Celsius
            : throw new ArgumentOutOfRangeException(
                nameof(touchSeconds),
                touchSeconds,
                "The table runs from 0.5 s to 8 h."
            );
}
