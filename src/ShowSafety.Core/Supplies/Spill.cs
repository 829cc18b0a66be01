namespace ShowSafety.Core.Supplies;

/// <summary>How far a spill of liquid fuel spreads on a hard level floor.</summary>
public static class Spill
{
    private const double SmallSpillSquareMetresPerLitre = 1.4;

    private const double LargeSpillSquareMetresPerLitre = 0.36;

    private const double LargestSmallSpillLitres = 95;

    /// <summary>
    /// Area of an unconfined spill: 1.4 m²/L up to 95 L (a film of 0.7 mm), 0.36 m²/L of a larger one but not less
    /// than a spill of 95 L covers (SFPE handbook, liquid fuel fires; from memory). Grass, sand and slopes differ.
    /// </summary>
    /// <param name="litres">Volume in L, zero or more.</param>
    /// <returns>Area in m².</returns>
    public static double AreaSquareMetres(double litres) =>
        litres <= LargestSmallSpillLitres
            ? SmallSpillSquareMetresPerLitre * litres
            : Math.Max(
                SmallSpillSquareMetresPerLitre * LargestSmallSpillLitres,
                LargeSpillSquareMetresPerLitre * litres
            );
}
