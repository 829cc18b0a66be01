using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>A class of guards of turning machines (EN ISO 23125 Annex A, by a public quotation).</summary>
/// <param name="Name">Name of the class, A1 to C3.</param>
/// <param name="ProjectileKilograms">Mass of the test projectile in kg (from memory).</param>
/// <param name="SpeedMetresPerSecond">Impact speed in m/s.</param>
public sealed record GuardClass(string Name, double ProjectileKilograms, double SpeedMetresPerSecond)
{
    /// <summary>Energy of the test in J.</summary>
    public double EnergyJoules => FlatFire.Energy(ProjectileKilograms, SpeedMetresPerSecond);

    /// <summary>All classes, from the lightest.</summary>
    public static ValueList<GuardClass> All { get; } =
    [
        new("A1", 0.625, 32),
        new("A2", 0.625, 50),
        new("A3", 0.625, 80),
        new("B1", 1.25, 50),
        new("B2", 1.25, 63),
        new("B3", 1.25, 80),
        new("C1", 2.5, 50),
        new("C2", 2.5, 63),
        new("C3", 2.5, 80),
    ];
}
