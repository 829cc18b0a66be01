namespace ShowSafety.Core.Sound.Sources;

/// <summary>What the background does to a reading.</summary>
public enum BackgroundVerdict
{
    /// <summary>Not recorded: the reading is used as it is, which can only be too loud.</summary>
    Unknown,

    /// <summary>15 dB or more below: nothing is corrected.</summary>
    Clear,

    /// <summary>6 to 15 dB below: corrected by K1.</summary>
    Corrected,

    /// <summary>3 to 6 dB below: corrected by no more than K1 at 6 dB, and said.</summary>
    Close,

    /// <summary>Less than 3 dB below: the reading is not used.</summary>
    TooHigh,
}

/// <summary>The background correction K1 of a reading, after ISO 3744:2010 and ISO 3746:2010.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="ExcessDb">Reading minus background in dB, 0 where the background is unknown.</param>
/// <param name="CorrectionDb">What is taken off the reading in dB, 0 or more.</param>
public readonly record struct BackgroundCheck(BackgroundVerdict Verdict, double ExcessDb, double CorrectionDb)
{
    /// <summary>Judges a reading against its background, both in dB(A).</summary>
    public static BackgroundCheck Of(double levelDbA, double? backgroundDbA)
    {
        if (backgroundDbA is not { } background || !double.IsFinite(background))
        {
            return new(BackgroundVerdict.Unknown, 0, 0);
        }

        double excess = levelDbA - background;
        return excess switch
        {
            >= 15 => new(BackgroundVerdict.Clear, excess, 0),
            >= 6 => new(BackgroundVerdict.Corrected, excess, SoundPower.BackgroundCorrectionDb(excess)),
            >= 3 => new(BackgroundVerdict.Close, excess, SoundPower.BackgroundCorrectionDb(6)),
            _ => new(BackgroundVerdict.TooHigh, excess, 0),
        };
    }
}
