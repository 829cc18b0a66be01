using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>A named part of the uncertainty of a level.</summary>
/// <param name="Key">Name in lower case with hyphens.</param>
/// <param name="StandardDb">Standard uncertainty in dB, 0 or more.</param>
public sealed record UncertaintyPart(string Key, double StandardDb);

/// <summary>
/// The table of uncertainties: what each lapse of a measurement and each model adds. Meter and position after ISO
/// 9612:2009 annex C, propagation from Table 5 of ISO 9613-2:1996 with its ±3 dB read as twice the standard
/// uncertainty; the others are this project's choice.
/// </summary>
public static class LevelUncertainty
{
    /// <summary>Coverage factor of a one-sided 95 % statement.</summary>
    public const double CoverageFactor = 1.65;

    /// <summary>Meter of class 1 (ISO 9612:2009).</summary>
    public static UncertaintyPart MeterClass1 { get; } = new("meter-class-1", 0.7);

    /// <summary>Meter of class 2 (ISO 9612:2009).</summary>
    public static UncertaintyPart MeterClass2 { get; } = new("meter-class-2", 1.5);

    /// <summary>A telephone or a meter without a class: a choice.</summary>
    public static UncertaintyPart MeterUnclassed { get; } = new("meter-unclassed", 3.0);

    /// <summary>Position of the microphone (ISO 9612:2009).</summary>
    public static UncertaintyPart Position { get; } = new("position", 1.0);

    /// <summary>Nearer than 50 nozzle diameters: the jet is no point there. A choice.</summary>
    public static UncertaintyPart TooNear { get; } = new("too-near", 2.0);

    /// <summary>So far off and so low that the ground's middle region has a share, up to 3 dB. A choice.</summary>
    public static UncertaintyPart FarAndLow { get; } = new("far-and-low", 1.5);

    /// <summary>Nozzle unknown, so nearness can't be judged. A choice.</summary>
    public static UncertaintyPart NearnessUnknown { get; } = new("nearness-unknown", 1.0);

    /// <summary>Wind of 5 m/s or more at the microphone. A choice.</summary>
    public static UncertaintyPart Windy { get; } = new("windy", 1.0);

    /// <summary>Wind not recorded. A choice.</summary>
    public static UncertaintyPart WindUnknown { get; } = new("wind-unknown", 0.5);

    /// <summary>Calibrator not used, or not recorded. A choice.</summary>
    public static UncertaintyPart NotCalibrated { get; } = new("not-calibrated", 1.0);

    /// <summary>Background 3 to 6 dB under the reading. A choice.</summary>
    public static UncertaintyPart BackgroundClose { get; } = new("background-close", 1.0);

    /// <summary>Background not recorded. A choice.</summary>
    public static UncertaintyPart BackgroundUnknown { get; } = new("background-unknown", 0.5);

    /// <summary>Measured in a room or near walls. A choice.</summary>
    public static UncertaintyPart Indoors { get; } = new("indoors", 1.0);

    /// <summary>A room of which more than 4 dB is taken off, past the limit of ISO 3744:2010. A choice.</summary>
    public static UncertaintyPart LiveRoom { get; } = new("live-room", 2.0);

    /// <summary>Levels in dB(A) and dB(C) that can hardly both be true. A choice.</summary>
    public static UncertaintyPart LevelsDoubtful { get; } = new("levels-doubtful", 2.0);

    /// <summary>Level from a maker's sheet. A choice.</summary>
    public static UncertaintyPart FromMaker { get; } = new("from-maker", 1.0);

    /// <summary>Level estimated, not measured. A choice.</summary>
    public static UncertaintyPart Estimated { get; } = new("estimated", 3.0);

    /// <summary>Spectrum assumed. A choice.</summary>
    public static UncertaintyPart SpectrumAssumed { get; } = new("spectrum-assumed", 1.5);

    /// <summary>Declared the same in all directions. A choice.</summary>
    public static UncertaintyPart DeclaredOmnidirectional { get; } = new("declared-omnidirectional", 2.0);

    /// <summary>Directions by a fit: the standard deviation of what the readings have over it.</summary>
    public static UncertaintyPart DirectivityFit(double standardDb) => new("directivity-fit", standardDb);

    /// <summary>Interpolated between throttle states. A choice.</summary>
    public static UncertaintyPart Interpolated { get; } = new("interpolated", 1.5);

    /// <summary>Propagation outdoors (ISO 9613-2:1996 Table 5, ±3 dB read as two standard uncertainties).</summary>
    public static UncertaintyPart Outdoors { get; } = new("model-outdoors", 1.5);

    /// <summary>Diffuse field in a hall or tent. A choice.</summary>
    public static UncertaintyPart Enclosed { get; } = new("model-enclosed", 2.5);

    /// <summary>Expanded uncertainty 1.65 √Σu² in dB.</summary>
    public static double ExpandedDb(IEnumerable<UncertaintyPart> parts) =>
        CoverageFactor * Math.Sqrt(parts.Sum(p => p.StandardDb * p.StandardDb));
}
