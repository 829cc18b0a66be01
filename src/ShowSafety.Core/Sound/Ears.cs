using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Heights of ears above the ground in metres: planning values of common practice, no source. Which of them is loudest
/// depends on ground and screens (near hard ground the lowest, behind a low screen the highest), so every one is asked and
/// the worst governs.
/// </summary>
public static class Ears
{
    /// <summary>A child standing.</summary>
    public const double ChildMetres = 1.0;

    /// <summary>Somebody sitting, on a chair or in a wheelchair.</summary>
    public const double SeatedMetres = 1.2;

    /// <summary>An adult standing.</summary>
    public const double StandingMetres = 1.55;

    /// <summary>A tall adult standing.</summary>
    public const double TallMetres = 1.8;

    /// <summary>A child on an adult's shoulders: over most crowds, and over a low screen.</summary>
    public const double ChildOnShouldersMetres = 2.2;

    /// <summary>Ears of adults, the lowest first.</summary>
    public static ValueList<double> OfAdults { get; } = [SeatedMetres, StandingMetres, TallMetres];

    /// <summary>Ears of children, the lowest first.</summary>
    public static ValueList<double> OfChildren { get; } = [ChildMetres, ChildOnShouldersMetres];

    /// <summary>Ears of everybody, the lowest first.</summary>
    public static ValueList<double> OfEverybody { get; } = [.. OfAdults.Concat(OfChildren).Order()];

    /// <summary>From the lowest ear to the highest.</summary>
    public static EarRange Range { get; } = new(OfEverybody[0], OfEverybody[^1]);
}
