using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Gate;

/// <summary>
/// Whether a run can be stopped: a fuel cut that works without the engine's controller within 2 s, two people able to
/// use it, and numbers that tell them when. Whether their posts lie outside every sector is the layout's question.
/// </summary>
internal static class StoppingCheck
{
    /// <summary>Longest time from the fuel cut to no fuel at the engine, in seconds.</summary>
    private const double LongestCutSeconds = 2;

    private const int PeopleNeeded = 2;

    public static IEnumerable<Finding> Findings(Plan plan)
    {
        Stopping stopping = plan.Gate?.Stopping ?? new Stopping();
        return Cut(stopping).Concat(People(stopping)).Select(f => f with { Citations = [SiteSources.GateStopping] });
    }

    private static IEnumerable<Finding> Cut(Stopping stopping)
    {
        if (stopping.FuelCutSeconds.NotNegative() is not { } seconds)
        {
            yield return Unknown("gate.fuel-cut-time-missing", Severity.Stop, nameof(Stopping.FuelCutSeconds));
        }
        else if (seconds > LongestCutSeconds)
        {
            Quantity time = Quantity.CautiousHigh(seconds, seconds, Unit.Second) with
            {
                Pedigree = stopping.FuelCutSeconds!.Pedigree,
            };
            yield return new("gate.fuel-cut-slow", Severity.Stop) { Arguments = [FindingArgument.Of("time", time)] };
        }

        if (stopping.Independent is null)
        {
            yield return Unknown("gate.fuel-cut-independence-missing", Severity.Stop, nameof(Stopping.Independent));
        }
        else if (stopping.Independent is false)
        {
            yield return new("gate.fuel-cut-dependent", Severity.Stop);
        }
    }

    private static IEnumerable<Finding> People(Stopping stopping)
    {
        if (stopping.StopPosts.Count < PeopleNeeded)
        {
            yield return new("gate.stop-people-few", Severity.Stop)
            {
                Arguments = [FindingArgument.Of("people", stopping.StopPosts.Count)],
                Field = $"{nameof(Stopping)}.{nameof(Stopping.StopPosts)}",
            };
        }

        if (string.IsNullOrWhiteSpace(stopping.Triggers))
        {
            yield return Unknown("gate.stop-triggers-missing", Severity.Act, nameof(Stopping.Triggers));
        }
    }

    private static Finding Unknown(string code, Severity severity, string member) =>
        CannotTell.Without(typeof(Stopping), code, severity, member);
}
