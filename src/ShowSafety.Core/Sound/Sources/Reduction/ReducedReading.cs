using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources.Reduction;

/// <summary>
/// A reading reduced to power levels: background and room taken off, then the way back to the source.
/// </summary>
/// <param name="PowerDb">Power levels in dB of an omnidirectional source that would be as loud at the microphone.</param>
/// <param name="FreeDb">Levels in dB the engine alone would give at the microphone outdoors.</param>
/// <param name="Background">What the background did.</param>
/// <param name="Room">What the room did, or null outdoors.</param>
public sealed record ReducedReading(
    BandValues PowerDb,
    BandValues FreeDb,
    BackgroundCheck Background,
    RoomCorrection? Room
)
{
    /// <summary>
    /// Reduces octave band levels at a microphone. Null when the background is less than 3 dB below: the level can't be
    /// told.
    /// </summary>
    /// <param name="bandsDb">Levels read in dB.</param>
    /// <param name="backgroundDbA">Level with the engine stopped in dB(A), or null where not recorded.</param>
    /// <param name="absorptionSquareMetres">Absorption area of the room in m², above 0, or null outdoors.</param>
    /// <param name="place">Where it was read.</param>
    /// <param name="airPerMetre">Power attenuation coefficients of the air in 1/m.</param>
    public static ReducedReading? Of(
        BandValues bandsDb,
        double? backgroundDbA,
        BandValues? absorptionSquareMetres,
        MicrophonePlace place,
        BandValues airPerMetre
    ) =>
        Of(
            bandsDb,
            BackgroundCheck.Of(FrequencyWeighting.LevelDbA(bandsDb), backgroundDbA),
            absorptionSquareMetres,
            place,
            airPerMetre
        );

    /// <summary>The same with what is known of the background; null as above.</summary>
    /// <param name="bandsDb">Levels read in dB.</param>
    /// <param name="background">What the background did.</param>
    /// <param name="absorptionSquareMetres">Absorption area of the room in m², above 0, or null outdoors.</param>
    /// <param name="place">Where it was read.</param>
    /// <param name="airPerMetre">Power attenuation coefficients of the air in 1/m.</param>
    public static ReducedReading? Of(
        BandValues bandsDb,
        BackgroundCheck background,
        BandValues? absorptionSquareMetres,
        MicrophonePlace place,
        BandValues airPerMetre
    )
    {
        if (background.Verdict == BackgroundVerdict.TooHigh)
        {
            return null;
        }

        BandValues alone = bandsDb - background.CorrectionDb;
        RoomCorrection? room = absorptionSquareMetres is null
            ? null
            : RoomCorrection.Of(alone, place.SurfaceSquareMetres, absorptionSquareMetres);
        BandValues free = room is null ? alone : alone - room.CorrectionDb;
        return new(free + place.Path(airPerMetre).LossDb, free, background, room);
    }
}
