using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure.Protection;

/// <summary>High, medium and low frequency attenuation and single number rating of a protector, in dB.</summary>
/// <param name="HighDb">H: noises with little low frequency.</param>
/// <param name="MediumDb">M.</param>
/// <param name="LowDb">L: noises with much low frequency.</param>
/// <param name="SnrDb">SNR.</param>
public readonly record struct ProtectorRatings(double HighDb, double MediumDb, double LowDb, double SnrDb);

/// <summary>
/// Ratings of a protector from the attenuation measured on test subjects, ISO 4869-2:2018: H, M, L and SNR of each
/// subject, then mean less α standard deviations. Inputs are octave bands 63 Hz to 8 kHz in dB.
/// </summary>
public static class ProtectorRating
{
    /// <summary>α for 84 % of wearers.</summary>
    public const double Alpha84 = 1;

    /// <summary>Mean attenuation of the subjects, band by band, in dB.</summary>
    public static BandValues Mean(IReadOnlyCollection<BandValues> subjects) =>
        BandValues.Build(band => subjects.Average(s => s[band]));

    /// <summary>Sample standard deviation of the subjects, band by band, in dB.</summary>
    /// <exception cref="ArgumentException">Fewer than two subjects.</exception>
    public static BandValues StandardDeviation(IReadOnlyCollection<BandValues> subjects) =>
        BandValues.Build(band => Deviation([.. subjects.Select(s => s[band])]));

    /// <summary>Assumed protection value APV_f = m_f − α s_f in dB (ISO 4869-2:2018 cl. 5).</summary>
    public static BandValues AssumedProtection(BandValues meanDb, BandValues deviationDb, double alpha) =>
        meanDb.With(deviationDb, (mean, deviation) => mean - (alpha * deviation));

    /// <summary>Predicted noise level reduction in dB for the reference noise with index 0 to 7 (cl. 7).</summary>
    public static double NoiseReductionDb(BandValues attenuationDb, int noise) =>
        100 - Decibels.Sum((ReferenceNoises.AWeightedDb[noise] - attenuationDb).Skip(1));

    /// <summary>H, M, L and SNR of one attenuation curve (cl. 7 and 8).</summary>
    public static ProtectorRatings Of(BandValues attenuationDb)
    {
        double[] reduction = [.. Enumerable.Range(0, 8).Select(i => NoiseReductionDb(attenuationDb, i))];
        double high = reduction[..4].Average();
        double low = reduction[4..].Average();
        double highSlope = Slope(reduction, 0);
        double lowSlope = Slope(reduction, 4);
        double pink = Decibels.Sum(
            ReferenceNoises.PinkFrom125HertzDb.Select((level, i) => level - attenuationDb[i + 1])
        );
        return new(high - (0.48 * highSlope), low - (0.16 * lowSlope), low + (0.23 * lowSlope), 100 - pink);
    }

    /// <summary>Ratings of a group of subjects: mean less α standard deviations of the subjects' own ratings.</summary>
    /// <exception cref="ArgumentException">Fewer than two subjects.</exception>
    public static ProtectorRatings OfSubjects(IReadOnlyCollection<BandValues> subjects, double alpha)
    {
        ProtectorRatings[] each = [.. subjects.Select(Of)];
        return new(
            Reduced([.. each.Select(r => r.HighDb)], alpha),
            Reduced([.. each.Select(r => r.MediumDb)], alpha),
            Reduced([.. each.Select(r => r.LowDb)], alpha),
            Reduced([.. each.Select(r => r.SnrDb)], alpha)
        );
    }

    private static double Slope(double[] reduction, int first) =>
        Enumerable.Range(first, 4).Sum(i => ReferenceNoises.Weights[i] * reduction[i]);

    private static double Reduced(double[] values, double alpha) => values.Average() - (alpha * Deviation(values));

    private static double Deviation(double[] values)
    {
        if (values.Length < 2)
        {
            throw new ArgumentException("A standard deviation needs two subjects at least.", nameof(values));
        }

        double mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1));
    }
}
