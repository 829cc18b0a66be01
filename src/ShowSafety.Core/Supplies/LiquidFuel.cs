namespace ShowSafety.Core.Supplies;

/// <summary>Separations and quantities of liquid fuel in containers.</summary>
public static class LiquidFuel
{
    /// <summary>Petrol in L above which an English petroleum authority must be told, where nobody works.</summary>
    public const double PetrolNoticeLitres = 30;

    /// <summary>Petrol in L above which an English petroleum authority must license the store.</summary>
    public const double PetrolLicenceLitres = 275;

    /// <summary>Distance in m taken where the amount is unknown: the one for the largest store a plan can hold.</summary>
    public const double LargestSeparationMetres = 4;

    /// <summary>
    /// Distance of containers in the open from ignition sources: 2 m up to 1,000 L, 4 m above (HSG51, storage of
    /// flammable liquids in containers; from memory). Kerosene under its flash point is counted like petrol: mist,
    /// wicks and soaked grass light below it.
    /// </summary>
    /// <param name="litres">Amount in L, zero or more.</param>
    /// <returns>Distance in m.</returns>
    public static double SeparationMetres(double litres) => litres <= 1000 ? 2 : LargestSeparationMetres;
}
