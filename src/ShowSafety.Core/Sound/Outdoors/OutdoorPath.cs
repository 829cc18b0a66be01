using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// From sound power to mean square pressure along one path over flat ground, as a factor: 10 lg of it is the level at
/// the receiver minus the power level. The same factors reduce a measurement and predict a level, so that a reading
/// is met again at its own microphone.
/// </summary>
public static class OutdoorPath
{
    /// <summary>Shortest path counted, in metres: nearer than this no point source model holds.</summary>
    public const double ShortestMetres = 0.1;

    /// <summary>Slant distance in metres, not under <see cref="ShortestMetres"/>.</summary>
    public static double SlantMetres(double horizontalMetres, double heightDifferenceMetres) =>
        Math.Max(
            ShortestMetres,
            Math.Sqrt((horizontalMetres * horizontalMetres) + (heightDifferenceMetres * heightDifferenceMetres))
        );

    /// <summary>Free sound over a length in metres with air of power coefficient <paramref name="perMetre"/> (1/m).</summary>
    public static double FreeFactor(double metres, double perMetre) =>
        Math.Exp(-perMetre * metres) / (4 * Math.PI * metres * metres);

    /// <summary>
    /// Hard ground: direct sound and floor image. Equal to A_div + A_atm + A_gr of ISO 9613-2:1996 with A_gr = -D_Ω,
    /// the floor image's own longer way through the air included.
    /// </summary>
    public static double HardGroundFactor(
        double horizontalMetres,
        double sourceHeightMetres,
        double receiverHeightMetres,
        double perMetre
    ) =>
        FreeFactor(SlantMetres(horizontalMetres, sourceHeightMetres - receiverHeightMetres), perMetre)
        + FreeFactor(SlantMetres(horizontalMetres, sourceHeightMetres + receiverHeightMetres), perMetre);
}
