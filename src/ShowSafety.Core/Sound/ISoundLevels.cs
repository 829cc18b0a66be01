using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Writes a bound of the planning levels (best estimate + U) of several combinations of running engines over a patch of
/// ground.
/// </summary>
/// <param name="patch">The patch.</param>
/// <param name="ears">Heights of the ears above ground.</param>
/// <param name="bound">Whether no place has more or no place has less.</param>
/// <param name="dbA">Levels in dB(A) by combination.</param>
/// <param name="dbC">Levels in dB(C) by combination; empty where nobody asks for them.</param>
public delegate void LevelsOverPatch(in Patch patch, EarRange ears, Bound bound, Span<double> dbA, Span<double> dbC);

/// <summary>What the other rooms ask of the sound field of a plan.</summary>
public interface ISoundLevels
{
    /// <summary>
    /// The level while each engine named runs in the throttle state named; engines not named are stopped. Null when
    /// any of them can't be told (no usable measurement for its state): missing sound is never silence.
    /// </summary>
    /// <param name="place">Place on the plan.</param>
    /// <param name="earHeightMetres">Height of the ear above ground, 0 to 10 m.</param>
    /// <param name="stateByEngine">Throttle state id by engine id.</param>
    PointLevel? LevelAt(PlanPoint place, double earHeightMetres, IReadOnlyDictionary<string, string> stateByEngine);

    /// <summary>
    /// Prepares the planning levels of several combinations over patches of ground; null when any of them can't be told.
    /// </summary>
    /// <param name="combinations">Throttle state id by engine id, for each combination.</param>
    LevelsOverPatch? PlanningLevels(IReadOnlyList<IReadOnlyDictionary<string, string>> combinations);

    /// <summary>
    /// Prepares the highest planning value of the C-weighted peak in dB(C) over patches of ground and a range of
    /// ears; null where <see cref="PeakDbCAt"/> is.
    /// </summary>
    /// <param name="stateByEngine">Throttle state id by engine id.</param>
    Func<Patch, EarRange, double>? HighestPeakDbC(IReadOnlyDictionary<string, string> stateByEngine);

    /// <summary>
    /// The C-weighted peak at a place in dB(C), with the planning value; null when no peak was measured for a state
    /// asked for: cannot tell.
    /// </summary>
    Quantity? PeakDbCAt(PlanPoint place, double earHeightMetres, IReadOnlyDictionary<string, string> stateByEngine);

    /// <summary>
    /// The area, circumscribed, where a value may be at or above a threshold. Valid, possibly empty, not clipped to the
    /// site.
    /// </summary>
    /// <param name="engineIds">The engines the value comes from.</param>
    /// <param name="highest">
    /// A value that no place of a patch exceeds, in the unit of the threshold; asked from several threads at once.
    /// </param>
    /// <param name="threshold">The threshold.</param>
    Geometry AreaAtOrAbove(IReadOnlyCollection<string> engineIds, Func<Patch, double> highest, double threshold);
}

/// <summary>A level at a place, best estimate and expanded uncertainty.</summary>
/// <param name="BandsDb">Best estimate, unweighted octave band levels in dB.</param>
/// <param name="LevelDbA">Best estimate in dB(A).</param>
/// <param name="LevelDbC">Best estimate in dB(C).</param>
/// <param name="ExpandedUncertaintyDb">
/// U, one-sided 95 % (k = 1.65), of measurement and model together, in dB; common to all places and times, so it is
/// added once, at the comparison.
/// </param>
public sealed record PointLevel(BandValues BandsDb, double LevelDbA, double LevelDbC, double ExpandedUncertaintyDb)
{
    /// <summary>The level to plan with: best estimate + U, in dB(A).</summary>
    public double PlanningDbA => LevelDbA + ExpandedUncertaintyDb;
}
