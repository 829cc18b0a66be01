using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>One sound level reading of a running engine.</summary>
public sealed record SoundMeasurement
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Id of the throttle state.</summary>
    [Field("id of the throttle state", Required = true, MaxLength = 40)]
    public string StateId { get; init; } = "";

    /// <summary>Where the numbers of this reading come from.</summary>
    [Field("where the numbers of this reading come from", Required = true)]
    public Pedigree Pedigree { get; init; } = Pedigree.Estimated;

    /// <summary>A-weighted equivalent level.</summary>
    [Field("A-weighted equivalent level", Unit = Unit.DecibelA, Min = 30, Max = 180, FindOut = FindOut.SoundMeter)]
    public double? LevelDbA { get; init; }

    /// <summary>C-weighted equivalent level.</summary>
    [Field("C-weighted equivalent level", Unit = Unit.DecibelC, Min = 30, Max = 180)]
    public double? LevelDbC { get; init; }

    /// <summary>C-weighted peak level.</summary>
    [Field("C-weighted peak level", Unit = Unit.DecibelC, Min = 40, Max = 195, FindOut = FindOut.SoundMeter)]
    public double? PeakDbC { get; init; }

    /// <summary>Unweighted octave band levels.</summary>
    [Field("unweighted octave band levels, 63 Hz to 8 kHz", Unit = Unit.Decibel, Min = 0, Max = 180)]
    public BandValues? BandLevelsDb { get; init; }

    /// <summary>Horizontal distance from the nozzle to the microphone.</summary>
    [Field(
        "horizontal distance from the nozzle to the microphone",
        Required = true,
        Unit = Unit.Metre,
        Min = 0.2,
        Max = 200
    )]
    public double DistanceMetres { get; init; }

    /// <summary>Angle from the exhaust axis, 0 behind the engine.</summary>
    [Field(
        "angle from the exhaust axis, 0 in the jet's direction, 180 ahead of the intake",
        Unit = Unit.Degree,
        Min = 0,
        Max = 180,
        FindOut = FindOut.Tape
    )]
    public double? AngleDegrees { get; init; }

    /// <summary>Height of the microphone above the ground.</summary>
    [Field("height of the microphone above the ground", Required = true, Unit = Unit.Metre, Min = 0, Max = 20)]
    public double MicrophoneHeightMetres { get; init; }

    /// <summary>Height of the shaft above the ground while measuring.</summary>
    [Field(
        "height of the shaft above the ground while measuring",
        Required = true,
        Unit = Unit.Metre,
        Min = 0.05,
        Max = 10
    )]
    public double SourceHeightMetres { get; init; }

    /// <summary>Ground between engine and microphone.</summary>
    [Field("ground between engine and microphone", Required = true)]
    public GroundKind Ground { get; init; }

    /// <summary>Whether it was taken outdoors, clear of walls.</summary>
    [Field("whether it was taken outdoors, at least ten metres from any wall", Required = true)]
    public bool Outdoors { get; init; }

    /// <summary>The room it was taken in.</summary>
    [Field("the room it was taken in; without it nothing is taken off a reading taken indoors")]
    public MeasurementRoom? Room { get; init; }

    /// <summary>A-weighted level with the engine stopped.</summary>
    [Field("A-weighted level at the microphone with the engine stopped", Unit = Unit.DecibelA, Min = 10, Max = 150)]
    public double? BackgroundDbA { get; init; }

    /// <summary>Class of the meter after IEC 61672-1.</summary>
    [Field("class of the meter after IEC 61672-1", Required = true)]
    public MeterClass MeterClass { get; init; }

    /// <summary>Whether the calibrator was used before and after.</summary>
    [Field("whether a calibrator was used before and after")]
    public bool? Calibrated { get; init; }

    /// <summary>Wind at the microphone.</summary>
    [Field("wind at the microphone", Unit = Unit.MetrePerSecond, Min = 0, Max = 30)]
    public double? WindMetresPerSecond { get; init; }

    /// <summary>Who measured.</summary>
    [Field("who measured", MaxLength = 120)]
    public string? By { get; init; }

    /// <summary>When.</summary>
    [Field("date of the measurement")]
    public DateOnly? On { get; init; }
}

/// <summary>
/// The room a reading was taken in: volume and reverberation time, or surface and mean absorption; where both are stated
/// what takes less off the reading counts.
/// </summary>
public sealed record MeasurementRoom
{
    /// <summary>Volume.</summary>
    [Field("volume of the room", Unit = Unit.CubicMetre, Min = 20, Max = 1000000)]
    public double? VolumeCubicMetres { get; init; }

    /// <summary>Reverberation time: how long sound takes to fall by 60 dB.</summary>
    [Field("reverberation time, in which sound falls by 60 dB", Unit = Unit.Second, Min = 0.1, Max = 20)]
    public double? ReverberationSeconds { get; init; }

    /// <summary>Area of floor, walls and ceiling together.</summary>
    [Field("area of floor, walls and ceiling together", Unit = Unit.SquareMetre, Min = 40, Max = 200000)]
    public double? SurfaceSquareMetres { get; init; }

    /// <summary>Mean absorption coefficient of that area.</summary>
    [Field("mean absorption coefficient of floor, walls and ceiling", Min = 0.01, Max = 1)]
    public double? MeanAbsorption { get; init; }
}

/// <summary>Class of a sound level meter.</summary>
public enum MeterClass
{
    /// <summary>Class 1 of IEC 61672-1.</summary>
    Class1,

    /// <summary>Class 2 of IEC 61672-1.</summary>
    Class2,

    /// <summary>Anything else: a telephone, a meter without a class.</summary>
    Unclassed,
}
