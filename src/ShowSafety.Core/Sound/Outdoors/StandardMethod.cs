using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// ISO 9613-2:1996 as printed, for flat ground without obstacles: L = L_W - (20 lg d + 11) - α d/1000 - A_gr, equations
/// (3), (4), (7), (8) and clause 7.3.1. For comparison and conformity cases; plans are calculated with the floor image.
/// </summary>
public static class StandardMethod
{
    /// <summary>A_div = 20 lg(d/1 m) + 11 in dB, for a distance above 0 in metres.</summary>
    public static double DivergenceDb(double metres) => (20 * Math.Log10(metres)) + 11;

    /// <summary>Octave band levels in dB downwind of a point source.</summary>
    /// <param name="powerDb">Power levels in dB.</param>
    /// <param name="groundFactor">G, 0 hard to 1 porous.</param>
    /// <param name="horizontalMetres">Distance along the ground, above 0.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="receiverHeightMetres">Height of the receiver, 0 or more.</param>
    /// <param name="air">The air.</param>
    public static BandValues LevelsDb(
        BandValues powerDb,
        double groundFactor,
        double horizontalMetres,
        double sourceHeightMetres,
        double receiverHeightMetres,
        AirState air
    )
    {
        double slant = OutdoorPath.SlantMetres(horizontalMetres, sourceHeightMetres - receiverHeightMetres);
        BandValues absorbed = AirAbsorption.BandsDecibelsPerKilometre(air).Map(a => a * slant / 1000);
        BandValues ground = GroundEffect.BandsDb(
            groundFactor,
            horizontalMetres,
            sourceHeightMetres,
            receiverHeightMetres
        );
        return powerDb - DivergenceDb(slant) - absorbed - ground;
    }
}
