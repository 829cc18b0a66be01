using ShowSafety.Core.Exposure;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about doses.</summary>
internal static class ExposureDoseSums
{
    private static ValueList<SumParameter> ScaleParameters { get; } =
    [
        new("criterionDbA", "level that fills the dose in eight hours", Unit.DecibelA)
        {
            Min = 60,
            Max = 120,
            Default = 90,
        },
        new("exchangeDb", "step that halves the time permitted", Unit.Decibel)
        {
            Min = 3,
            Max = 6,
            Default = 5,
        },
    ];

    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "noise-dose",
            "noise dose of several levels and times, and its time-weighted average",
            [
                ExposureSums.Levels("levelsDbA", "level of each part of the day"),
                ExposureSums.HoursList("hours", "duration of each part"),
                .. ScaleParameters,
                ExposureSums.Level("thresholdDbA", "levels below it are not counted") with
                {
                    Default = 0,
                },
            ],
            ["osha-1910-95", "niosh-98-126"],
            Dose
        ),
        new(
            "permitted-time",
            "time permitted at a level",
            [ExposureSums.Level("levelDbA", "level"), .. ScaleParameters],
            ["osha-1910-95", "niosh-98-126"],
            Permitted
        ),
        new(
            "average-from-dose",
            "time-weighted average level of a dose",
            [new("dosePercent", "dose", Unit.Percent) { Min = 0.001, Max = 1e9 }, .. ScaleParameters],
            ["osha-1910-95", "niosh-98-126"],
            Average
        ),
    ];

    private static DoseScale Scale(SumInput input) => new(input.Number("criterionDbA"), input.Number("exchangeDb"));

    private static SumAnswer Dose(SumInput input)
    {
        DoseScale scale = Scale(input) with { ThresholdDbA = input.Number("thresholdDbA") };
        LevelTime[] parts = ExposureSums.Parts(input);
        double dose = scale.DosePercent(parts);
        ValueList<SumResult> results = [new("dosePercent", dose, Unit.Percent, "dose")];
        return new(
            dose > 0
                ?
                [
                    .. results,
                    new(
                        "averageDbA",
                        scale.TimeWeightedAverageDbA(dose),
                        Unit.DecibelA,
                        "time-weighted average over eight hours"
                    ),
                ]
                : results,
            [
                "D = 100 Σ C_n/T_n, T = 8 h / 2^((L − criterion)/exchange)",
                .. parts.Select(p =>
                    ExposureSums.Line(
                        $"{p.Hours:0.####} h at {p.LevelDbA:0.##} dB(A), permitted {scale.PermittedHours(p.LevelDbA):0.###} h: {scale.DosePercent(p):0.0} %"
                    )
                ),
                ExposureSums.Line($"D = {dose:0.0} %"),
            ]
        );
    }

    private static SumAnswer Permitted(SumInput input)
    {
        double hours = Scale(input).PermittedHours(input.Number("levelDbA"));
        return new(
            [
                new("hours", hours, Unit.Hour, "time permitted"),
                new("minutes", 60 * hours, Unit.Minute, "time permitted"),
                new("seconds", 3600 * hours, Unit.Second, "time permitted"),
            ],
            [
                ExposureSums.Line(
                    $"T = 8 h / 2^(({input.Number("levelDbA"):0.##} − {input.Number("criterionDbA"):0.##})/{input.Number("exchangeDb"):0.####}) = {hours:0.0000} h"
                ),
            ]
        );
    }

    private static SumAnswer Average(SumInput input)
    {
        double level = Scale(input).TimeWeightedAverageDbA(input.Number("dosePercent"));
        return new(
            [new("averageDbA", level, Unit.DecibelA, "time-weighted average over eight hours")],
            [
                ExposureSums.Line(
                    $"TWA = {input.Number("criterionDbA"):0.##} + ({input.Number("exchangeDb"):0.####}/lg 2)·lg({input.Number("dosePercent"):0.##}/100) = {level:0.00} dB(A)"
                ),
            ]
        );
    }
}
