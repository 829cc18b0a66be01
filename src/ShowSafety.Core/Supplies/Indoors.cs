using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>Whether a place lies in the plan's hall or tent.</summary>
internal static class Indoors
{
    public static bool Holds(Plan plan, PlanPoint place) =>
        plan.Site.Enclosure is { Footprint.Count: > 2 } enclosure
        && SiteGeometry.Polygon(enclosure.Footprint).Distance(SiteGeometry.Point(place)) <= 0;
}
