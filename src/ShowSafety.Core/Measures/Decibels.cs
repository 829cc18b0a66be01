namespace ShowSafety.Core.Measures;

/// <summary>Sums and ratios of levels. Energies are relative to the reference of the level they came from.</summary>
public static class Decibels
{
    /// <summary>
    /// The level, in dB, that stands for "no sound at all" where a number is needed: far under any background, finite,
    /// so that sums and files never meet an infinity.
    /// </summary>
    public const double SilenceDb = -200;

    /// <summary>10^(L/10).</summary>
    public static double ToEnergy(double levelDb) => Math.Pow(10, levelDb / 10);

    /// <summary>10 lg E, not under <see cref="SilenceDb"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The energy is negative or not a number.</exception>
    public static double FromEnergy(double energy)
    {
        if (!(energy >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(energy), energy, "An energy is zero or more.");
        }

        return Math.Max(SilenceDb, 10 * Math.Log10(Math.Max(energy, double.Epsilon)));
    }

    /// <summary>Energy sum of levels in dB: 10 lg Σ 10^(L/10). An empty list is silence.</summary>
    public static double Sum(params IEnumerable<double> levelsDb) => FromEnergy(levelsDb.Sum(ToEnergy));

    /// <summary>Energy mean of levels in dB.</summary>
    /// <exception cref="InvalidOperationException">There is no level to average.</exception>
    public static double Mean(params IReadOnlyCollection<double> levelsDb) => FromEnergy(levelsDb.Average(ToEnergy));

    /// <summary>Band by band energy sum of two spectra in dB.</summary>
    public static BandValues Sum(BandValues leftDb, BandValues rightDb) => leftDb.With(rightDb, (a, b) => Sum(a, b));
}
