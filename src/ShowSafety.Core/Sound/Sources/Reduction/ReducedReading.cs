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
            new WayBack(place.Path(airPerMetre).LossDb, place.SurfaceSquareMetres)
        );

    /// <summary>Reduces octave band levels at a microphone by a given way back; null as above.</summary>
    /// <param name="bandsDb">Levels read in dB.</param>
    /// <param name="background">What the background did.</param>
    /// <param name="absorptionSquareMetres">Absorption area of the room in m², above 0, or null outdoors.</param>
    /// <param name="way">The way back to the source.</param>
    public static ReducedReading? Of(
        BandValues bandsDb,
        BackgroundCheck background,
        BandValues? absorptionSquareMetres,
        WayBack way
    )
    {
        if (background.Verdict == BackgroundVerdict.TooHigh)
        {
            return null;
        }

        BandValues alone = bandsDb - background.CorrectionDb;
        RoomCorrection? room = absorptionSquareMetres is null
            ? null
            : RoomCorrection.Of(alone, way.SurfaceSquareMetres, absorptionSquareMetres);
        BandValues free = room is null ? alone : alone - room.CorrectionDb;
        return new(free + way.LossDb, free, background, room);
    }
}

/// <summary>The way from a microphone back to the source, in each octave band.</summary>
/// <param name="LossDb">Power level minus level at the microphone in dB.</param>
/// <param name="SurfaceSquareMetres">S in m², the measurement surface this place stands for, without the air's share.</param>
public sealed record WayBack(BandValues LossDb, BandValues SurfaceSquareMetres);
