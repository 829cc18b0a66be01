using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Crowd;

/// <summary>
/// Asks how many people have room and a way out, what the barrier keeps out of reach, which distance published
/// practice keeps, and who watches over the line.
/// </summary>
public static class CrowdAssessor
{
    /// <summary>Assesses a plan, however incomplete: what is missing comes back as a finding.</summary>
    public static CrowdAssessment Assess(Plan plan)
    {
        var spaces = CrowdSpace.Of(plan).Select(space => CapacityCheck.Of(space)).ToList();
        ReachCheck reach = ReachCheck.Of(plan);
        return new()
        {
            Figures =
            [
                .. spaces.SelectMany(s => s.Figures),
                .. LineCheck.Figures(plan),
                .. reach.Figures,
                .. HearingTheAlarm.Figures(plan),
            ],
            Zones = [.. reach.Zones, .. PublishedPractice.Zones(plan)],
            Findings =
            [
                .. CountCheck.Findings(plan),
                .. spaces.SelectMany(s => s.Findings),
                .. LineCheck.Findings(plan),
                .. reach.Findings,
                .. PublishedPractice.Findings(plan),
                .. ViewingCheck.Findings(plan),
                .. HearingTheAlarm.Findings(plan),
            ],
        };
    }
}
