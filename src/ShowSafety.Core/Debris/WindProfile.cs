namespace ShowSafety.Core.Debris;

/// <summary>
/// Wind above open ground: it grows with the seventh root of the height (common practice for open land in neutral
/// air, no source). Pieces fly far above the height at which the wind is stated.
/// </summary>
public static class WindProfile
{
    /// <summary>Height in m at which a plan states the wind: head height.</summary>
    public const double ReferenceHeightMetres = 2;

    /// <summary>Exponent of the profile.</summary>
    public const double Exponent = 1.0 / 7;

    /// <summary>Wind in m/s at a height; below the reference height the stated wind.</summary>
    /// <param name="windMetresPerSecond">Wind at head height in m/s.</param>
    /// <param name="heightMetres">Height above the ground in m.</param>
    public static double At(double windMetresPerSecond, double heightMetres) =>
        heightMetres <= ReferenceHeightMetres
            ? windMetresPerSecond
            : windMetresPerSecond * Math.Pow(heightMetres / ReferenceHeightMetres, Exponent);
}
