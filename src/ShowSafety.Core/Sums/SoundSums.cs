using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of the rooms of Sound.</summary>
public static class SoundSums
{
    /// <summary>Temperature, humidity and pressure; stands before the list of sums, which is made with it.</summary>
    internal static ValueList<SumParameter> Air { get; } =
    [
        Number("temperatureCelsius", "air temperature", Unit.Celsius, -20, 50, 10),
        Number("humidityPercent", "relative humidity", Unit.Percent, 10, 100, 70),
        Number("pressureKilopascals", "air pressure", Unit.Kilopascal, 60, 110, 101.325),
    ];

    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [
        .. SoundLevelSums.Make(),
        .. SoundWeightingSums.Make(),
        .. SoundOutdoorSums.Make(),
        .. SoundGroundSums.Make(),
        .. SoundScreenSums.Make(),
        .. SoundWallSums.Make(),
        .. SoundReadingSums.Make(),
        .. SoundSourceSums.Make(),
        .. SoundRoomSums.Make(),
        .. SoundJetSums.Make(),
    ];

    /// <summary>A parameter with a range.</summary>
    internal static SumParameter Number(
        string key,
        string meaning,
        Unit unit,
        double min,
        double max,
        double? standard = null
    ) =>
        new(key, meaning, unit)
        {
            Min = min,
            Max = max,
            Default = standard,
        };

    /// <summary>Eight octave band levels.</summary>
    internal static SumParameter Bands(string key, string meaning) =>
        new(key, meaning, Unit.Decibel)
        {
            Min = -200,
            Max = 250,
            ListLength = OctaveBand.Count,
        };

    /// <summary>So many numbers in metres, coordinates or heights.</summary>
    internal static SumParameter Metres(string key, string meaning, int count, double min = -5000) =>
        new(key, meaning, Unit.Metre)
        {
            Min = min,
            Max = 5000,
            ListLength = count,
        };

    /// <summary>A list of any length.</summary>
    internal static SumParameter Several(string key, string meaning, Unit unit, double min, double max) =>
        new(key, meaning, unit)
        {
            Min = min,
            Max = max,
            ListLength = 0,
        };

    /// <summary>The air of the inputs.</summary>
    internal static AirState AirOf(SumInput input) =>
        new(input.Number("temperatureCelsius"), input.Number("humidityPercent"), input.Number("pressureKilopascals"));

    /// <summary>One result for each octave band, "levelDb63Hz" and so on.</summary>
    internal static IEnumerable<SumResult> BandResults(string key, BandValues values, Unit unit, string meaning) =>
        values.Select(
            (value, band) =>
                new SumResult(
                    FormattableString.Invariant($"{key}{OctaveBand.NominalHertz(band)}Hz"),
                    value,
                    unit,
                    FormattableString.Invariant($"{meaning}, octave band {OctaveBand.Name(band)} Hz")
                )
        );

    /// <summary>A step of a calculation, numbers written with a point.</summary>
    internal static string Step(FormattableString line) => FormattableString.Invariant(line);
}
