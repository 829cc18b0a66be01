namespace ShowSafety.Core.Sound.Sources.Reduction;

/// <summary>How a measured power level stands to the textbook estimate of the jet.</summary>
public enum JetVerdict
{
    /// <summary>Within the spread of the estimate.</summary>
    Consistent,

    /// <summary>Quieter than the jet alone can be: check distance, weighting and unit.</summary>
    TooQuiet,

    /// <summary>Louder than the jet can be: check distance, weighting and unit.</summary>
    TooLoud,
}

/// <summary>A measured power level against <see cref="JetNoise.HotJetPowerDb"/>.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="ExcessDb">Measured minus estimate in dB.</param>
public readonly record struct JetConsistency(JetVerdict Verdict, double ExcessDb)
{
    /// <summary>Judges a power level.</summary>
    /// <param name="measuredDb">Power level of the whole source in dB, its mean over all directions.</param>
    /// <param name="estimateDb">Estimate for the jet alone in dB.</param>
    /// <param name="isFastestJet">
    /// Whether no other state has a faster jet. At part throttle compressor and combustion are louder than the jet, so only
    /// the fastest jet can be called too loud.
    /// </param>
    public static JetConsistency Of(double measuredDb, double estimateDb, bool isFastestJet)
    {
        double excess = measuredDb - estimateDb;
        return new(
            excess < -JetNoise.EstimateSpreadDb ? JetVerdict.TooQuiet
                : excess > JetNoise.EstimateSpreadDb && isFastestJet ? JetVerdict.TooLoud
                : JetVerdict.Consistent,
            excess
        );
    }
}
