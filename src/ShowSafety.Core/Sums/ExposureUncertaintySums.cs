using ShowSafety.Core.Exposure;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about the uncertainty of exposure levels.</summary>
internal static class ExposureUncertaintySums
{
    private static readonly string[] Sources = ["iso-9612-2009-tasks"];

    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "sampled-exposure-level",
            "daily level from samples of a job or a day",
            [
                ExposureSums.Levels("samplesDbA", "samples"),
                new("hours", "effective duration of the day", Unit.Hour) { Min = 0, Max = 24 },
            ],
            [.. Sources],
            Sampled
        ),
        new(
            "task-uncertainty",
            "daily level of several tasks with its expanded uncertainty",
            [
                ExposureSums.Levels("levelsDbA", "level of each task"),
                ExposureSums.HoursList("hours", "duration of each task"),
                Deviations("samplingDb", "standard uncertainty of sampling of each task", Unit.Decibel),
                Deviations("halfRangeHours", "half the range of each duration", Unit.Hour),
                new("standardDb", "standard uncertainty of the meter, or common to all predicted levels", Unit.Decibel)
                {
                    Min = 0,
                    Max = 20,
                    Default = TaskUncertainty.Class1MeterDb,
                },
                new("kind", "whether each task was measured or all are predicted from one source", Unit.One)
                {
                    Words = ["measured", "predicted"],
                },
            ],
            [.. Sources],
            Tasks
        ),
        new(
            "whole-day-uncertainty",
            "expanded uncertainty of a job-based or full-day measurement",
            [
                new("samplingDb", "c1·u1, contribution of sampling", Unit.Decibel) { Min = 0, Max = 20 },
                new("meterDb", "standard uncertainty of the meter", Unit.Decibel)
                {
                    Min = 0,
                    Max = 10,
                    Default = TaskUncertainty.Class2MeterDb,
                },
            ],
            [.. Sources],
            WholeDay
        ),
    ];

    private static SumParameter Deviations(string key, string meaning, Unit unit) =>
        new(key, meaning, unit)
        {
            Min = 0,
            Max = 24,
            ListLength = 0,
        };

    private static SumAnswer Sampled(SumInput input)
    {
        var task = DayTask.FromSamples(input.Numbers("samplesDbA"), input.Number("hours"), 0);
        double daily = ExposureLevel.DailyDbA(new LevelTime(task.LevelDbA, task.Hours));
        return new(
            [
                new("levelDbA", daily, Unit.DecibelA, "daily noise exposure level"),
                new("meanDbA", task.LevelDbA, Unit.DecibelA, "energy mean of the samples"),
                new("samplingDb", task.SamplingUncertaintyDb, Unit.Decibel, "standard uncertainty of the mean"),
            ],
            [
                ExposureSums.Line($"energy mean = {task.LevelDbA:0.00} dB(A)"),
                ExposureSums.Line($"L_EX,8h = mean + 10 lg({task.Hours:0.##} h/8 h) = {daily:0.00} dB(A)"),
            ]
        );
    }

    private static SumAnswer Tasks(SumInput input)
    {
        LevelTime[] parts = ExposureSums.Parts(input);
        ValueList<double> sampling = input.Numbers("samplingDb");
        ValueList<double> ranges = input.Numbers("halfRangeHours");
        ExposureSums.SameLength(input.Numbers("levelsDbA"), sampling, "samplingDb");
        ExposureSums.SameLength(input.Numbers("levelsDbA"), ranges, "halfRangeHours");
        DayTask[] tasks = [.. parts.Select((p, i) => new DayTask(p.LevelDbA, p.Hours, sampling[i], ranges[i]))];
        bool isPredicted = input.Word("kind") == "predicted";
        DailyLevelUncertainty result = isPredicted
            ? TaskUncertainty.Predicted(tasks, input.Number("standardDb"))
            : TaskUncertainty.Measured(tasks, input.Number("standardDb"));
        return new(
            [
                new("levelDbA", result.DailyDbA, Unit.DecibelA, "daily noise exposure level"),
                new("standardUncertaintyDb", result.StandardUncertaintyDb, Unit.Decibel, "standard uncertainty"),
                new("expandedUncertaintyDb", result.ExpandedUncertaintyDb, Unit.Decibel, "U = 1.65 u, one-sided 95 %"),
            ],
            [
                "c1a = (T/8 h)·10^((L − L_EX)/10), c1b = 4.34 c1a/T",
                isPredicted
                    ? "u² = (Σ c1a u_common)² + Σ[(c1a u1a)² + (c1b u1b)²]"
                    : "u² = Σ[c1a²(u1a² + u2² + u3²) + (c1b u1b)²], u3 = 1.0 dB",
                ExposureSums.Line(
                    $"L_EX,8h = {result.DailyDbA:0.00} dB(A), u = {result.StandardUncertaintyDb:0.00} dB, U = {result.ExpandedUncertaintyDb:0.00} dB"
                ),
            ]
        );
    }

    private static SumAnswer WholeDay(SumInput input)
    {
        double expanded = TaskUncertainty.WholeDayExpandedDb(input.Number("samplingDb"), input.Number("meterDb"));
        return new(
            [new("expandedUncertaintyDb", expanded, Unit.Decibel, "U = 1.65 u, one-sided 95 %")],
            [
                ExposureSums.Line(
                    $"U = 1.65·√({input.Number("samplingDb"):0.##}² + {input.Number("meterDb"):0.##}² + 1.0²) = {expanded:0.00} dB"
                ),
            ]
        );
    }
}
