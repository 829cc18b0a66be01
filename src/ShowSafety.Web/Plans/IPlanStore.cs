using ShowSafety.Core.Plans;

namespace ShowSafety.Web.Plans;

/// <summary>Keeps plans: one draft of each, saved again and again, and versions kept for good under a name.</summary>
internal interface IPlanStore
{
    /// <summary>All plans, the last saved first.</summary>
    IReadOnlyList<PlanSummary> List();

    /// <summary>A plan, or null.</summary>
    SavedPlan? Find(string id);

    /// <summary>Keeps a new plan.</summary>
    PlanSummary Add(Plan plan);

    /// <summary>Saves the draft of a plan unless its revision is another one by now.</summary>
    (ChangeOutcome Outcome, PlanSummary? Saved) Save(string id, int revision, Plan plan);

    /// <summary>Takes a plan out of the list unless its revision is another one by now. Its versions stay.</summary>
    ChangeOutcome Remove(string id, int revision);

    /// <summary>Keeps the draft as it is now under a name, or null when there is no such plan.</summary>
    VersionSummary? Keep(string id, string name);

    /// <summary>The versions of a plan, the latest first.</summary>
    IReadOnlyList<VersionSummary> Versions(string id);

    /// <summary>The plan file of a version, or null.</summary>
    byte[]? FindVersion(string id, int number);
}
