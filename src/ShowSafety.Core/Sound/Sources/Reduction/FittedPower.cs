using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources.Reduction;

/// <summary>
/// The power of an engine by a fit through its readings. Near a reading the fit holds, and what a reading has over it is
/// held in that reading's direction and faded out over 10 degrees: nobody is told less than was measured. In directions
/// more than 20 degrees from every reading nothing is taken off: the larger of the fit and the envelope of the readings,
/// which is faded in from 10 degrees on.
/// </summary>
public sealed class FittedPower : DirectionalPower
{
    private const double WholeFitDegrees = 10;
    private const double FadeDegrees = ReadingEnvelope.MeasuredWithinDegrees - WholeFitDegrees;

    private readonly double[] _baseDb;
    private readonly double[] _share;
    private readonly ReadingEnvelope _envelope;
    private readonly JetDirectivity _table;
    private readonly double[] _angles;
    private readonly double[][] _overDb;
    private readonly BandValues? _floorDb;

    /// <summary>Takes a fit and the readings it was made from.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="readings">Its readings.</param>
    /// <param name="table">The published table it was made with.</param>
    /// <param name="floorDb">Power levels no direction may be under, from readings without a direction, or null.</param>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public FittedPower(
        DirectivityFit fit,
        IReadOnlyList<DirectedReading> readings,
        JetDirectivity table,
        BandValues? floorDb
    )
    {
        _baseDb = [.. fit.BaseDb];
        _share = [.. fit.Share];
        _table = table;
        _floorDb = floorDb;
        _angles = [.. readings.Select(r => r.AngleDegrees)];
        _overDb = [.. fit.Residuals.Select(r => r.BandsDb.Select(db => Math.Max(0, db)).ToArray())];
        _envelope = new(readings, table, floorDb);
        double slope = (fit.Share.Max(Math.Abs) * table.SteepestDbPerDegree) + _envelope.SteepestDbPerDegree;
        double held = _overDb.Max(over => over.Max()) / WholeFitDegrees;
        SteepestDbPerDegree = slope + Math.Max(held, LargestStepDb(fit, slope) / FadeDegrees);
    }

    /// <inheritdoc/>
    /// <remarks>
    /// Both slopes, and where one fades into the other, or a held reading fades out, the largest difference over the way
    /// it fades.
    /// </remarks>
    public override double SteepestDbPerDegree { get; }

    /// <inheritdoc/>
    public override void LevelsDb(double angleDegrees, Span<double> levelsDb)
    {
        double index = _table.IndexDb(angleDegrees);
        double away = double.PositiveInfinity;
        foreach (double angle in _angles)
        {
            away = Math.Min(away, Math.Abs(angle - angleDegrees));
        }

        double share = Math.Clamp((away - WholeFitDegrees) / FadeDegrees, 0, 1);
        _envelope.LevelsDb(angleDegrees, levelsDb);
        for (int band = 0; band < levelsDb.Length; band++)
        {
            double fitted = FittedDb(band, index);
            double level = fitted + Math.Max(share * Math.Max(0, levelsDb[band] - fitted), HeldDb(band, angleDegrees));
            levelsDb[band] = _floorDb is { } floor ? Math.Max(floor[band], level) : level;
        }
    }

    /// <summary>Power levels of the whole source in dB by the fit alone: its energy mean over the sphere.</summary>
    public BandValues FitSphereMeanDb() =>
        BandValues.Build(band => SphereMean.OfDb(angle => FittedDb(band, _table.IndexDb(angle))));

    private double HeldDb(int band, double angleDegrees)
    {
        double held = 0;
        for (int i = 0; i < _angles.Length; i++)
        {
            double left = 1 - (Math.Abs(_angles[i] - angleDegrees) / WholeFitDegrees);
            held = Math.Max(held, left * _overDb[i][band]);
        }

        return held;
    }

    private double FittedDb(int band, double indexDb) => _baseDb[band] + (_share[band] * indexDb);

    // Between whole degrees the difference grows by no more than both slopes over half a degree.
    private double LargestStepDb(DirectivityFit fit, double slope) =>
        (slope / 2)
        + Enumerable
            .Range(0, 181)
            .Max(angle =>
                _envelope.LevelsDb(angle).With(fit.LevelsDb(_table.IndexDb(angle)), (e, f) => Math.Max(0, e - f)).Max()
            );
}
