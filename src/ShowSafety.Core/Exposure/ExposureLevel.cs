using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Exposure;

/// <summary>A stretch of time at one constant level.</summary>
/// <param name="LevelDbA">A-weighted level in dB(A), finite.</param>
/// <param name="Hours">How long, in hours, zero or more.</param>
public readonly record struct LevelTime(double LevelDbA, double Hours);

/// <summary>
/// Equal-energy exposure quantities of ISO 1999:2013 and Directive 2003/10/EC Art. 2: daily and weekly noise exposure
/// level, sound exposure, and peak level from peak pressure.
/// </summary>
public static class ExposureLevel
{
    /// <summary>Reference duration of a working day in hours.</summary>
    public const double ReferenceHours = 8;

    /// <summary>Working days of a nominal week, the divisor of the weekly level.</summary>
    public const double WorkingDays = 5;

    /// <summary>Reference sound pressure in pascal.</summary>
    public const double ReferencePascal = 20e-6;

    /// <summary>
    /// Daily noise exposure level L_EX,8h = 10 lg[ (1/8 h) Σ t_i 10^(L_i/10) ] in dB(A); <see cref="Decibels.SilenceDb"/>
    /// when nothing is heard.
    /// </summary>
    public static double DailyDbA(params IEnumerable<LevelTime> parts) =>
        Decibels.FromEnergy(parts.Sum(part => Checked(part.Hours) * Decibels.ToEnergy(part.LevelDbA)) / ReferenceHours);

    /// <summary>
    /// Weekly noise exposure level 10 lg[ (1/5) Σ 10^(L_EX,8h,i/10) ] in dB(A) over up to seven days (Directive
    /// 2003/10/EC Art. 2(c), ISO 1999:2013).
    /// </summary>
    /// <exception cref="ArgumentException">More than seven days.</exception>
    public static double WeeklyDbA(params IReadOnlyCollection<double> dailyDbA) =>
        dailyDbA.Count <= 7
            ? Decibels.FromEnergy(dailyDbA.Sum(Decibels.ToEnergy) / WorkingDays)
            : throw new ArgumentException(
                $"A week has at most seven days, {dailyDbA.Count} were given.",
                nameof(dailyDbA)
            );

    /// <summary>Sound exposure E = p0² 10^(L/10) T in Pa²h of a level held for a time in hours.</summary>
    public static double SoundExposurePascalSquaredHours(double levelDbA, double hours) =>
        ReferencePascal * ReferencePascal * Decibels.ToEnergy(levelDbA) * Checked(hours);

    /// <summary>The level in dB of a peak sound pressure, 20 lg(p/20 µPa).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not above zero.</exception>
    public static double PeakDb(double peakPascal) =>
        peakPascal > 0
            ? 20 * Math.Log10(peakPascal / ReferencePascal)
            : throw new ArgumentOutOfRangeException(nameof(peakPascal), peakPascal, "A peak pressure is above zero.");

    /// <summary>
    /// Exposure points, 100 for 85 dB(A) over eight hours: 100·10^((L−85)/10), the scale of the HSE ready-reckoners.
    /// </summary>
    public static double Points(double dailyDbA) => 100 * Decibels.ToEnergy(dailyDbA - 85);

    /// <summary>The weekly level in dB(A) for a week's exposure points: 85 + 10 lg(points/500).</summary>
    public static double WeeklyDbAFromPoints(double weekPoints) => 85 + Decibels.FromEnergy(weekPoints / 500);

    private static double Checked(double hours) =>
        hours >= 0
            ? hours
            : throw new ArgumentOutOfRangeException(nameof(hours), hours, "A duration is zero or more hours.");
}
