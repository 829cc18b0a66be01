using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Outdoors;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>A reading that can be used, reduced to its power levels.</summary>
internal sealed record UsableReading(
    SoundMeasurement Reading,
    ReadingLevels Levels,
    BandValues PowerDb,
    ValueList<UncertaintyPart> Uncertainty
);

/// <summary>Makes the sound of a throttle state from the readings taken in it.</summary>
internal sealed class MeasuredStates(Engine engine, BandValues airPerMetre, SoundFindings findings)
{
    /// <summary>The sound of a state from its readings; of unknown power when none can be used.</summary>
    public StateSound Of(string stateId, IReadOnlyList<SoundMeasurement> readings, ThrottleState? state)
    {
        List<UsableReading> usable = Usable(readings, state);
        StateSound sound = usable.Count == 0 ? new(stateId, StateOrigin.CannotTell) : Combined(stateId, usable, state);
        return WithPeak(sound, readings);
    }

    private List<UsableReading> Usable(IReadOnlyList<SoundMeasurement> readings, ThrottleState? state)
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

        BackgroundCheck background = BackgroundCheck.Of(levels.LevelDbA, reading.BackgroundDbA);
        if (background.Verdict == BackgroundVerdict.TooHigh)
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
            MeasurementReduction.PowerDb(reading, levels.BandsDb - background.CorrectionDb, airPerMetre),
            [.. gate, .. Spectrum(levels, say)]
        );
    }

    private static IEnumerable<UncertaintyPart> Spectrum(ReadingLevels levels, Lapses say)
    {
        if (Math.Abs(levels.BandsShortDb) > ReadingLevels.DisagreementDb)
        {
            say.About(
                "sound.bands-and-level-disagree",
                Severity.Act,
                "SoundMeasurement.BandLevelsDb",
                SoundFindings.Decibels("difference", levels.BandsShortDb)
            );
        }

        if (levels.Origin == SpectrumOrigin.Measured)
        {
            yield break;
        }

        string code = levels.Origin switch
        {
            SpectrumOrigin.Borrowed => "sound.spectrum-borrowed",
            SpectrumOrigin.JetShape => "sound.spectrum-jet-shape",
            _ => "sound.spectrum-flat",
        };
        say.About(code, Severity.Note, "SoundMeasurement.BandLevelsDb");
        yield return LevelUncertainty.SpectrumAssumed;
    }

    private StateSound Combined(string stateId, List<UsableReading> usable, ThrottleState? state)
    {
        JetDirectivity table = JetDirectivity.For(
            state?.ExhaustSpeedMetresPerSecond?.Value,
            state?.ExhaustTotalTemperatureCelsius?.Value + 273.15
        );
        bool uniform = engine.Sheet?.Directivity == Directivity.DeclaredOmnidirectional;
        BandValues largest = usable.Select(u => u.PowerDb).Aggregate((a, b) => a.With(b, Math.Max));
        DirectionalPower power = uniform ? new UniformPower(largest) : Envelope(usable, table);
        BandValues sphere = power.SphereMeanDb();
        double plain = Decibels.Mean([.. usable.Select(u => FrequencyWeighting.LevelDbA(u.PowerDb))]);
        UsableReading widest = usable.MaxBy(u => LevelUncertainty.ExpandedDb(u.Uncertainty))!;
        ValueList<UncertaintyPart> declared = uniform ? [LevelUncertainty.DeclaredOmnidirectional] : [];
        JetPowerCheck.Judge(engine, state, usable, uniform ? null : table, findings);
        return new(stateId, StateOrigin.Measured)
        {
            Power = power,
            SphereMeanDb = sphere,
            TableAddsDb = Math.Max(0, FrequencyWeighting.LevelDbA(sphere) - plain),
            Uncertainty = [.. widest.Uncertainty, .. declared],
            Spectrum = usable.Max(u => u.Levels.Origin),
            MeasurementIds = [.. usable.Select(u => u.Reading.Id)],
            Pedigree = Weakest(usable.Select(u => u.Reading.Pedigree)),
        };
    }

    private static ReadingEnvelope Envelope(List<UsableReading> usable, JetDirectivity table)
    {
        DirectedReading[] directed =
        [
            .. usable
                .Select(u => (Angle: MeasurementReduction.SlantAngleDegrees(u.Reading), u.PowerDb))
                .Where(u => u.Angle is not null)
                .Select(u => new DirectedReading(u.Angle!.Value, u.PowerDb)),
        ];
        BandValues? undirected = usable
            .Where(u => MeasurementReduction.SlantAngleDegrees(u.Reading) is null)
            .Select(u => u.PowerDb)
            .Aggregate((BandValues?)null, (a, b) => a is null ? b : a.With(b, Math.Max));

        // A reading without a direction, alone, may have been taken where the engine is quietest: ahead of the intake.
        return directed.Length > 0
            ? new(directed, table, undirected)
            : new([new DirectedReading(180, undirected!)], table, null);
    }

    private StateSound WithPeak(StateSound sound, IReadOnlyList<SoundMeasurement> readings)
    {
        SoundMeasurement? loudest = readings
            .Where(r => r.PeakDbC is { } peak && IsLevel(peak) && MeasurementReduction.HasPlace(r))
            .MaxBy(PeakSourceDb);
        return loudest is null
            ? sound
            : sound with
            {
                PeakSourceDbC = PeakSourceDb(loudest),
                PeakUncertainty = ReadingGate.Pass(
                    engine,
                    loudest,
                    new BackgroundCheck(BackgroundVerdict.Clear, 0, 0),
                    new SoundFindings()
                ),
            };
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

    // Louder than this nothing can be in air.
    private static bool IsLevel(double levelDb) => levelDb is > Decibels.SilenceDb and < 200;

    private static Pedigree Weakest(IEnumerable<Pedigree> pedigrees)
    {
        Pedigree[] all = [.. pedigrees];
        return all.Contains(Pedigree.Example) ? Pedigree.Example : all.Max();
    }
}
