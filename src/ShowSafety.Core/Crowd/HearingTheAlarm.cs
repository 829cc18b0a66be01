using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Crowd;

/// <summary>Says over which level of the engine no alarm can be heard: signals for the eye replace it.</summary>
internal static class HearingTheAlarm
{
    public static IEnumerable<Figure> Figures(Plan plan) =>
        plan.Engines.Count == 0 ? [] : [new("crowd.highest-ambient-for-alarm", null, HighestAmbient)];

    public static IEnumerable<Finding> Findings(Plan plan) =>
        plan.Engines.Count == 0
            ? []
            :
            [
                new("crowd.alarm-by-eye", Severity.Note)
                {
                    Arguments = [FindingArgument.Of("ambient", HighestAmbient)],
                    Citations = [SiteSources.CrowdAlarm],
                },
            ];

    private static Quantity HighestAmbient { get; } =
        Quantity.CautiousLow(Alarm.HighestAmbientDbA, Alarm.HighestAmbientDbA, Unit.DecibelA) with
        {
            Sum = "alarm-level",
            Citations = [SiteSources.CrowdAlarm],
        };
}
