using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Short forms for the worked sums about exhaust and indoor air.</summary>
internal static class AirSumParts
{
    /// <summary>A number that must be given, from a smallest to a largest value.</summary>
    public static SumParameter Number(string key, string meaning, Unit unit, double min, double max) =>
        new(key, meaning, unit) { Min = min, Max = max };

    /// <summary>A number with a default.</summary>
    public static SumParameter Number(string key, string meaning, Unit unit, double min, double max, double standard) =>
        new(key, meaning, unit)
        {
            Min = min,
            Max = max,
            Default = standard,
        };

    /// <summary>An answer with one result and one line of calculation.</summary>
    public static SumAnswer Answer(string key, double value, Unit unit, string meaning, FormattableString step) =>
        new([new(key, value, unit, meaning)], [FormattableString.Invariant(step)]);

    /// <summary>An answer with several results and a line of calculation for each.</summary>
    public static SumAnswer Answer(params ReadOnlySpan<(SumResult Result, FormattableString Step)> parts)
    {
        var results = new List<SumResult>();
        var steps = new List<string>();
        foreach ((SumResult result, FormattableString step) in parts)
        {
            results.Add(result);
            steps.Add(FormattableString.Invariant(step));
        }

        return new([.. results], [.. steps]);
    }
}
