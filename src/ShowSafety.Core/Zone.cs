using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core;

/// <summary>An area where a hazard excludes people, requires something of them or informs about something.</summary>
/// <param name="Row">Row of the zones table.</param>
/// <param name="ElementId">Id of the engine or element it comes from.</param>
/// <param name="Effect">What it does.</param>
/// <param name="Whom">Whom it binds.</param>
/// <param name="When">When it applies.</param>
/// <param name="Frame">Whether it turns with the engine or stands on the site.</param>
/// <param name="Area">Polygon or polygons in plan metres, circumscribed, not clipped to the site.</param>
public sealed record Zone(
    ZoneRow Row,
    string ElementId,
    ZoneEffect Effect,
    Audience Whom,
    Phases When,
    ZoneFrame Frame,
    Geometry Area
)
{
    /// <summary>The value at the boundary that sets the zone, or null where a choice sets it.</summary>
    public Quantity? Boundary { get; init; }

    /// <summary>Farthest reach from the engine, or null.</summary>
    public Quantity? Reach { get; init; }

    /// <summary>
    /// Finer name inside a row, such as "one-third-disc" or a rule set's id; empty when the row says it all. A zone
    /// with a part other than empty that repeats another one's area is drawn inside it.
    /// </summary>
    public string Part { get; init; } = "";

    /// <summary>Ids of citations.</summary>
    public ValueList<string> Citations { get; init; } = [];
}

/// <summary>Rows of the one table of zones: which hazard keeps whom out, from what value, when.</summary>
public enum ZoneRow
{
    /// <summary>Direct flight of rotor pieces.</summary>
    DirectFlight = 1,

    /// <summary>Landing area of lobbed pieces.</summary>
    LandingArea = 2,

    /// <summary>Jet speed, public.</summary>
    JetSpeedPublic = 3,

    /// <summary>Jet speed, crew and loose things.</summary>
    JetSpeedCrew = 4,

    /// <summary>Jet heat, public.</summary>
    JetHeatPublic = 5,

    /// <summary>Jet heat, crew.</summary>
    JetHeatCrew = 6,

    /// <summary>Jet heat on materials.</summary>
    JetHeatMaterials = 7,

    /// <summary>Flame at a start.</summary>
    StartFlame = 8,

    /// <summary>Intake.</summary>
    Intake = 9,

    /// <summary>Hot and spinning parts within reach.</summary>
    HotAndSpinningParts = 10,

    /// <summary>Distance of published practice.</summary>
    PublishedPractice = 11,

    /// <summary>Hearing zone.</summary>
    HearingZone = 12,

    /// <summary>Audience limit of a rule set.</summary>
    AudienceLimit = 13,

    /// <summary>Ceiling level.</summary>
    SoundCeiling = 14,

    /// <summary>No listed protector is enough.</summary>
    AtTheEar = 15,

    /// <summary>Indoor air.</summary>
    IndoorAir = 16,

    /// <summary>Fuel and gas.</summary>
    FuelAndGas = 17,

    /// <summary>Spill fire.</summary>
    SpillFire = 18,
}

/// <summary>What a zone does.</summary>
public enum ZoneEffect
{
    /// <summary>Tells something.</summary>
    Informs,

    /// <summary>Requires something of whoever is inside.</summary>
    Requires,

    /// <summary>Keeps people out.</summary>
    Excludes,
}

/// <summary>Whom a zone binds.</summary>
[Flags]
public enum Audience
{
    /// <summary>Nobody: things only.</summary>
    None = 0,

    /// <summary>Visitors.</summary>
    Visitors = 1,

    /// <summary>Other exhibitors.</summary>
    Exhibitors = 2,

    /// <summary>Neighbours.</summary>
    Neighbours = 4,

    /// <summary>Crew.</summary>
    Crew = 8,

    /// <summary>Children among visitors.</summary>
    Children = 16,

    /// <summary>Everyone.</summary>
    Everyone = Visitors | Exhibitors | Neighbours | Crew | Children,
}

/// <summary>When a zone applies.</summary>
[Flags]
public enum Phases
{
    /// <summary>Never.</summary>
    None = 0,

    /// <summary>From light-up to idle.</summary>
    Start = 1,

    /// <summary>Running.</summary>
    Running = 2,

    /// <summary>Rotor running down.</summary>
    RunDown = 4,

    /// <summary>Cooling down until parts can be touched.</summary>
    CoolDown = 8,

    /// <summary>Fuelling.</summary>
    Fuelling = 16,

    /// <summary>Standing cold between runs.</summary>
    Standing = 32,

    /// <summary>Always.</summary>
    Always = Start | Running | RunDown | CoolDown | Fuelling | Standing,
}

/// <summary>What a zone is fixed to.</summary>
public enum ZoneFrame
{
    /// <summary>It moves and turns with its engine.</summary>
    Engine,

    /// <summary>It depends on the site and must be calculated again when something moves.</summary>
    Site,
}
