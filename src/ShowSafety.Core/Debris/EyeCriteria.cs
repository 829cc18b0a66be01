namespace ShowSafety.Core.Debris;

/// <summary>Injuries of the eye with a published energy per area for a 50 % risk.</summary>
public enum EyeInjury
{
    /// <summary>Corneal abrasion.</summary>
    CornealAbrasion,

    /// <summary>Lens dislocation.</summary>
    LensDislocation,

    /// <summary>Bleeding into the eye.</summary>
    Hyphema,

    /// <summary>Rupture of the globe.</summary>
    GlobeRupture,

    /// <summary>Damage of the retina.</summary>
    RetinalDamage,
}

/// <summary>
/// Energy per area that hurts the eye (J. Trauma 2005, doi 10.1097/01.ta.0000174830.55282.32). A small piece can
/// blind with a few joules: it is judged by these, never by its energy alone.
/// </summary>
public static class EyeCriteria
{
    /// <summary>Energy per area in J/m² with a 50 % risk.</summary>
    public static double HalfRiskEnergyPerArea(EyeInjury injury) =>
        injury switch
        {
            EyeInjury.CornealAbrasion => 1503,
            EyeInjury.LensDislocation => 19_194,
            EyeInjury.Hyphema => 20_188,
            EyeInjury.GlobeRupture => 23_771,
            EyeInjury.RetinalDamage => 30_351,
            _ => throw new ArgumentOutOfRangeException(nameof(injury), injury, "There is no such eye injury here."),
        };

    /// <summary>Energy per area in J/m² of a piece: m v² / (2 A).</summary>
    /// <param name="massKilograms">m in kg, above 0.</param>
    /// <param name="speedMetresPerSecond">v in m/s, 0 or more.</param>
    /// <param name="areaSquareMetres">A in m², above 0.</param>
    public static double EnergyPerArea(double massKilograms, double speedMetresPerSecond, double areaSquareMetres) =>
        FlatFire.Energy(massKilograms, speedMetresPerSecond) / areaSquareMetres;

    /// <summary>Speed in m/s at which a piece with a round face reaches the 50 % risk.</summary>
    /// <param name="injury">Which injury.</param>
    /// <param name="massKilograms">Mass in kg, above 0.</param>
    /// <param name="diameterMetres">Diameter of the face in m, above 0.</param>
    public static double HalfRiskSpeed(EyeInjury injury, double massKilograms, double diameterMetres) =>
        Math.Sqrt(HalfRiskEnergyPerArea(injury) * Math.PI * diameterMetres * diameterMetres / 4 * 2 / massKilograms);
}
