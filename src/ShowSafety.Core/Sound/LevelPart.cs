using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>How a part of a level gets to a place.</summary>
public enum LevelPartKind
{
    /// <summary>Straight from the engine, with what the ground adds or takes off.</summary>
    Straight,

    /// <summary>Thrown back by a wall.</summary>
    Wall,

    /// <summary>The diffuse sound of the hall or tent.</summary>
    Room,
}

/// <summary>
/// One part of a level at a place: the energies of all parts add up to the level, so that one sees why a place is loud
/// and what would help. Best estimates; U is the same for all.
/// </summary>
/// <param name="EngineId">Id of the engine it comes from.</param>
/// <param name="Kind">How it gets there.</param>
/// <param name="StructureId">Id of the wall that throws it back, or of the hall or tent; null straight from the engine.</param>
/// <param name="LevelDbA">Level of this part in dB(A).</param>
/// <param name="BandsDb">Its octave bands in dB, 63 Hz first.</param>
/// <param name="Terms">What becomes of the engine's sound on the way; null for the sound of a room.</param>
public sealed record LevelPart(
    string EngineId,
    LevelPartKind Kind,
    string? StructureId,
    double LevelDbA,
    BandValues BandsDb,
    LevelTerms? Terms
);

/// <summary>
/// The terms of one way, A-weighted one after the other in this order, so that power less all of them is the level.
/// </summary>
/// <param name="AngleDegrees">Angle from the exhaust axis, 0 to 180, mirrored where a wall throws it back.</param>
/// <param name="PowerDbA">Power level in that direction in dB(A).</param>
/// <param name="SpreadDb">What distance takes off in dB.</param>
/// <param name="AirDb">What the air takes off in dB.</param>
/// <param name="GroundDb">What the ground takes off in dB; below 0 where it adds, as a hard floor does.</param>
/// <param name="ScreenDb">What screens take off in dB, 0 or more.</param>
/// <param name="WallDb">What the wall keeps in dB, 0 or more.</param>
/// <param name="ScreenBandsDb">What screens take off in each octave band in dB.</param>
public sealed record LevelTerms(
    double AngleDegrees,
    double PowerDbA,
    double SpreadDb,
    double AirDb,
    double GroundDb,
    double ScreenDb,
    double WallDb,
    BandValues ScreenBandsDb
);
