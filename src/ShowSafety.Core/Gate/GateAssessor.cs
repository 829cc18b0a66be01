using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Gate;

/// <summary>
/// Asks, before any physics of the surroundings, whether an engine may run in front of people: who has allowed it, what
/// shows that the engine is fit, whether the bench holds it, and who can stop it.
/// </summary>
public static class GateAssessor
{
    /// <summary>Assesses a plan, however incomplete: what is missing comes back as a finding.</summary>
    public static GateAssessment Assess(Plan plan)
    {
        var restraints = plan.Engines.Select(RestraintCheck.Of).ToList();
        return new()
        {
            Figures = [.. restraints.SelectMany(r => r.Figures)],
            Findings =
            [
                .. PermissionCheck.Findings(plan),
                .. EvidenceCheck.Findings(plan),
                .. restraints.SelectMany(r => r.Findings),
                .. StoppingCheck.Findings(plan),
                .. TentCheck.Findings(plan),
            ],
        };
    }
}
