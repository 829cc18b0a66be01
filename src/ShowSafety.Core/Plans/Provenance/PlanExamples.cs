using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Tells invented plans from real ones, and turns one into the start of the other.</summary>
public static class PlanExamples
{
    /// <summary>Whether anything in the plan is invented: every output of such a plan says EXAMPLE.</summary>
    public static bool IsExample(Plan plan) => PlanWalk.Over(plan).Any(member => member.Value is Pedigree.Example);

    /// <summary>
    /// A plan of one's own, started from another: the drawing stays, everything somebody measured, proved, permitted or
    /// answered for goes, and what the template says of itself. What stays of a template keeps its pedigree, so it goes on
    /// saying EXAMPLE until replaced.
    /// </summary>
    public static Plan StartFrom(Plan plan) =>
        plan with
        {
            Notes = null,
            Event = null,
            Prepared = null,
            Decisions = null,
            Readings = [],
            Engines = plan.Engines.Select(WithoutSheet).ToValueList(),
            Protectors = plan.Protectors.Select(WithoutRatings).ToValueList(),
            DebrisScreens = plan.DebrisScreens.Select(s => s with { Evidence = null }).ToValueList(),
            Gate = WithoutEvidence(plan.Gate),
        };

    // Of the bench only its outline and the way it is held stay: its mass, its tipping arm and what its anchoring was
    // tested to belong to somebody else's bench, and a bench that tips points the jet at people.
    private static Engine WithoutSheet(Engine engine) =>
        engine with
        {
            Sheet = null,
            Bench = engine.Bench is { } bench
                ? new()
                {
                    LengthMetres = bench.LengthMetres,
                    WidthMetres = bench.WidthMetres,
                    Anchoring = bench.Anchoring,
                }
                : null,
        };

    private static HearingProtector WithoutRatings(HearingProtector protector) =>
        protector with
        {
            SnrDb = null,
            HighDb = null,
            MediumDb = null,
            LowDb = null,
        };

    // Where the people with a finger on the stop stand is part of the drawing; that it works is evidence.
    private static GateRecord? WithoutEvidence(GateRecord? gate) =>
        gate?.Stopping is { } stopping
            ? new() { Stopping = stopping with { FuelCutSeconds = null, Independent = null } }
            : null;
}
