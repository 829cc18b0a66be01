using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>Where the spectrum of a reading comes from.</summary>
public enum SpectrumOrigin
{
    /// <summary>Octave bands were measured.</summary>
    Measured,

    /// <summary>The shape of another reading of the same throttle state, scaled to the dB(A) read.</summary>
    Borrowed,

    /// <summary>The default jet shape about its peak, scaled to the dB(A) read.</summary>
    JetShape,

    /// <summary>Equal octave levels, scaled to the dB(A) read.</summary>
    Flat,
}

/// <summary>Octave band levels of a reading at its microphone.</summary>
/// <param name="BandsDb">Unweighted octave band levels in dB.</param>
/// <param name="LevelDbA">A-weighted level in dB(A): as read, or of the bands where it was not.</param>
/// <param name="Origin">Where the spectrum comes from.</param>
/// <param name="BandsShortDb">
/// dB(A) read minus the A-sum of the bands, where both were read; otherwise 0. Above 0 the bands were raised by it:
/// something loud may lie above the 8 kHz band.
/// </param>
public sealed record ReadingLevels(BandValues BandsDb, double LevelDbA, SpectrumOrigin Origin, double BandsShortDb)
{
    /// <summary>What a dB(C) level read beside the dB(A) level did to an assumed spectrum, or null.</summary>
    public LowBands? Low { get; init; }

    /// <summary>The difference from which bands and level are said to disagree, in dB.</summary>
    public const double DisagreementDb = 0.5;

    /// <summary>Levels of a reading, or null when it has neither bands nor a dB(A) level.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="borrowedShapeDb">Shape of another reading scaled to 0 dB(A), or null.</param>
    /// <param name="jetPeakHertz">Peak of the default jet shape, or null where it can't be placed.</param>
    public static ReadingLevels? Of(SoundMeasurement reading, BandValues? borrowedShapeDb, double? jetPeakHertz)
    {
        double? level = reading.LevelDbA is { } stated && double.IsFinite(stated) ? stated : null;
        if (reading.BandLevelsDb is { } bands)
        {
            double sum = FrequencyWeighting.LevelDbA(bands);
            double missing = level - sum ?? 0;
            double raise = Math.Max(0, missing);
            return new(bands + raise, sum + raise, SpectrumOrigin.Measured, missing);
        }

        if (level is not { } levelDbA)
        {
            return null;
        }

        (BandValues shape, SpectrumOrigin origin) = (borrowedShapeDb, jetPeakHertz) switch
        {
            ({ } borrowed, _) => (borrowed, SpectrumOrigin.Borrowed),
            (null, { } peak) => (JetNoise.ShapeDb(peak), SpectrumOrigin.JetShape),
            _ => (JetNoise.FlatShapeDb, SpectrumOrigin.Flat),
        };
        LowBands? low = reading.LevelDbC is { } c && double.IsFinite(c) ? LowBands.Of(shape + levelDbA, c) : null;
        return new(low?.BandsDb ?? (shape + levelDbA), levelDbA, origin, 0) { Low = low };
    }

    /// <summary>The shape of these bands scaled to 0 dB(A).</summary>
    public BandValues ShapeDb => BandsDb - LevelDbA;
}
