using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>A reading that can be used, reduced to its power levels.</summary>
internal sealed record UsableReading(
    SoundMeasurement Reading,
    ReadingLevels Levels,
    BandValues PowerDb,
    ValueList<UncertaintyPart> Uncertainty
);

/// <summary>Reduces the readings of one throttle state and says which can't be used, and why.</summary>
internal sealed class UsableReadings(Engine engine, BandValues airPerMetre, SoundFindings findings)
{
    /// <summary>The readings that can be used.</summary>
    public List<UsableReading> Of(IReadOnlyList<SoundMeasurement> readings, ThrottleState? state)
    {
        double? peakHertz =
            state?.ExhaustSpeedMetresPerSecond is { Value: > 0 } speed
            && engine.Sheet?.NozzleDiameterMetres is { Value: > 0 } nozzle
                ? JetNoise.PeakHertz(speed.Value, nozzle.Value)
                : null;
        SoundMeasurement[] banded = [.. readings.Where(r => r.BandLevelsDb is not null)];
        return [.. readings.Select(r => Use(r, Lender(r, banded), peakHertz)).OfType<UsableReading>()];
    }

    private static BandValues? Lender(SoundMeasurement reading, SoundMeasurement[] banded)
    {
        double Off(SoundMeasurement other) => Math.Abs((other.AngleDegrees ?? 90) - (reading.AngleDegrees ?? 90));
        SoundMeasurement? lender = banded.MinBy(Off);
        return lender is null ? null : ReadingLevels.Of(lender, null, null)?.ShapeDb;
    }

    private UsableReading? Use(SoundMeasurement reading, BandValues? borrowed, double? peakHertz)
    {
        var say = new Lapses(engine, reading, findings);
        ReadingLevels? levels = ReadingLevels.Of(reading, borrowed, peakHertz);
        if (levels is null || !levels.BandsDb.All(IsLevel) || !MeasurementReduction.HasPlace(reading))
        {
            say.CannotTell("sound.measurement-unusable", "SoundMeasurement.LevelDbA");
            return null;
        }

        var background = BackgroundCheck.Of(levels.LevelDbA, reading.BackgroundDbA);
        MicrophonePlace place = MeasurementReduction.PlaceOf(reading);
        if (ReducedReading.Of(levels.BandsDb, background, Absorption(reading), place, airPerMetre) is not { } reduced)
        {
            say.CannotTell(
                "sound.background-too-high",
                "SoundMeasurement.BackgroundDbA",
                SoundFindings.Decibels("excess", background.ExcessDb)
            );
            return null;
        }

        ValueList<UncertaintyPart> gate = ReadingGate.Pass(engine, reading, background, findings);
        return new(
            reading,
            levels,
            reduced.PowerDb,
            [.. gate, .. RoomGate.Pass(reading, reduced.Room, say), .. SpectrumGate.Pass(reading, levels, say)]
        );
    }

    // A reading that is said to be taken outdoors has no room taken off, whatever else is said.
    private BandValues? Absorption(SoundMeasurement reading) =>
        reading is { Outdoors: false, Room: { } room } ? RoomAbsorption.SquareMetres(room, airPerMetre) : null;

    /// <summary>Whether it can be a level: louder than this nothing can be in air.</summary>
    internal static bool IsLevel(double levelDb) => levelDb is > Decibels.SilenceDb and < 200;
}
