using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>Assesses the exhaust and the intake of every engine of a plan.</summary>
public static class ExhaustAssessor
{
    /// <summary>
    /// Zones of air speed and heat, start flame and intake, what stands in the jet, and whether the engine sheets can
    /// be true. Never throws on an odd plan: what is missing is a finding.
    /// </summary>
    public static ExhaustAssessment Assess(Plan plan)
    {
        AmbientAir air = AmbientAir.Of(plan.Site);
        ValueList<WallPiece> walls = Walls.Of(plan.Site);
        EngineExhaust[] engines =
        [
            .. plan.Engines.Select(engine => new EngineExhaust(plan, engine, new EngineJetFrame(engine, air, walls))),
        ];
        return new()
        {
            Figures = [.. engines.SelectMany(e => e.Figures)],
            Zones = [.. engines.SelectMany(e => e.Zones)],
            Findings = [.. engines.SelectMany(e => e.Findings)],
            Jets = [.. engines.Select(e => e.Jet)],
        };
    }
}
