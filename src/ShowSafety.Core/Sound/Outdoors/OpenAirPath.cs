using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// One way of sound in the open air with all its terms, so that a level can be told apart: which way brings it, and what
/// spreading, air, ground and screens take off.
/// </summary>
/// <param name="WallId">Id of the structure that throws it back, or null for the straight way.</param>
/// <param name="AngleDegrees">Angle from the exhaust axis, mirrored with the source where a wall throws it back, 0 to 180.</param>
/// <param name="Flat">Spreading, air and ground.</param>
/// <param name="ScreenDb">A_bar in dB, 0 or more.</param>
/// <param name="ReflectedShare">Share of the energy the wall throws back, 0 to 1; 1 on the straight way.</param>
public sealed record OpenAirPath(
    string? WallId,
    double AngleDegrees,
    FlatPath Flat,
    BandValues ScreenDb,
    BandValues ReflectedShare
)
{
    /// <summary>Mean square pressure at the receiver per sound power in each band: 10 lg of it is level minus power level.</summary>
    public BandValues Factors => BandValues.Build(Factor);

    /// <summary>Octave band levels in dB this way brings from power levels in dB in its direction.</summary>
    public BandValues LevelsDb(BandValues powerDb) =>
        BandValues.Build(band => Decibels.FromEnergy(Decibels.ToEnergy(powerDb[band]) * Factor(band)));

    /// <summary>Octave band levels in dB of several ways together; silence for none.</summary>
    /// <param name="paths">The ways.</param>
    /// <param name="powerDb">Power levels in dB by angle from the exhaust axis in degrees.</param>
    public static BandValues SumDb(IEnumerable<OpenAirPath> paths, Func<double, BandValues> powerDb) =>
        paths
            .Select(path => path.LevelsDb(powerDb(path.AngleDegrees)))
            .Aggregate(BandValues.Uniform(Decibels.SilenceDb), Decibels.Sum);

    private double Factor(int band) => ReflectedShare[band] * Decibels.ToEnergy(-(Flat.LossDb[band] + ScreenDb[band]));
}
