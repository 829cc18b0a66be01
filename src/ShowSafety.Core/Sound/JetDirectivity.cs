using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Published directivity of gas jets by angle from the exhaust axis (Heller and Franken in Beranek; Bies and Hansen),
/// at every 20 degrees from 0 to 180, decibels interpolated linearly in between. The table is shifted as a whole so
/// that its energy mean over the sphere is 0 dB under that rule.
/// </summary>
public sealed class JetDirectivity
{
    private const double StepDegrees = 20;

    private readonly double[] _printedDb;

    private JetDirectivity(params double[] printedDb)
    {
        _printedDb = printedDb;
        PrintedSphereMeanDb = SphereMean.OfDb(PrintedDb);
        SteepestDbPerDegree = printedDb.Zip(printedDb.Skip(1), (a, b) => Math.Abs(b - a)).Max() / StepDegrees;
    }

    /// <summary>The table for subsonic jets.</summary>
    public static JetDirectivity Subsonic { get; } = new(0, 1, 8, 2, -4, -8, -11, -13, -15, -17);

    /// <summary>The table for choked jets.</summary>
    public static JetDirectivity Choked { get; } = new(-3, 1, 6, 3, -1, -1, -4, -6, -8, -10);

    /// <summary>Energy mean over the sphere of the table as printed, in dB.</summary>
    public double PrintedSphereMeanDb { get; }

    /// <summary>Steepest slope of the index in dB per degree.</summary>
    public double SteepestDbPerDegree { get; }

    /// <summary>Directivity index in dB as printed, angle 0 to 180 degrees.</summary>
    public double PrintedDb(double angleDegrees)
    {
        double steps = Math.Clamp(angleDegrees, 0, 180) / StepDegrees;
        int below = Math.Min((int)steps, _printedDb.Length - 2);
        double share = steps - below;
        return (_printedDb[below] * (1 - share)) + (_printedDb[below + 1] * share);
    }

    /// <summary>Directivity index in dB with a sphere mean of 0 dB, angle 0 to 180 degrees.</summary>
    public double IndexDb(double angleDegrees) => PrintedDb(angleDegrees) - PrintedSphereMeanDb;

    /// <summary>
    /// The table for a jet of a speed and total temperature: choked from a jet Mach number of 1 on, where both are
    /// known; otherwise the subsonic one, which adds more.
    /// </summary>
    public static JetDirectivity For(double? speedMetresPerSecond, double? totalKelvin)
    {
        if (speedMetresPerSecond is not { } speed || totalKelvin is not { } total)
        {
            return Subsonic;
        }

        // Exhaust gas: heat capacity 1148 J/(kg·K), gas constant 287 J/(kg·K), ratio of heat capacities 1.333.
        double statical = total - (speed * speed / (2 * 1148));
        return statical <= 0 || speed * speed >= 1.333 * 287 * statical ? Choked : Subsonic;
    }
}

/// <summary>Energy means over the sphere of what depends on the angle from an axis alone.</summary>
public static class SphereMean
{
    private const int StepsPerDegree = 4;

    /// <summary>
    /// Directions in steps of a quarter of a degree with their shares of the sphere, the sine of the angle scaled so
    /// that all shares together are 1: the midpoint rule for ½∫E sin θ dθ, exact for E = 1.
    /// </summary>
    internal static (double AngleDegrees, double Share)[] Directions { get; } = Steps();

    /// <summary>10 lg of ½∫10^(L/10) sin θ dθ, in dB.</summary>
    public static double OfDb(Func<double, double> levelDb) =>
        Decibels.FromEnergy(Directions.Sum(d => d.Share * Decibels.ToEnergy(levelDb(d.AngleDegrees))));

    private static (double, double)[] Steps()
    {
        double[] angles = [.. Enumerable.Range(0, 180 * StepsPerDegree).Select(i => (i + 0.5) / StepsPerDegree)];
        double whole = angles.Sum(a => Math.Sin(Heading.ToRadians(a)));
        return [.. angles.Select(a => (a, Math.Sin(Heading.ToRadians(a)) / whole))];
    }
}
