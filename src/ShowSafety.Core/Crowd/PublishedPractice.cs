using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Crowd;

/// <summary>
/// The distance published practice keeps people who aren't needed from a small gas turbine. It is shown beside the
/// physics and replaces none of it: it does not stop a piece.
/// </summary>
internal static class PublishedPractice
{
    /// <summary>The largest of the published distances (7.62 m, 9 m, 10 m), in m.</summary>
    private const double DistanceMetres = 10;

    private static Quantity Distance { get; } =
        Quantity.CautiousHigh(DistanceMetres, DistanceMetres, Unit.Metre) with
        {
            Citations = [SiteSources.CrowdPracticeTen, SiteSources.CrowdPracticeNine, SiteSources.CrowdPracticeFeet],
        };

    public static IEnumerable<Zone> Zones(Plan plan) =>
        plan.Engines.Select(engine => new Zone(
            ZoneRow.PublishedPractice,
            engine.Id,
            ZoneEffect.Excludes,
            Audience.Visitors | Audience.Children,
            Phases.Start | Phases.Running,
            ZoneFrame.Engine,
            SiteGeometry.Widened(EngineBody.Axis(engine), DistanceMetres + EngineBody.RadiusMetres(engine))
        )
        {
            Boundary = Distance,
            Reach = Distance,
            Citations = Distance.Citations,
        });

    public static IEnumerable<Finding> Findings(Plan plan) =>
        plan.Engines.Count == 0
            ? []
            :
            [
                new("crowd.published-practice", Severity.Note)
                {
                    Row = ZoneRow.PublishedPractice,
                    Arguments = [FindingArgument.Of("distance", Distance)],
                    Citations = Distance.Citations,
                },
            ];
}
