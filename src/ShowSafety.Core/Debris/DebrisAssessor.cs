using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>Answers where pieces of a burst rotor would go, for every engine of a plan.</summary>
public static class DebrisAssessor
{
    /// <summary>
    /// Pieces, direct-flight sectors (row 1), landing areas (row 2), debris screens and findings of a plan. An engine
    /// whose rotors are not known is "cannot tell", a stop. A plan without engines has nothing to find.
    /// </summary>
    public static DebrisAssessment Assess(Plan plan)
    {
        var findings = new List<Finding>();
        var figures = new List<Figure>();
        var zones = new List<Zone>();
        var screens = new ScreenLedger(plan);
        EngineBurst[] bursts = [.. plan.Engines.Select(e => EngineBurst.Of(plan.Site, e, findings))];
        foreach (EngineBurst burst in bursts.Where(b => b.Pieces.Count > 0))
        {
            figures.AddRange(DebrisFigures.Of(burst));
            zones.AddRange(DirectFlightZones.Of(burst, screens));
            zones.Add(LandingArea.Zone(burst));
            findings.AddRange(EngineFindings.Of(burst));
            findings.Add(LandingArea.Finding(burst, plan.Decisions));
        }

        findings.AddRange(screens.Findings());
        return new()
        {
            Pieces = [.. bursts.SelectMany(b => b.Pieces)],
            Figures = [.. figures],
            Zones = [.. zones],
            Findings = [.. findings],
        };
    }
}
