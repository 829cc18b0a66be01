using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// The plan of a demonstration, version 1: everything the assessment depends on, in metres, immutable and equal by
/// value. Only the schema, the title and the site's outline are required; what depends on anything missing is
/// "cannot tell".
/// </summary>
public sealed record Plan
{
    /// <summary>The only schema this version reads.</summary>
    public const string SchemaName = "showsafety-plan/1";

    /// <summary>Name and version of the file format.</summary>
    [Field("name and version of the file format", Required = true, Exactly = SchemaName)]
    public string Schema { get; init; } = SchemaName;

    /// <summary>Title of the plan.</summary>
    [Field("title of the plan", Required = true, MaxLength = 120)]
    public string Title { get; init; } = "";

    /// <summary>The event the demonstration is part of.</summary>
    [Field("the event the demonstration is part of")]
    public ShowEvent? Event { get; init; }

    /// <summary>Who prepared the plan, and when.</summary>
    [Field("who prepared the plan, and when")]
    public Prepared? Prepared { get; init; }

    /// <summary>Ids of the rule sets chosen.</summary>
    [Field("ids of the rule sets the plan is checked against", MaxCount = 20)]
    public ValueList<string> RuleSets { get; init; } = [];

    /// <summary>How values are shown.</summary>
    [Field("how values are shown")]
    public Display? Display { get; init; }

    /// <summary>Free text for readers of the plan.</summary>
    [Field("free text for readers of the plan", MaxLength = 4000)]
    public string? Notes { get; init; }

    /// <summary>The place.</summary>
    [Field("the place of the demonstration", Required = true)]
    public Site Site { get; init; } = new();

    /// <summary>The engines shown.</summary>
    [Field("the engines shown", MaxCount = 12)]
    public ValueList<Engine> Engines { get; init; } = [];

    /// <summary>When which engine runs at which throttle.</summary>
    [Field("when which engine runs at which throttle")]
    public Programme? Programme { get; init; }

    /// <summary>Groups of people: crew, exhibitors, visitors, neighbours.</summary>
    [Field("groups of people: crew, exhibitors, visitors, neighbours", MaxCount = 100)]
    public ValueList<PersonGroup> People { get; init; } = [];

    /// <summary>Hearing protectors at hand.</summary>
    [Field("hearing protectors at hand", MaxCount = 40)]
    public ValueList<HearingProtector> Protectors { get; init; } = [];

    /// <summary>The line the public stands behind.</summary>
    [Field("the line the public stands behind")]
    public CrowdLine? CrowdLine { get; init; }

    /// <summary>Viewing places and stewards' posts.</summary>
    [Field("viewing places and stewards' posts")]
    public Viewing? Viewing { get; init; }

    /// <summary>Fuel, gas, batteries, extinguishers.</summary>
    [Field("fuel, gas, batteries, extinguishers")]
    public SupplyList? Supplies { get; init; }

    /// <summary>Screens meant to hold pieces of a rotor.</summary>
    [Field("screens meant to hold pieces of a rotor", MaxCount = 20)]
    public ValueList<DebrisScreen> DebrisScreens { get; init; } = [];

    /// <summary>Permissions, engine evidence, restraint, means of stopping.</summary>
    [Field("permissions, engine evidence, restraint, means of stopping")]
    public GateRecord? Gate { get; init; }

    /// <summary>Controls chosen, residual hazards accepted, and by whom.</summary>
    [Field("controls chosen, residual hazards accepted, and by whom")]
    public Decisions? Decisions { get; init; }

    /// <summary>Readings taken on the day.</summary>
    [Field("readings taken on the day", MaxCount = 500)]
    public ValueList<DayReading> Readings { get; init; } = [];
}
