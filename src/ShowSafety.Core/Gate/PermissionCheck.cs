using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Gate;

/// <summary>Whether those who must allow a run have done so, in writing, for the days of the event.</summary>
internal static class PermissionCheck
{
    public static IEnumerable<Finding> Findings(Plan plan)
    {
        EventDays days = EventDays.Of(plan);
        ValueList<Permission> given = plan.Gate?.Permissions ?? [];
        if (days.First is null)
        {
            yield return CannotTell.Without(
                typeof(ShowEvent),
                "gate.event-days-missing",
                Severity.Stop,
                nameof(ShowEvent.Days)
            );
        }

        foreach (Finding finding in PermissionNeed.Of(plan).SelectMany(need => Judge(need, given, days)))
        {
            yield return finding;
        }

        if (PermissionNeed.DependsOnAnUnknownFuel(plan) && Judge(PermissionNeed.FireAuthority, given, days).Any(IsStop))
        {
            Engine engine = plan.Engines.First(e => e.Sheet?.Fuel is null);
            yield return CannotTell.Without(
                typeof(EngineSheet),
                "gate.fuel-unknown",
                Severity.Stop,
                nameof(EngineSheet.Fuel),
                engine.Id
            ) with
            {
                Citations = [SiteSources.GatePermissions],
            };
        }
    }

    private static bool IsStop(Finding finding) => finding.Severity == Severity.Stop;

    private static IEnumerable<Finding> Judge(PermissionNeed need, ValueList<Permission> given, EventDays days)
    {
        var entries = given.Where(p => need.Givers.Contains(p.Giver)).ToList();
        var holding = entries.Where(p => Fault(p, days) is null).ToList();
        if (holding.Count > 0)
        {
            return holding.Where(p => !string.IsNullOrWhiteSpace(p.Limits)).Select(p => Conditions(need, p));
        }

        return entries.Count == 0 ? [Stop(need, "missing", null)] : entries.Select(p => Stop(need, Fault(p, days)!, p));
    }

    private static string? Fault(Permission entry, EventDays days) =>
        !IsComplete(entry) ? "incomplete"
        : entry.Pedigree is Pedigree.Assumed or Pedigree.Estimated or Pedigree.Calculated ? "assumed"
        : days.BeginBefore(entry.On!.Value) ? "late"
        : entry.ValidUntil is { } until && (until < days.Last || until < entry.On) ? "expired"
        : null;

    private static bool IsComplete(Permission entry) =>
        !string.IsNullOrWhiteSpace(entry.Who) && entry.On is not null && !string.IsNullOrWhiteSpace(entry.Reference);

    private static Finding Stop(PermissionNeed need, string fault, Permission? entry) =>
        new($"gate.permission-{fault}-{need.Name}", Severity.Stop)
        {
            ElementId = entry?.Id,
            Field = entry is null ? "GateRecord.Permissions" : FieldAtFault(entry),
            Citations = [SiteSources.GatePermissions],
        };

    private static string FieldAtFault(Permission entry) =>
        "Permission."
        + (
            string.IsNullOrWhiteSpace(entry.Who) ? nameof(Permission.Who)
            : entry.On is null ? nameof(Permission.On)
            : string.IsNullOrWhiteSpace(entry.Reference) ? nameof(Permission.Reference)
            : nameof(Permission.ValidUntil)
        );

    private static Finding Conditions(PermissionNeed need, Permission entry) =>
        new($"gate.permission-conditions-{need.Name}", Severity.Note)
        {
            ElementId = entry.Id,
            Arguments = [FindingArgument.Of("limits", entry.Limits!)],
        };
}
