using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// A flagged estimate of a peak nobody measured: Gaussian noise has peaks 14 to 16 dB above its C-weighted level. A pop
/// at light-up or a surge may be far louder, so it never stands for a measurement.
/// </summary>
internal static class PeakEstimate
{
    /// <summary>Peak of Gaussian noise over its C-weighted level in dB, the upper end of 14 to 16 dB.</summary>
    public const double OverLevelDb = 16;

    /// <summary>The estimate in dB(C) where the source is loudest.</summary>
    /// <param name="power">Power by direction.</param>
    /// <param name="pathDb">Level minus power level in dB in each octave band.</param>
    public static double DbC(DirectionalPower power, BandValues pathDb) =>
        Enumerable.Range(0, 181).Max(angle => FrequencyWeighting.LevelDbC(power.LevelsDb(angle) + pathDb))
        + OverLevelDb;
}
