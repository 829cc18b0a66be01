namespace ShowSafety.Core.Supplies;

/// <summary>The fire of a pool of fuel in the open, in still air.</summary>
public static class PoolFire
{
    /// <summary>Share of the heat a smoky hydrocarbon fire radiates, usual value (NUREG-1805 ch. 5; from memory).</summary>
    public const double UsualRadiantFraction = 0.30;

    /// <summary>Share of the heat planned with; this project's choice above the usual value.</summary>
    public const double PlanningRadiantFraction = 0.40;

    /// <summary>
    /// Radiation people in ordinary clothes stand without limit of time: 500 Btu/(h·ft²) = 1.577 kW/m² (API 521).
    /// </summary>
    public const double ContinuousExposureKilowattsPerSquareMetre = 1.577;

    /// <summary>Diameter of the round pool of the same area, D = √(4 A/π).</summary>
    /// <param name="areaSquareMetres">Area A in m², zero or more.</param>
    /// <returns>Diameter in m.</returns>
    public static double DiameterMetres(double areaSquareMetres) => Math.Sqrt(4 * areaSquareMetres / Math.PI);

    /// <summary>
    /// Heat release rate Q = ṁ″ ΔH (1 − e^(−kβ D)) A (NUREG-1805, 2004, eq. 3-4; from memory). Valid for a pool deep
    /// enough to burn steadily; a film on concrete burns slower, so the value is cautious for a spill.
    /// </summary>
    /// <param name="fuel">The fuel.</param>
    /// <param name="areaSquareMetres">Area A in m², zero or more.</param>
    /// <returns>Heat release rate in kW.</returns>
    public static double HeatReleaseKilowatts(PoolFuel fuel, double areaSquareMetres)
    {
        double share = 1 - Math.Exp(-fuel.AbsorptionPerMetre * DiameterMetres(areaSquareMetres));
        return fuel.BurningRateKilogramsPerSquareMetreSecond
            * fuel.HeatOfCombustionMegajoulesPerKilogram
            * 1000
            * share
            * areaSquareMetres;
    }

    /// <summary>
    /// Mean flame height H = 0.235 Q^0.4 − 1.02 D of Heskestad, not under zero (NUREG-1805, 2004, eq. 3-7; from
    /// memory). Q in kW, D and H in m.
    /// </summary>
    /// <param name="heatReleaseKilowatts">Heat release rate Q in kW, zero or more.</param>
    /// <param name="diameterMetres">Diameter D of the pool in m, zero or more.</param>
    /// <returns>Height in m.</returns>
    public static double FlameHeightMetres(double heatReleaseKilowatts, double diameterMetres) =>
        Math.Max(0, (0.235 * Math.Pow(heatReleaseKilowatts, 0.4)) - (1.02 * diameterMetres));

    /// <summary>
    /// Distance from the middle of the fire at which radiation has fallen to q″, from a point source:
    /// R = √(χ Q/(4π q″)) (NUREG-1805, 2004, ch. 5; SFPE handbook; from memory). Held for targets under about
    /// 5 kW/m² that are not beside the flame.
    /// </summary>
    /// <param name="heatReleaseKilowatts">Heat release rate Q in kW, zero or more.</param>
    /// <param name="radiantFraction">Share χ of the heat that is radiated, 0 to 1.</param>
    /// <param name="fluxKilowattsPerSquareMetre">Radiation q″ in kW/m², more than zero.</param>
    /// <returns>Distance in m.</returns>
    public static double RadiationDistanceMetres(
        double heatReleaseKilowatts,
        double radiantFraction,
        double fluxKilowattsPerSquareMetre
    ) => Math.Sqrt(radiantFraction * heatReleaseKilowatts / (4 * Math.PI * fluxKilowattsPerSquareMetre));
}
