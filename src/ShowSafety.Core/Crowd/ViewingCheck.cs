using ShowSafety.Core.Citations;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Crowd;

/// <summary>Stewards at the line and places kept for wheelchair users.</summary>
internal static class ViewingCheck
{
    public static IEnumerable<Finding> Findings(Plan plan)
    {
        Viewing viewing = plan.Viewing ?? new Viewing();
        if (viewing.StewardPosts.Count == 0)
        {
            yield return new("crowd.steward-posts-missing", Severity.Act)
            {
                Field = $"{nameof(Viewing)}.{nameof(Viewing.StewardPosts)}",
                Citations = [SiteSources.CrowdBarriers],
            };
        }

        if (viewing.WheelchairPlaces.Count == 0)
        {
            yield return new("crowd.wheelchair-places-missing", Severity.Note)
            {
                Field = $"{nameof(Viewing)}.{nameof(Viewing.WheelchairPlaces)}",
                Citations = [SiteSources.CrowdWheelchair],
            };
        }
    }
}
