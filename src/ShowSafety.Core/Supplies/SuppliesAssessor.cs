using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>Asks what burns, how far it stands from what lights it, what its fire would do and what puts it out.</summary>
public static class SuppliesAssessor
{
    /// <summary>Assesses a plan, however incomplete: what is missing comes back as a finding.</summary>
    public static SuppliesAssessment Assess(Plan plan)
    {
        var stores = SeparationZones.Of(plan);
        var fires = plan.Engines.Select(engine => SpillFireCheck.Of(plan, engine)).ToList();
        return new()
        {
            Figures = [.. fires.SelectMany(f => f.Figures), .. GasCheck.Figures(plan)],
            Zones = [.. stores, .. fires.SelectMany(f => f.Zones)],
            Findings =
            [
                .. SeparationCheck.Findings(plan),
                .. GasCheck.Findings(plan),
                .. QuantityCheck.Findings(plan),
                .. ExtinguisherCheck.Findings(plan),
                .. SpillFireCheck.PlanFindings(plan),
                .. fires.SelectMany(f => f.Findings),
            ],
        };
    }
}
