using MathNet.Numerics.LinearRegression;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources.Reduction;

/// <summary>What a reading has over the fit, below 0 where it has less.</summary>
/// <param name="AngleDegrees">Angle of the reading from the exhaust axis, 0 to 180.</param>
/// <param name="BandsDb">Reading minus fit in dB in each octave band.</param>
/// <param name="LevelDb">Reading minus fit of the A-weighted power levels in dB.</param>
public sealed record FitResidual(double AngleDegrees, BandValues BandsDb, double LevelDb);

/// <summary>
/// Least squares through readings in three directions or more: in each octave band the power level is a base plus a
/// share of the published index of jets. A share of 1 is the published jet, 0 an engine equally loud all round, below 0
/// one that is loudest where jets are quietest.
/// </summary>
/// <param name="BaseDb">Power level in dB where the index is 0 dB.</param>
/// <param name="Share">Share of the published index.</param>
/// <param name="Residuals">What each reading has over the fit, in the order of the readings.</param>
/// <param name="StandardDb">Standard deviation of the A-weighted residuals in dB, two degrees of freedom taken off.</param>
public sealed record DirectivityFit(
    BandValues BaseDb,
    BandValues Share,
    ValueList<FitResidual> Residuals,
    double StandardDb
)
{
    /// <summary>Fewest directions of a fit.</summary>
    public const int LeastDirections = 3;

    /// <summary>Least spread of the published index over the directions in dB: with less the share is guesswork. A choice.</summary>
    public const double LeastIndexSpreadDb = 3;

    /// <summary>Largest A-weighted residual of a fit that is used, in dB. A choice.</summary>
    public const double MostResidualDb = 3;

    /// <summary>Whether every reading lies near enough to the fit for it to be used.</summary>
    public bool Holds => Residuals.All(r => Math.Abs(r.LevelDb) <= MostResidualDb);

    /// <summary>The fit, or null where the directions are too few or too much alike.</summary>
    /// <param name="readings">Readings with their directions.</param>
    /// <param name="table">The published table.</param>
    public static DirectivityFit? Of(IReadOnlyList<DirectedReading> readings, JetDirectivity table)
    {
        double[] indices = [.. readings.Select(r => table.IndexDb(r.AngleDegrees))];
        if (Directions(readings) < LeastDirections || indices.Max() - indices.Min() < LeastIndexSpreadDb)
        {
            return null;
        }

        (double Base, double Share)[] lines =
        [
            .. Enumerable
                .Range(0, OctaveBand.Count)
                .Select(band => SimpleRegression.Fit(indices, [.. readings.Select(r => r.LevelsDb[band])])),
        ];
        var baseDb = BandValues.Build(b => lines[b].Base);
        var share = BandValues.Build(b => lines[b].Share);
        FitResidual[] residuals = [.. readings.Select((r, i) => Residual(r, Line(baseDb, share, indices[i])))];
        double squares = residuals.Sum(r => r.LevelDb * r.LevelDb);
        return new(baseDb, share, [.. residuals], Math.Sqrt(squares / (readings.Count - 2)));
    }

    /// <summary>Fitted power levels in dB where the published index has a value in dB.</summary>
    public BandValues LevelsDb(double indexDb) => Line(BaseDb, Share, indexDb);

    private static BandValues Line(BandValues baseDb, BandValues share, double indexDb) =>
        baseDb.With(share, (b, s) => b + (s * indexDb));

    private static FitResidual Residual(DirectedReading reading, BandValues fittedDb) =>
        new(
            reading.AngleDegrees,
            reading.LevelsDb - fittedDb,
            FrequencyWeighting.LevelDbA(reading.LevelsDb) - FrequencyWeighting.LevelDbA(fittedDb)
        );

    private static int Directions(IReadOnlyList<DirectedReading> readings)
    {
        int count = 0;
        double last = double.NegativeInfinity;
        foreach (double angle in readings.Select(r => r.AngleDegrees).Order())
        {
            if (angle - last >= ReadingEnvelope.SameDirectionDegrees)
            {
                count++;
                last = angle;
            }
        }

        return count;
    }
}
