using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Layout;

/// <summary>Says whether a zone applies while people are there. Anything unknown counts as "yes".</summary>
internal sealed class RunClock(Plan plan)
{
    // Choice: parts can burn for half an hour after a run; a run may start a quarter of an hour early.
    private static readonly TimeSpan CoolDown = TimeSpan.FromMinutes(30);
    private static readonly TimeSpan EarlyStart = TimeSpan.FromMinutes(15);

    private static readonly TimeSpan Day = TimeSpan.FromDays(1);

    private readonly ValueList<(TimeSpan From, TimeSpan To)> _runs =
    [
        .. (plan.Programme?.Runs ?? []).Select(r =>
        {
            TimeSpan start = r.StartsAt.ToTimeSpan();
            return (start - EarlyStart, start + TimeSpan.FromSeconds(r.Steps.Sum(s => s.Seconds)) + CoolDown);
        }),
    ];

    /// <summary>Whether any presence meets a time at which the phases apply.</summary>
    public bool Applies(Phases phases, ValueList<Presence> presence) =>
        presence.Count == 0
        || _runs.Count == 0
        || (phases & Phases.Standing) != 0
        || presence.Any(p =>
            _runs.Any(run => Meets(p, run, TimeSpan.Zero) || Meets(p, run, Day) || Meets(p, run, -Day))
        );

    // A run may go on past midnight, or start so early that people are there from the evening before.
    private static bool Meets(Presence presence, (TimeSpan From, TimeSpan To) run, TimeSpan later) =>
        presence.From.ToTimeSpan() + later < run.To && run.From < presence.To.ToTimeSpan() + later;
}
