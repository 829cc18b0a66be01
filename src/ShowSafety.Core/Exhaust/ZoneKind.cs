using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>One zone of a jet as the table of zones has it.</summary>
/// <param name="Row">Row of the table.</param>
/// <param name="Key">Key of the figure of its reach.</param>
/// <param name="Limit">Value at the boundary, m/s or °C.</param>
/// <param name="Unit">Unit of the limit.</param>
/// <param name="Effect">What it does.</param>
/// <param name="Whom">Whom it binds.</param>
/// <param name="When">When it applies.</param>
internal sealed record ZoneKind(
    ZoneRow Row,
    string Key,
    double Limit,
    Unit Unit,
    ZoneEffect Effect,
    Audience Whom,
    Phases When
)
{
    private const Phases Blowing = Phases.Start | Phases.Running;
    private const Phases Hot = Blowing | Phases.CoolDown;
    private const Audience Public = Audience.Visitors | Audience.Exhibitors | Audience.Children;

    /// <summary>Finer name inside the row.</summary>
    public string Part { get; init; } = "";

    /// <summary>Kind of thing it is about, for the row of materials.</summary>
    public BurnableKind? Thing { get; init; }

    /// <summary>Citations of the limit.</summary>
    public ValueList<string> Citations { get; init; } = [];

    /// <summary>Whether it is about speed; else about heat.</summary>
    public bool IsSpeed => Unit == Unit.MetrePerSecond;

    /// <summary>Speed zones, rows 3 and 4.</summary>
    public static ValueList<ZoneKind> Speeds { get; } =
    [
        new(
            ZoneRow.JetSpeedPublic,
            "exhaust.speed-reach-public",
            ExhaustThresholds.PublicSpeedMetresPerSecond,
            Unit.MetrePerSecond,
            ZoneEffect.Excludes,
            Public | Audience.Neighbours,
            Blowing
        )
        {
            Citations = ["ac-150-5300-13"],
        },
        new(
            ZoneRow.JetSpeedCrew,
            "exhaust.speed-reach-crew",
            ExhaustThresholds.CrewSpeedMetresPerSecond,
            Unit.MetrePerSecond,
            ZoneEffect.Excludes,
            Audience.Crew,
            Blowing
        )
        {
            Citations = ["ac-150-5300-13", "ufc-3-260-01-a8-2"],
        },
        new(
            ZoneRow.JetSpeedCrew,
            "exhaust.speed-reach-crew",
            ExhaustThresholds.CrewSpeedMetresPerSecond,
            Unit.MetrePerSecond,
            ZoneEffect.Requires,
            Audience.None,
            Blowing
        )
        {
            Part = "nothing-loose",
            Thing = BurnableKind.LooseItems,
            Citations = ["ac-150-5300-13", "ufc-3-260-01-a8-2"],
        },
    ];

    /// <summary>Heat zones, rows 5, 6 and 7.</summary>
    public static ValueList<ZoneKind> Heats { get; } =
    [
        new(
            ZoneRow.JetHeatPublic,
            "exhaust.heat-reach-public",
            ExhaustThresholds.PublicAirCelsius,
            Unit.Celsius,
            ZoneEffect.Excludes,
            Public,
            Hot
        )
        {
            Citations = ["ufc-3-260-01-a8-5"],
        },
        new(
            ZoneRow.JetHeatCrew,
            "exhaust.heat-reach-crew",
            ExhaustThresholds.CrewAirCelsius,
            Unit.Celsius,
            ZoneEffect.Excludes,
            Audience.Crew,
            Hot
        )
        {
            Citations = ["choice-crew-air", "nfpa-130"],
        },
        Material(BurnableKind.TentFabric, "tent-fabric", "tent-membrane"),
        Material(BurnableKind.Wood, "wood", "babrauskas-2007"),
        Material(BurnableKind.DryVegetation, "dry-vegetation", "wood-handbook", "choice-ignition-margin"),
        Material(BurnableKind.Paper, "paper", "paper-ignition", "choice-ignition-margin"),
        Material(BurnableKind.Vehicle, "vehicle", "kerosene-flash"),
    ];

    private static ZoneKind Material(BurnableKind thing, string part, params ReadOnlySpan<string> citations) =>
        new(
            ZoneRow.JetHeatMaterials,
            $"exhaust.heat-reach-{part}",
            ExhaustThresholds.LimitCelsius(thing) ?? ExhaustThresholds.FabricCelsius,
            Unit.Celsius,
            ZoneEffect.Requires,
            Audience.None,
            Phases.Running | Phases.CoolDown
        )
        {
            Part = part,
            Thing = thing,
            Citations = ValueList.Create(citations),
        };
}
