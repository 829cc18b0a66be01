using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core;

/// <summary>Everything that can be said about one place: how loud, for how long, with what on the ears, and why.</summary>
/// <param name="Place">The place.</param>
public sealed record AssessedPlace(PlanPoint Place)
{
    /// <summary>
    /// The loudest moment there, or null when nothing runs or the level can't be told; <see cref="Visitor"/> says which.
    /// </summary>
    public AssessedMoment? Loudest { get; init; }

    /// <summary>What a visitor who stays for the whole programme is exposed to.</summary>
    public required PersonExposure Visitor { get; init; }

    /// <summary>The same for a child, whose ears are lower, or higher on shoulders.</summary>
    public required PersonExposure Child { get; init; }

    /// <summary>The same for crew whose legal class is not known: every rule for work is shown.</summary>
    public required PersonExposure Crew { get; init; }

    /// <summary>The protectors of the plan at the loudest moment, in its order; empty while that is null.</summary>
    public ValueList<AssessedProtector> Protectors { get; init; } = [];

    /// <summary>Zones the place lies in, in the order of the assessment.</summary>
    public ValueList<AssessedZone> Zones { get; init; } = [];

    /// <summary>How loud it is for a visitor who stays for the whole programme.</summary>
    public required string Loud { get; init; }

    /// <summary>How long a visitor may stay, or that it can't be told.</summary>
    public required string Stay { get; init; }

    /// <summary>What a visitor wears, or that nothing is asked, or that it can't be told.</summary>
    public required string Wear { get; init; }

    /// <summary>Zones that bind a visitor there, zones that can't be told, and the engines that are heard.</summary>
    public required string Why { get; init; }

    /// <summary>The sentences that are different ones for a child.</summary>
    public required AssessedWords ForChild { get; init; }

    /// <summary>The sentences that are different ones for crew.</summary>
    public required AssessedWords ForCrew { get; init; }
}

/// <summary>Sentences about a place that differ from those for a visitor; null where they say the same.</summary>
/// <param name="Loud">How loud it is.</param>
/// <param name="Stay">How long to stay.</param>
/// <param name="Wear">What to wear.</param>
/// <param name="Why">Zones and engines.</param>
public sealed record AssessedWords(string? Loud, string? Stay, string? Wear, string? Why);

/// <summary>The loudest moment of the programme at a place.</summary>
/// <param name="EarHeightMetres">The height of the ear it is loudest at, in metres.</param>
/// <param name="LevelDbA">Level in dB(A).</param>
/// <param name="LevelDbC">Level in dB(C).</param>
/// <param name="PeakDbC">Peak in dB(C), or null when none was measured.</param>
/// <param name="BandsDb">Best estimates of the octave bands in dB, 63 Hz first.</param>
/// <param name="Engines">Each engine alone, the loudest first.</param>
/// <param name="Parts">How the sound gets there, the loudest part first: together they are the best estimate.</param>
public sealed record AssessedMoment(
    double EarHeightMetres,
    Quantity LevelDbA,
    Quantity LevelDbC,
    Quantity? PeakDbC,
    BandValues BandsDb,
    ValueList<AssessedEngineShare> Engines,
    ValueList<AssessedSoundPart> Parts
);

/// <summary>A part of the sound at a place, and what to say of it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Sentence">Where it comes from, how loud it is and what became of it on the way.</param>
public sealed record AssessedSoundPart(LevelPart Part, string Sentence);

/// <summary>What one engine alone gives at a place.</summary>
/// <param name="EngineId">Id of the engine.</param>
/// <param name="StateId">Id of its throttle state.</param>
/// <param name="LevelDbA">Level in dB(A).</param>
public sealed record AssessedEngineShare(string EngineId, string StateId, Quantity LevelDbA);

/// <summary>What one protector of the plan leaves at a place.</summary>
/// <param name="ProtectorId">Id of the protector.</param>
/// <param name="LevelAtEarDbA">Level under it in dB(A), or null without ratings: cannot tell.</param>
/// <param name="Fit">How well it suits, or null.</param>
public sealed record AssessedProtector(string ProtectorId, Quantity? LevelAtEarDbA, ProtectionFit? Fit);

/// <summary>A zone a place lies in.</summary>
/// <param name="Row">Row of the zones table.</param>
/// <param name="Label">What people call it.</param>
/// <param name="ElementId">Id of the element it comes from.</param>
/// <param name="Part">Finer name inside the row; empty when the row says it all.</param>
/// <param name="Effect">What it does.</param>
/// <param name="Whom">Whom it binds.</param>
/// <param name="When">When it applies.</param>
/// <param name="Sentence">What it is, whom it binds and when, and what draws its edge.</param>
public sealed record AssessedZone(
    ZoneRow Row,
    string Label,
    string ElementId,
    string Part,
    ZoneEffect Effect,
    Audience Whom,
    Phases When,
    string Sentence
);
