using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Outdoors;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// The gate of a measurement: at least 50 nozzle diameters away, calibrated, little wind, a meter of a class, really
/// measured, not far away and low. Where it was taken is the part of <see cref="RoomGate"/>. Each lapse widens the
/// uncertainty and is a finding. Common practice after ISO 3744 and ISO 3746.
/// </summary>
internal static class ReadingGate
{
    private const double NozzleDiameters = 50;
    private const double WindMetresPerSecond = 5;

    /// <summary>Parts of the uncertainty of a reading; says every lapse.</summary>
    public static ValueList<UncertaintyPart> Pass(
        Engine engine,
        SoundMeasurement reading,
        BackgroundCheck background,
        SoundFindings findings
    )
    {
        var say = new Lapses(engine, reading, findings);
        return
        [
            LevelUncertainty.Position,
            .. Meter(reading, say),
            .. Nearness(engine, reading, say),
            .. Height(reading, say),
            .. Weather(reading, say),
            .. Care(reading, say),
            .. Background(background, say),
        ];
    }

    private static IEnumerable<UncertaintyPart> Meter(SoundMeasurement reading, Lapses say)
    {
        switch (reading.MeterClass)
        {
            case MeterClass.Class1:
                yield return LevelUncertainty.MeterClass1;
                break;
            case MeterClass.Class2:
                yield return LevelUncertainty.MeterClass2;
                break;
            default:
                say.About("sound.meter-unclassed", Severity.Act, "SoundMeasurement.MeterClass");
                yield return LevelUncertainty.MeterUnclassed;
                break;
        }
    }

    private static IEnumerable<UncertaintyPart> Nearness(Engine engine, SoundMeasurement reading, Lapses say)
    {
        if (engine.Sheet?.NozzleDiameterMetres is not { Value: > 0 } nozzle)
        {
            say.About("sound.nearness-unknown", Severity.Note, "EngineSheet.NozzleDiameterMetres");
            yield return LevelUncertainty.NearnessUnknown;
        }
        else if (reading.DistanceMetres < NozzleDiameters * nozzle.Value)
        {
            say.About(
                "sound.measured-too-near",
                Severity.Act,
                "SoundMeasurement.DistanceMetres",
                SoundFindings.Metres("distance", reading.DistanceMetres),
                SoundFindings.Metres("wanted", NozzleDiameters * nozzle.Value)
            );
            yield return LevelUncertainty.TooNear;
        }
    }

    // Beyond 30 times both heights together ISO 9613-2 credits the ground in between with up to 3 dB more, which a reading
    // that close to the ground need not have had: the engine would come out too quiet.
    private static IEnumerable<UncertaintyPart> Height(SoundMeasurement reading, Lapses say)
    {
        double heights = reading.SourceHeightMetres + reading.MicrophoneHeightMetres;
        if (reading.DistanceMetres > GroundEffect.RegionHeights * heights)
        {
            say.About(
                "sound.measured-far-and-low",
                Severity.Act,
                "SoundMeasurement.MicrophoneHeightMetres",
                SoundFindings.Metres("distance", reading.DistanceMetres),
                SoundFindings.Metres("microphone", reading.MicrophoneHeightMetres)
            );
            yield return LevelUncertainty.FarAndLow;
        }
    }

    private static IEnumerable<UncertaintyPart> Weather(SoundMeasurement reading, Lapses say)
    {
        if (reading.WindMetresPerSecond is not { } wind)
        {
            say.About("sound.wind-unknown", Severity.Note, "SoundMeasurement.WindMetresPerSecond");
            yield return LevelUncertainty.WindUnknown;
        }
        else if (!(wind < WindMetresPerSecond))
        {
            say.About("sound.measured-in-wind", Severity.Act, "SoundMeasurement.WindMetresPerSecond");
            yield return LevelUncertainty.Windy;
        }
    }

    private static IEnumerable<UncertaintyPart> Care(SoundMeasurement reading, Lapses say)
    {
        if (reading.Calibrated != true)
        {
            say.About("sound.not-calibrated", Severity.Act, "SoundMeasurement.Calibrated");
            yield return LevelUncertainty.NotCalibrated;
        }

        if (reading.Pedigree == Pedigree.Maker)
        {
            say.About("sound.level-from-maker", Severity.Act, "SoundMeasurement.Pedigree");
            yield return LevelUncertainty.FromMaker;
        }
        else if (reading.Pedigree is not (Pedigree.Measured or Pedigree.Example))
        {
            say.About("sound.level-estimated", Severity.Act, "SoundMeasurement.Pedigree");
            yield return LevelUncertainty.Estimated;
        }
    }

    private static IEnumerable<UncertaintyPart> Background(BackgroundCheck background, Lapses say)
    {
        if (background.Verdict == BackgroundVerdict.Unknown)
        {
            say.About("sound.background-unknown", Severity.Note, "SoundMeasurement.BackgroundDbA");
            yield return LevelUncertainty.BackgroundUnknown;
        }
        else if (background.Verdict == BackgroundVerdict.Close)
        {
            say.About(
                "sound.background-close",
                Severity.Act,
                "SoundMeasurement.BackgroundDbA",
                SoundFindings.Decibels("excess", background.ExcessDb),
                SoundFindings.Decibels("correction", background.CorrectionDb)
            );
            yield return LevelUncertainty.BackgroundClose;
        }
    }
}

/// <summary>Says what is wrong with one reading.</summary>
internal sealed class Lapses(Engine engine, SoundMeasurement reading, SoundFindings findings)
{
    /// <summary>Adds a finding that names the reading.</summary>
    public void About(string code, Severity severity, string field, params ReadOnlySpan<FindingArgument> more) =>
        findings.Add(code, severity, engine.Id, field, [FindingArgument.Of("measurement", reading.Id), .. more]);

    /// <summary>Adds a finding "cannot tell" that names the reading.</summary>
    public void CannotTell(string code, string field, params ReadOnlySpan<FindingArgument> more) =>
        findings.Add(
            new Finding(code, Severity.Act)
            {
                ElementId = engine.Id,
                Field = field,
                CannotTell = true,
                Arguments = [FindingArgument.Of("measurement", reading.Id), .. more],
            }
        );
}
