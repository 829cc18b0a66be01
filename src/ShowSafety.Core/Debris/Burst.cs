using MathNet.Numerics.RootFinding;

namespace ShowSafety.Core.Debris;

/// <summary>One of n equal sectors a wheel breaks into, at the moment of release.</summary>
/// <param name="Pieces">n, number of equal pieces, 1 or more.</param>
/// <param name="MassKilograms">Mass of one piece in kg.</param>
/// <param name="CentroidRadiusMetres">Radius of its centre of mass before the burst in m.</param>
/// <param name="SpeedMetresPerSecond">Speed of its centre of mass in m/s, square to the radius.</param>
/// <param name="TranslationJoules">Energy of its flight in J.</param>
/// <param name="SpinJoules">Energy of its spin about its own centre of mass in J: it keeps the wheel's turning.</param>
/// <param name="WheelJoules">Energy of the whole wheel before the burst in J.</param>
public readonly record struct SectorPiece(
    int Pieces,
    double MassKilograms,
    double CentroidRadiusMetres,
    double SpeedMetresPerSecond,
    double TranslationJoules,
    double SpinJoules,
    double WheelJoules
)
{
    /// <summary>Share of the wheel's energy that one piece carries as flight, 0 to 1.</summary>
    public double TranslationShare => TranslationJoules / WheelJoules;
}

/// <summary>
/// A wheel that breaks into equal sectors. Exact mechanics: energies of all pieces add up to the wheel's, momenta to
/// zero. Breaking work is left out, which is cautious.
/// </summary>
public static class Burst
{
    /// <summary>Turning speed ω in rad/s from revolutions per minute.</summary>
    public static double AngularSpeed(double revolutionsPerMinute) => revolutionsPerMinute * Math.PI / 30;

    /// <summary>Speed ω r in m/s of a point at a radius, such as a blade's centre of mass or tip.</summary>
    /// <param name="revolutionsPerMinute">Turning speed in rpm, 0 or more.</param>
    /// <param name="radiusMetres">Radius in m, 0 or more.</param>
    public static double SpeedAtRadius(double revolutionsPerMinute, double radiusMetres) =>
        AngularSpeed(revolutionsPerMinute) * radiusMetres;

    /// <summary>
    /// r_c = r̄ sin α / α with α = π/n; v = ω r_c; E_t = (M/n) v² / 2; E_r = I ω² / (2n) − E_t.
    /// </summary>
    /// <param name="wheel">The wheel.</param>
    /// <param name="revolutionsPerMinute">Turning speed at the burst in rpm, above 0.</param>
    /// <param name="pieces">n, 1 or more; with 1 the wheel leaves whole and only spins.</param>
    public static SectorPiece IntoEqualSectors(Wheel wheel, double revolutionsPerMinute, int pieces)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pieces, 1);
        double omega = AngularSpeed(revolutionsPerMinute);
        double half = Math.PI / pieces;
        // sin π is not exactly nothing in floating point; a whole wheel's centre of mass lies on the shaft.
        double centroid = pieces == 1 ? 0 : wheel.MeanRadiusMetres * Math.Sin(half) / half;
        double mass = wheel.MassKilograms / pieces;
        double speed = omega * centroid;
        double whole = wheel.InertiaKilogramSquareMetres * omega * omega / 2;
        double flight = FlatFire.Energy(mass, speed);
        return new(pieces, mass, centroid, speed, flight, (whole / pieces) - flight, whole);
    }

    /// <summary>
    /// The included angle of a sector of a plain disc that carries the largest share of its energy: the share goes
    /// with sin² x / x, largest where tan x = 2 x, x half the angle. Between two and three pieces.
    /// </summary>
    /// <returns>The angle in degrees and the share of the disc's energy, 0 to 1.</returns>
    public static (double IncludedAngleDegrees, double Share) WorstSector()
    {
        double x = Brent.FindRoot(half => Math.Sin(half) - (2 * half * Math.Cos(half)), 1, 1.5, 1e-14, 100);
        double sine = Math.Sin(x);
        return (2 * Measures.Heading.ToDegrees(x), 8 * sine * sine / (9 * Math.PI * x));
    }
}
