using ShowSafety.Core.Plans;

namespace ShowSafety.Core;

/// <summary>
/// The part of a plan each room reads: the plan with everything else taken out. A room is given its part and nothing
/// more, so a memory that goes by the part can't miss anything the room looked at.
/// </summary>
internal static class AssessedParts
{
    // Title and schema are read by no room.
    private static readonly Plan Bare = new();

    /// <summary>For how loud it is.</summary>
    public static Plan OfSound(Plan plan) =>
        Bare with
        {
            Site = Ground(plan.Site),
            Engines = plan.Engines,
            Programme = plan.Programme,
        };

    /// <summary>For how long one may stand there.</summary>
    public static Plan OfExposure(Plan plan) =>
        OfSound(plan) with
        {
            Event = plan.Event,
            RuleSets = plan.RuleSets,
            People = plan.People,
            Protectors = plan.Protectors,
        };

    /// <summary>For where the jet goes.</summary>
    public static Plan OfExhaust(Plan plan) => Bare with { Site = Ground(plan.Site), Engines = plan.Engines };

    /// <summary>For what the air becomes.</summary>
    public static Plan OfIndoorAir(Plan plan) =>
        Bare with
        {
            Site = Ground(plan.Site),
            Engines = plan.Engines,
            Programme = plan.Programme,
        };

    /// <summary>For where a piece would go.</summary>
    public static Plan OfDebris(Plan plan) =>
        Bare with
        {
            Site = Ground(plan.Site),
            Engines = plan.Engines,
            DebrisScreens = plan.DebrisScreens,
            Decisions = plan.Decisions,
        };

    /// <summary>For how fuel and gas are kept.</summary>
    public static Plan OfSupplies(Plan plan) =>
        Bare with
        {
            Site = plan.Site,
            Engines = plan.Engines,
            Supplies = plan.Supplies,
        };

    /// <summary>For how people stand and leave.</summary>
    public static Plan OfCrowd(Plan plan) =>
        Bare with
        {
            Site = plan.Site,
            Engines = plan.Engines,
            People = plan.People,
            CrowdLine = plan.CrowdLine,
            Viewing = plan.Viewing,
        };

    /// <summary>For whether it may run at all.</summary>
    public static Plan OfGate(Plan plan) =>
        Bare with
        {
            Site = Ground(plan.Site),
            Engines = plan.Engines,
            Programme = plan.Programme,
            Event = plan.Event,
            Gate = plan.Gate,
        };

    // What stands on the site and in the air; not what people do there.
    private static Site Ground(Site site) =>
        site with
        {
            Exits = [],
            Stands = [],
            Surroundings = [],
            Picture = null,
            Anchor = null,
        };
}
