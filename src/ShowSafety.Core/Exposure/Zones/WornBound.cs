using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.Zones;

/// <summary>
/// The highest level under a protector for any levels within two ranges, prepared once for many patches of ground: the
/// most that <see cref="WornProtector.LevelDbA(HearingProtector, double, double)"/> gives.
/// </summary>
internal sealed class WornBound
{
    private readonly double[]? _reductionAtBends;
    private readonly Stated? _high;
    private readonly Stated? _medium;
    private readonly Stated? _low;
    private readonly double _snrDb;

    /// <summary>Prepares the bound.</summary>
    /// <param name="rated">A protector that <see cref="WornProtector.IsRated"/>.</param>
    public WornBound(HearingProtector rated)
    {
        (_high, _medium, _low) = (rated.HighDb, rated.MediumDb, rated.LowDb);
        _reductionAtBends =
            _high is null || _medium is null || _low is null ? null : [.. EarLevel.BendsDb.Select(Reduction)];
        _snrDb = rated.SnrDb?.Value ?? 0;
    }

    /// <summary>
    /// Whether the level under it never falls when one of the levels grows, so that the most of both gives the highest.
    /// </summary>
    public bool IsSteady =>
        _reductionAtBends is not { } reductions
        || (IsGentle(reductions[0] - reductions[1], 0, 1) && IsGentle(reductions[1] - reductions[2], 1, 2));

    /// <summary>
    /// The highest level in dB(A). The HML method is made of planes over the two levels that meet where their difference
    /// is -2, 2 or 10 dB, so the highest value lies at a corner of the range or where one of these lines leaves it.
    /// </summary>
    /// <param name="dbA">Least and most level in dB(A).</param>
    /// <param name="dbC">Least and most level in dB(C).</param>
    public double HighestDbA((double Least, double Most) dbA, (double Least, double Most) dbC)
    {
        if (_reductionAtBends is not { } reductions)
        {
            return EarLevel.Worn(EarLevel.SnrDbA(dbC.Most, _snrDb), dbA.Most);
        }

        double highest = Math.Max(
            Math.Max(dbA.Most - Reduction(dbC.Most - dbA.Most), dbA.Most - Reduction(dbC.Least - dbA.Most)),
            Math.Max(dbA.Least - Reduction(dbC.Most - dbA.Least), dbA.Least - Reduction(dbC.Least - dbA.Least))
        );
        for (int i = 0; i < reductions.Length; i++)
        {
            double onLine = Math.Min(dbA.Most, dbC.Most - EarLevel.BendsDb[i]);
            if (onLine >= dbA.Least && onLine + EarLevel.BendsDb[i] >= dbC.Least)
            {
                highest = Math.Max(highest, onLine - reductions[i]);
            }
        }

        return EarLevel.Worn(highest, dbA.Most);
    }

    // Between two bends the reduction falls, and no faster than the difference of the levels grows.
    private static bool IsGentle(double falls, int bend, int next) =>
        falls >= 0 && falls <= EarLevel.BendsDb[next] - EarLevel.BendsDb[bend];

    private double Reduction(double cMinusA) =>
        EarLevel.HmlReductionDb(0, cMinusA, _high!.Value, _medium!.Value, _low!.Value);
}
