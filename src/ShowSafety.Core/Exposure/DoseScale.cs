using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure;

/// <summary>
/// A scale that turns levels and times into a dose: criterion level, criterion time, exchange and threshold. Dose is
/// D = 100 Σ C_n/T_n per cent with the permitted time T = T_c / 2^((L − L_c)/q) (29 CFR 1910.95 App. A; NIOSH 98-126,
/// 1998, table 1-1). For L_EX,8h use <see cref="ExposureLevel"/>.
/// </summary>
/// <param name="CriterionDbA">Level that fills the dose in the criterion time, 60 to 120 dB(A).</param>
/// <param name="ExchangeDb">Level step that halves the permitted time, 3 to 6 dB.</param>
public readonly record struct DoseScale(double CriterionDbA, double ExchangeDb)
{
    /// <summary>The exchange of exact equal energy, 10 lg 2 = 3.0103 dB.</summary>
    public static double EqualEnergyExchangeDb { get; } = 10 * Math.Log10(2);

    /// <summary>Criterion time in hours.</summary>
    public double CriterionHours { get; init; } = ExposureLevel.ReferenceHours;

    /// <summary>Levels below it, in dB(A), are not counted; null counts every level.</summary>
    public double? ThresholdDbA { get; init; }

    /// <summary>Permitted time in hours at a constant level.</summary>
    public double PermittedHours(double levelDbA) =>
        CriterionHours / Math.Pow(2, (levelDbA - CriterionDbA) / ExchangeDb);

    /// <summary>Dose in per cent, 100 = all of it; parts below the threshold count nothing.</summary>
    public double DosePercent(params IEnumerable<LevelTime> parts)
    {
        double dose = 0;
        foreach (LevelTime part in parts)
        {
            dose +=
                part.LevelDbA >= (ThresholdDbA ?? double.NegativeInfinity)
                    ? 100 * part.Hours / PermittedHours(part.LevelDbA)
                    : 0;
        }

        return dose;
    }

    /// <summary>
    /// Time-weighted average level over the criterion time in dB(A) for a dose: L_c + (q/lg 2) lg(D/100), which is
    /// 16.61 lg(D/100) + 90 for the 5 dB exchange and 9.97 lg(D/100) + 85 for the 3 dB exchange.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The dose is not above zero.</exception>
    public double TimeWeightedAverageDbA(double dosePercent) =>
        dosePercent > 0
            ? CriterionDbA + (ExchangeDb / Math.Log10(2) * Math.Log10(dosePercent / 100))
            : throw new ArgumentOutOfRangeException(nameof(dosePercent), dosePercent, "A dose is above zero per cent.");
}
