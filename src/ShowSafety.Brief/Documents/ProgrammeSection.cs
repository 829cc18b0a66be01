using System.Globalization;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>When which engine runs at which throttle.</summary>
internal static class ProgrammeSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return new SectionHeading(2, "Runs");
        yield return new Table(
            [new("Start", 1), new("Day", 2), new("Engine", 2), new("Throttle steps", 4)],
            (input.Plan.Programme?.Runs ?? [])
                .Select(run =>
                    (ValueList<RichText>)
                        [
                            BriefLabels.Time(run.StartsAt),
                            run.Day is { } day ? BriefLabels.Day(day) : "every day of the event",
                            input.Words.Name(run.EngineId)!,
                            string.Join(", ", run.Steps.Select(step => Step(input, step))),
                        ]
                )
                .ToValueList(),
            "No runs are planned, so no exposure can be told."
        );
    }

    private static string Step(BriefInput input, ThrottleStep step) =>
        $"{input.Words.Name(step.StateId)} for {Duration(step.Seconds)}";

    private static string Duration(double seconds)
    {
        var whole = TimeSpan.FromSeconds(Math.Round(seconds));
        string rest = whole.Seconds > 0 ? string.Create(CultureInfo.InvariantCulture, $"{whole.Seconds} s") : "";
        return whole < TimeSpan.FromMinutes(1)
            ? rest
            : string.Create(CultureInfo.InvariantCulture, $"{(int)whole.TotalMinutes} min {rest}").TrimEnd();
    }
}
