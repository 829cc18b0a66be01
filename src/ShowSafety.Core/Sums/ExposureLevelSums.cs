using ShowSafety.Core.Exposure;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about exposure levels.</summary>
internal static class ExposureLevelSums
{
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "daily-exposure-level",
            "daily noise exposure level of several levels and times",
            [
                ExposureSums.Levels("levelsDbA", "level of each part of the day"),
                ExposureSums.HoursList("hours", "duration of each part"),
            ],
            ["iso-1999-2013", "directive-2003-10-ec"],
            Daily
        ),
        new(
            "weekly-exposure-level",
            "weekly noise exposure level of up to seven daily ones",
            [ExposureSums.Levels("dailyLevelsDbA", "daily noise exposure level of each day")],
            ["iso-1999-2013", "directive-2003-10-ec"],
            Weekly
        ),
        new(
            "sound-exposure",
            "sound exposure of a level held for a time",
            [ExposureSums.Level("levelDbA", "level"), new("hours", "duration", Unit.Hour) { Min = 0, Max = 168 }],
            ["iso-1999-2013"],
            Exposure
        ),
        new(
            "peak-level",
            "level of a peak sound pressure",
            [new("pressurePascal", "peak sound pressure", Unit.Pascal) { Min = 1e-6, Max = 1e6 }],
            ["directive-2003-10-ec"],
            Peak
        ),
        new(
            "exposure-points",
            "exposure points of a daily level, 100 for 85 dB(A)",
            [ExposureSums.Level("levelDbA", "daily noise exposure level")],
            ["hse-noise-reckoner-2020"],
            Points
        ),
        new(
            "weekly-level-from-points",
            "weekly level of the exposure points of a week",
            [new("points", "exposure points of the week", Unit.One) { Min = 0.001, Max = 1e9 }],
            ["hse-noise-reckoner-2020"],
            FromPoints
        ),
        new(
            "stay-time",
            "how long one may stay at a level before a daily limit is reached",
            [
                ExposureSums.Level("limitDbA", "daily limit"),
                ExposureSums.Level("levelDbA", "level at the place"),
                ExposureSums.Level("otherDbA", "exposure level of the rest of the day") with
                {
                    Default = 0,
                },
            ],
            ["directive-2003-10-ec"],
            Stay
        ),
        new(
            "worst-window",
            "highest mean level of any averaging window",
            [
                new("startMinutes", "start of each stretch, from midnight", Unit.Minute)
                {
                    Min = 0,
                    Max = 2880,
                    ListLength = 0,
                },
                new("durationMinutes", "duration of each stretch", Unit.Minute)
                {
                    Min = 0,
                    Max = 1440,
                    ListLength = 0,
                },
                ExposureSums.Levels("levelsDbA", "level of each stretch"),
                new("windowMinutes", "length of the window", Unit.Minute) { Min = 0.1, Max = 1440 },
                ExposureSums.Level("backgroundDbA", "level of all other time"),
                new("kind", "whether the window slides or follows the clock", Unit.One)
                {
                    Words = ["sliding", "clock"],
                },
            ],
            ["who-venues-2022"],
            Window
        ),
    ];

    private static SumAnswer Daily(SumInput input)
    {
        LevelTime[] parts = ExposureSums.Parts(input);
        double level = ExposureLevel.DailyDbA(parts);
        return new(
            [new("levelDbA", level, Unit.DecibelA, "daily noise exposure level")],
            [
                "L_EX,8h = 10 lg[ (1/8 h) Σ t_i 10^(L_i/10) ]",
                .. parts.Select(p =>
                    ExposureSums.Line(
                        $"{p.Hours:0.####} h at {p.LevelDbA:0.##} dB(A): {ExposureLevel.DailyDbA(p):0.00} dB(A)"
                    )
                ),
                ExposureSums.Line($"energy sum: {level:0.00} dB(A)"),
            ]
        );
    }

    private static SumAnswer Weekly(SumInput input)
    {
        double level = ExposureLevel.WeeklyDbA(input.Numbers("dailyLevelsDbA"));
        return new(
            [new("levelDbA", level, Unit.DecibelA, "weekly noise exposure level")],
            ["L_EX,w = 10 lg[ (1/5) Σ 10^(L_EX,8h,i/10) ]", ExposureSums.Line($"= {level:0.00} dB(A)")]
        );
    }

    private static SumAnswer Exposure(SumInput input)
    {
        double exposure = ExposureLevel.SoundExposurePascalSquaredHours(
            input.Number("levelDbA"),
            input.Number("hours")
        );
        return new(
            [new("exposurePascalSquaredHours", exposure, Unit.PascalSquaredHour, "sound exposure")],
            [
                ExposureSums.Line(
                    $"E = (20 µPa)²·10^({input.Number("levelDbA"):0.##}/10)·{input.Number("hours"):0.##} h = {exposure:0.0000} Pa²h"
                ),
            ]
        );
    }

    private static SumAnswer Peak(SumInput input)
    {
        double level = ExposureLevel.PeakDb(input.Number("pressurePascal"));
        return new(
            [new("levelDb", level, Unit.Decibel, "peak level")],
            [ExposureSums.Line($"L = 20 lg({input.Number("pressurePascal"):0.####} Pa / 20 µPa) = {level:0.00} dB")]
        );
    }

    private static SumAnswer Points(SumInput input)
    {
        double points = ExposureLevel.Points(input.Number("levelDbA"));
        return new(
            [new("points", points, Unit.One, "exposure points")],
            [ExposureSums.Line($"100·10^(({input.Number("levelDbA"):0.##} − 85)/10) = {points:0.0}")]
        );
    }

    private static SumAnswer FromPoints(SumInput input)
    {
        double level = ExposureLevel.WeeklyDbAFromPoints(input.Number("points"));
        return new(
            [new("levelDbA", level, Unit.DecibelA, "weekly noise exposure level")],
            [ExposureSums.Line($"85 + 10 lg({input.Number("points"):0.##}/500) = {level:0.00} dB(A)")]
        );
    }

    private static SumAnswer Stay(SumInput input)
    {
        double hours = StayTime.EqualEnergyHours(
            input.Number("limitDbA"),
            input.Number("levelDbA"),
            input.Number("otherDbA")
        );
        return new(
            [
                new("hours", hours, Unit.Hour, "longest stay in a day"),
                new("minutes", 60 * hours, Unit.Minute, "longest stay in a day"),
            ],
            [
                "t = 8 h·[10^(limit/10) − 10^(other/10)] / 10^(L/10)",
                ExposureSums.Line($"= {hours:0.0000} h = {60 * hours:0.00} min"),
            ]
        );
    }

    private static SumAnswer Window(SumInput input)
    {
        ValueList<double> starts = input.Numbers("startMinutes");
        ValueList<double> durations = input.Numbers("durationMinutes");
        ValueList<double> levels = input.Numbers("levelsDbA");
        ExposureSums.SameLength(levels, starts, "startMinutes");
        ExposureSums.SameLength(levels, durations, "durationMinutes");
        double worst = LevelWindows.WorstDbA(
            [.. levels.Select((level, i) => (new TimeStretch(60 * starts[i], 60 * (starts[i] + durations[i])), level))],
            input.Number("windowMinutes"),
            input.Word("kind") == "clock" ? WindowKind.Clock : WindowKind.Sliding,
            input.Number("backgroundDbA")
        );
        return new(
            [new("levelDbA", worst, Unit.DecibelA, "mean level of the worst window")],
            [
                "the mean is largest where an end of the window meets a change of level",
                ExposureSums.Line(
                    $"worst window of {input.Number("windowMinutes"):0.##} min, the rest at {input.Number("backgroundDbA"):0.##} dB(A): {worst:0.00} dB(A)"
                ),
            ]
        );
    }
}
