using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Writes the planning levels of several combinations of running engines at an ear, prepared once to be asked for many
/// places, from several threads; not a number where a level can't be told.
/// </summary>
/// <param name="place">Place on the plan.</param>
/// <param name="earHeightMetres">Height of the ear above ground, 0 to 10 m.</param>
/// <param name="dbA">Levels in dB(A) by combination.</param>
/// <param name="dbC">Levels in dB(C) by combination; empty where nobody asks for them.</param>
public delegate void LevelsByCombination(PlanPoint place, double earHeightMetres, Span<double> dbA, Span<double> dbC);

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

    /// <summary>Prepares the planning levels (best estimate + U) of several combinations.</summary>
    /// <param name="combinations">Throttle state id by engine id, for each combination; null for one that can't be told.</param>
    LevelsByCombination PlanningLevels(IReadOnlyList<IReadOnlyDictionary<string, string>?> combinations) =>
        (place, ear, dbA, dbC) =>
        {
            for (int i = 0; i < combinations.Count; i++)
            {
                PointLevel? level = combinations[i] is { } states ? LevelAt(place, ear, states) : null;
                dbA[i] = level?.PlanningDbA ?? double.NaN;
                if (!dbC.IsEmpty)
                {
                    dbC[i] = level is null ? double.NaN : level.LevelDbC + level.ExpandedUncertaintyDb;
                }
            }
        };

    /// <summary>
    /// Prepares the planning value of the C-weighted peak in dB(C) as a function of place and ear height in metres; not
    /// a number where <see cref="PeakDbCAt"/> gives null.
    /// </summary>
    /// <param name="stateByEngine">Throttle state id by engine id.</param>
    Func<PlanPoint, double, double> PlanningPeakDbC(IReadOnlyDictionary<string, string> stateByEngine) =>
        (place, ear) => PeakDbCAt(place, ear, stateByEngine)?.Planning ?? double.NaN;

    /// <summary>
    /// The C-weighted peak at a place in dB(C), with the planning value; null when no peak was measured for a state
    /// asked for: cannot tell.
    /// </summary>
    Quantity? PeakDbCAt(PlanPoint place, double earHeightMetres, IReadOnlyDictionary<string, string> stateByEngine);

    /// <summary>
    /// The area, circumscribed, where a value that falls away from the engines is at or above a threshold. Valid,
    /// possibly empty, not clipped to the site.
    /// </summary>
    /// <param name="valueAt">The value at a place, in the unit of the threshold; must be finite.</param>
    /// <param name="threshold">The threshold.</param>
    Geometry AreaAtOrAbove(Func<PlanPoint, double> valueAt, double threshold);
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
