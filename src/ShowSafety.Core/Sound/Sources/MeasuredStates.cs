using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Outdoors;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>Makes the sound of a throttle state from the readings taken in it.</summary>
internal sealed class MeasuredStates(Engine engine, BandValues airPerMetre, SoundFindings findings)
{
    /// <summary>The sound of a state from its readings; of unknown power when none can be used.</summary>
    public StateSound Of(string stateId, IReadOnlyList<SoundMeasurement> readings, ThrottleState? state)
    {
        List<UsableReading> usable = new UsableReadings(engine, airPerMetre, findings).Of(readings, state);
        StateSound sound = usable.Count == 0 ? new(stateId, StateOrigin.CannotTell) : Combined(stateId, usable, state);
        return WithPeak(sound, readings);
    }

    private StateSound Combined(string stateId, List<UsableReading> usable, ThrottleState? state)
    {
        JetDirectivity table = JetDirectivity.For(
            state?.ExhaustSpeedMetresPerSecond?.Value,
            state?.ExhaustTotalTemperatureCelsius?.Value + 273.15
        );
        bool uniform = engine.Sheet?.Directivity == Directivity.DeclaredOmnidirectional;
        StateDirectivity directivity = uniform ? StateDirectivity.Uniform(usable) : StateDirectivity.Of(usable, table);
        BandValues sphere = directivity.Power.SphereMeanDb();
        UsableReading widest = usable.MaxBy(u => LevelUncertainty.ExpandedDb(u.Uncertainty))!;
        double jetDb = directivity.Fit is { Holds: true }
            ? Decibels.Sum(sphere)
            : JetPowerCheck.WholePowerDb(usable, uniform ? null : table);
        JetPowerCheck.Judge(engine, state, jetDb, findings);
        return new(stateId, StateOrigin.Measured)
        {
            Power = directivity.Power,
            SphereMeanDb = sphere,
            TableAddsDb = directivity.AddsDb,
            Fit = directivity.Fit,
            Uncertainty = [.. widest.Uncertainty, .. directivity.Uncertainty],
            Spectrum = usable.Max(u => u.Levels.Origin),
            MeasurementIds = [.. usable.Select(u => u.Reading.Id)],
            Pedigree = Weakest(usable.Select(u => u.Reading.Pedigree)),
        };
    }

    private StateSound WithPeak(StateSound sound, IReadOnlyList<SoundMeasurement> readings)
    {
        SoundMeasurement? loudest = readings
            .Where(r => r.PeakDbC is { } peak && UsableReadings.IsLevel(peak) && MeasurementReduction.HasPlace(r))
            .MaxBy(PeakSourceDb);
        return loudest is null
            ? sound
            : sound with
            {
                PeakSourceDbC = PeakSourceDb(loudest),
                PeakUncertainty = PeakUncertainty(loudest),
            };
    }

    // Said already with the level. No room is taken off a peak: its first arrival is no diffuse field.
    private ValueList<UncertaintyPart> PeakUncertainty(SoundMeasurement reading)
    {
        var unsaid = new SoundFindings();
        var background = new BackgroundCheck(BackgroundVerdict.Clear, 0, 0);
        return
        [
            .. ReadingGate.Pass(engine, reading, background, unsaid),
            .. RoomGate.Pass(reading, null, new Lapses(engine, reading, unsaid)),
        ];
    }

    // A peak is taken without the air's absorption and, over porous ground, without a floor image: the high side.
    private static double PeakSourceDb(SoundMeasurement reading)
    {
        double slant = OutdoorPath.SlantMetres(
            reading.DistanceMetres,
            reading.SourceHeightMetres - reading.MicrophoneHeightMetres
        );
        double factor = MeasurementReduction.IsHard(reading.Ground)
            ? OutdoorPath.HardGroundFactor(
                reading.DistanceMetres,
                reading.SourceHeightMetres,
                reading.MicrophoneHeightMetres,
                0
            )
            : OutdoorPath.FreeFactor(slant, 0);
        return reading.PeakDbC!.Value - Decibels.FromEnergy(factor);
    }

    private static Pedigree Weakest(IEnumerable<Pedigree> pedigrees)
    {
        Pedigree[] all = [.. pedigrees];
        return all.Contains(Pedigree.Example) ? Pedigree.Example : all.Max();
    }
}
