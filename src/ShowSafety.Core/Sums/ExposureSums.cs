using ShowSafety.Core.Exposure;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of the rooms of Exposure.</summary>
public static class ExposureSums
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<WorkedSum> All { get; } =
    [
        .. ExposureLevelSums.All,
        .. ExposureDoseSums.All,
        .. ExposureUncertaintySums.All,
        .. ProtectorSums.All,
        .. NoiseReductionSums.All,
    ];

    internal static SumParameter Levels(string key, string meaning) =>
        new(key, meaning, Unit.DecibelA)
        {
            Min = 0,
            Max = 200,
            ListLength = 0,
        };

    internal static SumParameter Level(string key, string meaning, Unit unit = Unit.DecibelA) =>
        new(key, meaning, unit) { Min = 0, Max = 200 };

    internal static SumParameter HoursList(string key, string meaning) =>
        new(key, meaning, Unit.Hour)
        {
            Min = 0,
            Max = 168,
            ListLength = 0,
        };

    internal static LevelTime[] Parts(SumInput input)
    {
        ValueList<double> levels = input.Numbers("levelsDbA");
        ValueList<double> hours = input.Numbers("hours");
        SameLength(levels, hours, "hours");
        return [.. levels.Select((level, i) => new LevelTime(level, hours[i]))];
    }

    internal static void SameLength(ValueList<double> first, ValueList<double> second, string parameter)
    {
        if (first.Count != second.Count)
        {
            throw new ArgumentException(
                $"As many numbers are needed as there are levels: {first.Count}, not {second.Count}.",
                parameter
            );
        }
    }

    internal static string Line(FormattableString text) => FormattableString.Invariant(text);
}
