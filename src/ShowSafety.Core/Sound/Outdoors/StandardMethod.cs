using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// ISO 9613-2:1996 as printed, for flat ground: L = L_W - (20 lg d + 11) - α d/1000 - A_gr - A_bar, equations (3), (4),
/// (7), (8) and clauses 7.3.1 and 7.4, A_bar in the form of ISO/TR 17534-3:2015. For comparison and conformity cases; plans are calculated with the floor image.
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

    /// <summary>Octave band levels in dB where the ground changes along the path and obstacles may stand in it.</summary>
    /// <param name="powerDb">Power levels in dB.</param>
    /// <param name="source">The source.</param>
    /// <param name="receiver">The receiver.</param>
    /// <param name="ground">G of the three regions.</param>
    /// <param name="obstacles">Obstacles of the site.</param>
    /// <param name="air">The air.</param>
    public static BandValues LevelsDb(
        BandValues powerDb,
        RaisedPoint source,
        RaisedPoint receiver,
        GroundFactors ground,
        ValueList<Obstacle> obstacles,
        AirState air
    )
    {
        double flat = source.Place.DistanceMetres(receiver.Place);
        double slant = OutdoorPath.SlantMetres(flat, source.HeightMetres - receiver.HeightMetres);
        BandValues absorbed = AirAbsorption.BandsDecibelsPerKilometre(air).Map(a => a * slant / 1000);
        BandValues groundDb = BandValues.Build(band =>
            GroundEffect.AttenuationDb(band, ground, flat, source.HeightMetres, receiver.HeightMetres)
        );
        BandValues screens = ScreeningLoss.BandsDb(source, receiver, obstacles, groundDb) ?? BandValues.Zero;
        return powerDb - DivergenceDb(slant) - absorbed - groundDb - screens;
    }
}
