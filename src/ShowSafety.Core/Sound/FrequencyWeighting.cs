using System.Runtime.Intrinsics;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Frequency weightings A and C after IEC 61672-1:2013, annex E: the closed form of the two pole pairs, evaluated at
/// exact base-10 midbands, from 10 Hz to 20 kHz.
/// </summary>
public static class FrequencyWeighting
{
    // Pole frequencies in hertz, IEC 61672-1:2013 annex E.
    private const double LowPoleHertz = 20.598997;
    private const double SecondPoleHertz = 107.65265;
    private const double ThirdPoleHertz = 737.86223;
    private const double HighPoleHertz = 12194.217;

    private static readonly double AAtOneKilohertz = RawADb(1000);
    private static readonly double CAtOneKilohertz = RawCDb(1000);

    /// <summary>A-weighting of the octave bands in dB.</summary>
    public static BandValues ABandsDb { get; } = BandValues.Build(b => ADb(OctaveBand.MidbandHertz(b)));

    /// <summary>C-weighting of the octave bands in dB.</summary>
    public static BandValues CBandsDb { get; } = BandValues.Build(b => CDb(OctaveBand.MidbandHertz(b)));

    /// <summary>A-weighting as energy factors of the octave bands.</summary>
    internal static double[] AFactors { get; } = [.. ABandsDb.Map(Decibels.ToEnergy)];

    /// <summary>C-weighting as energy factors of the octave bands.</summary>
    internal static double[] CFactors { get; } = [.. CBandsDb.Map(Decibels.ToEnergy)];

    /// <summary>Sum over the bands of power times factor of the way times weighting, all as energies.</summary>
    internal static double WeightedEnergy(
        ReadOnlySpan<double> power,
        ReadOnlySpan<double> factors,
        ReadOnlySpan<double> weighting
    )
    {
        Vector256<double> sum =
            (Vector256.Create(power) * Vector256.Create(factors) * Vector256.Create(weighting))
            + (Vector256.Create(power[4..]) * Vector256.Create(factors[4..]) * Vector256.Create(weighting[4..]));
        return Vector256.Sum(sum);
    }

    /// <summary>
    /// Exact third-octave midband frequency 10^(n/10) in hertz, IEC 61260-1:2014; n = 30 is 1 kHz, n = 10 is 10 Hz.
    /// </summary>
    public static double ExactThirdOctaveHertz(int number) => Math.Pow(10, 0.1 * number);

    /// <summary>A-weighting in dB at a frequency in hertz above 0.</summary>
    public static double ADb(double hertz) => RawADb(hertz) - AAtOneKilohertz;

    /// <summary>C-weighting in dB at a frequency in hertz above 0.</summary>
    public static double CDb(double hertz) => RawCDb(hertz) - CAtOneKilohertz;

    /// <summary>A-weighted level in dB(A) of unweighted octave band levels in dB.</summary>
    public static double LevelDbA(BandValues bandsDb) => Decibels.Sum(bandsDb + ABandsDb);

    /// <summary>C-weighted level in dB(C) of unweighted octave band levels in dB.</summary>
    public static double LevelDbC(BandValues bandsDb) => Decibels.Sum(bandsDb + CBandsDb);

    private static double RawCDb(double hertz)
    {
        double f2 = hertz * hertz;
        double high2 = HighPoleHertz * HighPoleHertz;
        return 20 * Math.Log10(high2 * f2 / ((f2 + (LowPoleHertz * LowPoleHertz)) * (f2 + high2)));
    }

    private static double RawADb(double hertz)
    {
        double f2 = hertz * hertz;
        double middle =
            Math.Sqrt(f2 + (SecondPoleHertz * SecondPoleHertz)) * Math.Sqrt(f2 + (ThirdPoleHertz * ThirdPoleHertz));
        return RawCDb(hertz) + (20 * Math.Log10(f2 / middle));
    }
}
