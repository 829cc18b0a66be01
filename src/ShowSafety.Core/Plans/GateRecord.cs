using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>What decides whether an engine may run at all.</summary>
public sealed record GateRecord
{
    /// <summary>Permissions given.</summary>
    [Field("permissions given", FindOut = FindOut.Venue)]
    public ValueList<Permission> Permissions { get; init; } = [];

    /// <summary>Evidence for each engine.</summary>
    [Field("evidence for each engine", MaxCount = 12)]
    public ValueList<EngineEvidence> EngineEvidence { get; init; } = [];

    /// <summary>Means of stopping.</summary>
    [Field("means of stopping")]
    public Stopping? Stopping { get; init; }

    /// <summary>Papers of the tent.</summary>
    [Field("papers of the tent")]
    public TentPapers? Tent { get; init; }
}

/// <summary>A permission by somebody entitled to give it.</summary>
public sealed record Permission
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Who gives it.</summary>
    [Field("in what capacity it is given", Required = true)]
    public PermissionGiver Giver { get; init; }

    /// <summary>Name of the person.</summary>
    [Field("name of the person", MaxLength = 120)]
    public string? Who { get; init; }

    /// <summary>Date given.</summary>
    [Field("date it was given")]
    public DateOnly? On { get; init; }

    /// <summary>Last day it holds.</summary>
    [Field("last day it holds; absent: no limit stated")]
    public DateOnly? ValidUntil { get; init; }

    /// <summary>Letter, mail or number.</summary>
    [Field("letter, mail or number", MaxLength = 200)]
    public string? Reference { get; init; }

    /// <summary>Conditions attached.</summary>
    [Field("conditions attached", MaxLength = 1000)]
    public string? Limits { get; init; }

    /// <summary>Where it comes from.</summary>
    [Field("where this entry comes from")]
    public Pedigree? Pedigree { get; init; }
}

/// <summary>Who can give a permission.</summary>
public enum PermissionGiver
{
    /// <summary>The venue.</summary>
    Venue,

    /// <summary>The organiser.</summary>
    Organiser,

    /// <summary>The fire officer or fire authority.</summary>
    FireAuthority,

    /// <summary>The insurer.</summary>
    Insurer,
}

/// <summary>Evidence that an engine is fit to run in front of people.</summary>
public sealed record EngineEvidence
{
    /// <summary>Id of the engine.</summary>
    [Field("id of the engine", Required = true, MaxLength = 40)]
    public string EngineId { get; init; } = "";

    /// <summary>Running time since new or since rotors were changed.</summary>
    [Field("running time of the rotors so far", Unit = Unit.Hour, Min = 0, Max = 10000, FindOut = FindOut.Check)]
    public Stated? RunningHours { get; init; }

    /// <summary>Date of the last crack check of the rotors.</summary>
    [Field("date of the last crack check of the rotors", FindOut = FindOut.Check)]
    public DateOnly? CrackCheckOn { get; init; }

    /// <summary>Date the over-speed trip was proven.</summary>
    [Field("date the over-speed trip was proven", FindOut = FindOut.Check)]
    public DateOnly? TripProvenOn { get; init; }

    /// <summary>Ten-minute runs at rated power without damage, one after the other.</summary>
    [Field("consecutive ten-minute runs at rated power without damage", Min = 0, Max = 1000, FindOut = FindOut.Check)]
    public int? RatedRuns { get; init; }

    /// <summary>Overhaul record.</summary>
    [Field("overhaul record: by whom, when, reference", MaxLength = 400)]
    public string? Overhaul { get; init; }

    /// <summary>Containment test.</summary>
    [Field("containment test: by whom, when, reference", MaxLength = 400)]
    public string? ContainmentTest { get; init; }

    /// <summary>Where these entries come from.</summary>
    [Field("where these entries come from")]
    public Pedigree? Pedigree { get; init; }
}

/// <summary>How a run is stopped.</summary>
public sealed record Stopping
{
    /// <summary>Time from pulling the fuel cut to no fuel at the engine.</summary>
    [Field(
        "time from the fuel cut to no fuel at the engine",
        Unit = Unit.Second,
        Min = 0,
        Max = 600,
        FindOut = FindOut.Meter
    )]
    public Stated? FuelCutSeconds { get; init; }

    /// <summary>Whether the fuel cut works without the engine's own controller.</summary>
    [Field("whether the fuel cut works without the engine's own controller", FindOut = FindOut.Check)]
    public bool? Independent { get; init; }

    /// <summary>People who can stop the engine, where they stand.</summary>
    [Field("where the people who can stop the engine stand", MaxCount = 20)]
    public ValueList<MarkedPlace> StopPosts { get; init; } = [];

    /// <summary>What makes them stop it.</summary>
    [Field("numbers and events that make them stop it", MaxLength = 1000)]
    public string? Triggers { get; init; }
}

/// <summary>Papers of a tent.</summary>
public sealed record TentPapers
{
    /// <summary>Fire certificate of the fabric.</summary>
    [Field("fire certificate of the fabric: standard, class, number", MaxLength = 200, FindOut = FindOut.Venue)]
    public string? FabricCertificate { get; init; }

    /// <summary>Wind speed at which the tent must be cleared.</summary>
    [Field(
        "wind speed at which the tent must be cleared",
        Unit = Unit.MetrePerSecond,
        Min = 1,
        Max = 60,
        FindOut = FindOut.Maker
    )]
    public Stated? ClearAtWindMetresPerSecond { get; init; }
}
