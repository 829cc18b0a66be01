using System.Runtime.Intrinsics;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// The least and the most power of a source over a range of directions, as energies. Between two samples at a sixteenth
/// of a degree a level can't stray from them by more than its steepest slope times half their distance; that much is
/// added above and taken off below, so no direction lies outside.
/// </summary>
internal sealed class PowerRange
{
    private const int StepsPerDegree = 4;
    private const int SamplesPerStep = 4;
    private const int Steps = 180 * StepsPerDegree;
    private const int StepsPerBlock = 16;
    private const int Bands = OctaveBand.Count;

    // Angles are calculated: a range takes in this much more at its ends.
    private const double RoundingSteps = 1e-6;

    private readonly double[] _least = new double[Steps * Bands];
    private readonly double[] _most = new double[Steps * Bands];
    private readonly double[] _leastOfBlock = new double[Steps / StepsPerBlock * Bands];
    private readonly double[] _mostOfBlock = new double[Steps / StepsPerBlock * Bands];

    /// <summary>Prepares the ranges of a power by direction.</summary>
    public PowerRange(DirectionalPower power)
    {
        double strayDb = power.SteepestDbPerDegree / (2 * StepsPerDegree * SamplesPerStep);
        var samples = new double[((Steps * SamplesPerStep) + 1) * Bands];
        for (int sample = 0; sample <= Steps * SamplesPerStep; sample++)
        {
            double angle = (double)sample / (StepsPerDegree * SamplesPerStep);
            power.LevelsDb(angle, samples.AsSpan(sample * Bands, Bands));
        }

        for (int i = 0; i < _most.Length; i++)
        {
            (int step, int band) = Math.DivRem(i, Bands);
            double least = double.PositiveInfinity;
            double most = double.NegativeInfinity;
            for (int sample = step * SamplesPerStep; sample <= (step + 1) * SamplesPerStep; sample++)
            {
                least = Math.Min(least, samples[(sample * Bands) + band]);
                most = Math.Max(most, samples[(sample * Bands) + band]);
            }

            _least[i] = Decibels.ToEnergy(least - strayDb);
            _most[i] = Decibels.ToEnergy(most + strayDb);
        }

        for (int block = 0; block < Steps / StepsPerBlock; block++)
        {
            Fold(_least, block * StepsPerBlock, Bound.Lowest, _leastOfBlock.AsSpan(block * Bands, Bands));
            Fold(_most, block * StepsPerBlock, Bound.Highest, _mostOfBlock.AsSpan(block * Bands, Bands));
        }
    }

    /// <summary>Writes the least or the most energy of each octave band over a range of directions of 0 to 180 degrees.</summary>
    public void Energies(double leastDegrees, double mostDegrees, Bound bound, Span<double> energies)
    {
        int step = Math.Clamp((int)((leastDegrees * StepsPerDegree) - RoundingSteps), 0, Steps - 1);
        int last = Math.Clamp((int)((mostDegrees * StepsPerDegree) + RoundingSteps), step, Steps - 1);
        double[] steps = bound == Bound.Highest ? _most : _least;
        double[] blocks = bound == Bound.Highest ? _mostOfBlock : _leastOfBlock;
        energies.Fill(bound == Bound.Highest ? 0 : double.PositiveInfinity);
        while (step <= last)
        {
            bool wholeBlock = step % StepsPerBlock == 0 && step + StepsPerBlock <= last + 1;
            (double[] from, int at) = wholeBlock ? (blocks, step / StepsPerBlock) : (steps, step);
            Widen(from.AsSpan(at * Bands, Bands), bound, energies);
            step += wholeBlock ? StepsPerBlock : 1;
        }
    }

    private static void Fold(double[] rows, int first, Bound bound, Span<double> result)
    {
        result.Fill(bound == Bound.Highest ? 0 : double.PositiveInfinity);
        for (int row = first; row < first + StepsPerBlock; row++)
        {
            Widen(rows.AsSpan(row * Bands, Bands), bound, result);
        }
    }

    private static void Widen(ReadOnlySpan<double> row, Bound bound, Span<double> result)
    {
        for (int band = 0; band < Bands; band += Vector256<double>.Count)
        {
            Vector256<double> own = Vector256.Create<double>(result[band..]);
            Vector256<double> other = Vector256.Create(row[band..]);
            Vector256<double> wider =
                bound == Bound.Highest ? Vector256.MaxNative(own, other) : Vector256.MinNative(own, other);
            wider.CopyTo(result[band..]);
        }
    }
}
