using System.Globalization;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>The one sentence that is always in view: NOT TO RUN and why, or what sets the crowd line.</summary>
public static class Headline
{
    /// <summary>The words that stand on every output while a stop stands.</summary>
    public const string NotToRun = "NOT TO RUN";

    /// <summary>The words that stand on every output while any input is from a template.</summary>
    public const string Example = "EXAMPLE";

    /// <summary>Makes the sentence.</summary>
    /// <param name="findings">All findings of the assessment, the gravest first.</param>
    /// <param name="phrases">Makes the sentence of the first stop.</param>
    /// <param name="lineSetBy">What sets the suggested crowd line, or null without a line.</param>
    /// <param name="lineDistance">Distance from the engine to the suggested line, or null without a line.</param>
    public static string Of(
        IReadOnlyCollection<Finding> findings,
        Phrasebook phrases,
        ZoneRow? lineSetBy,
        Quantity? lineDistance
    )
    {
        Finding[] stops = [.. findings.Where(f => f.Severity == Severity.Stop)];
        if (stops.Length > 0)
        {
            return $"{NotToRun}: {Counted(stops.Length, "stop stands", "stops stand")}{Missing(stops)}. "
                + $"First: {phrases.Sentence(stops[0])}";
        }

        string acts = Counted(
            findings.Count(f => f.Severity == Severity.Act),
            "thing to close by name before the run",
            "things to close by name before the run"
        );
        string line =
            lineSetBy is { } row && lineDistance is { } distance
                ? $"the suggested crowd line is set by {RowLabels.Of(row)}, {ValueFormat.Best(distance)} from the nozzle at its nearest"
                : "no zone sets a crowd line";
        return $"No stop found with the data given: {line}; {acts}.";
    }

    private static string Missing(Finding[] stops)
    {
        int missing = stops.Count(f => f.CannotTell);
        return missing == 0
            ? ""
            : $", {Counted(missing, "of them for something missing", "of them for things missing")}";
    }

    private static string Counted(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}
