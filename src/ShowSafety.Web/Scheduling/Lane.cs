namespace ShowSafety.Web.Scheduling;

/// <summary>Who waits for a computation.</summary>
internal enum Lane
{
    /// <summary>A hand on the page: drags, taps, pictures of levels.</summary>
    Interactive,

    /// <summary>Whole assessments and documents.</summary>
    Background,
}
