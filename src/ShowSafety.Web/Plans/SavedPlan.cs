namespace ShowSafety.Web.Plans;

/// <summary>A saved plan in the list.</summary>
/// <param name="Id">Id in the address.</param>
/// <param name="Title">Title of the plan.</param>
/// <param name="Revision">Counts the savings, from 1; in quotation marks it is the entity tag.</param>
/// <param name="SavedAt">When it was last saved.</param>
internal sealed record PlanSummary(string Id, string Title, int Revision, DateTimeOffset SavedAt);

/// <summary>A saved plan.</summary>
/// <param name="Summary">What the list says of it.</param>
/// <param name="Content">The plan file in its canonical form.</param>
internal sealed record SavedPlan(PlanSummary Summary, byte[] Content);

/// <summary>A named version of a plan, kept for good.</summary>
/// <param name="Number">Counts the versions of the plan, from 1.</param>
/// <param name="Name">The name given to it.</param>
/// <param name="Title">Title of the plan then.</param>
/// <param name="SavedAt">When it was kept.</param>
internal sealed record VersionSummary(int Number, string Name, string Title, DateTimeOffset SavedAt);

/// <summary>How an attempt to change a plan ended.</summary>
internal enum ChangeOutcome
{
    /// <summary>Done.</summary>
    Done,

    /// <summary>No such plan.</summary>
    NotFound,

    /// <summary>Somebody saved it in the meantime.</summary>
    ChangedMeanwhile,
}
