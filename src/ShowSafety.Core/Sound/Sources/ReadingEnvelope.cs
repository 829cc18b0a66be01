using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>One reading as a direction and its power levels.</summary>
/// <param name="AngleDegrees">Angle of the microphone from the exhaust axis, seen from the nozzle, 0 to 180.</param>
/// <param name="LevelsDb">Power levels of an omnidirectional source with this reading, in dB.</param>
public sealed record DirectedReading(double AngleDegrees, BandValues LevelsDb);

/// <summary>
/// The envelope of readings and the published jet table. The table is used only to add: in the direction of a reading
/// the reading holds; away from it the larger of the plain reading and the table through that reading; between two
/// readings the larger of both envelopes, faded in over 20 degrees (or half the gap) from the nearer one. In the direction
/// of a reading the envelope is never under it.
/// </summary>
public sealed class ReadingEnvelope : DirectionalPower
{
    /// <summary>How far from a reading other readings' envelopes are faded in, in degrees.</summary>
    public const double MeasuredWithinDegrees = 20;

    /// <summary>
    /// Readings nearer to each other than this are one direction, in degrees: nobody places a microphone better by hand.
    /// </summary>
    public const double SameDirectionDegrees = 5;

    private readonly double[] _angles;
    private readonly double[][] _levelsDb;
    private readonly double[] _indicesDb;
    private readonly (double AngleDegrees, double[] LevelsDb)[] _held;
    private readonly JetDirectivity _table;
    private readonly BandValues? _floorDb;

    /// <summary>Takes at least one reading; readings within <see cref="SameDirectionDegrees"/> are merged, the larger held.</summary>
    /// <param name="readings">Readings with their directions.</param>
    /// <param name="table">The published table.</param>
    /// <param name="floorDb">Power levels no direction may be under, from readings without a direction, or null.</param>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public ReadingEnvelope(IEnumerable<DirectedReading> readings, JetDirectivity table, BandValues? floorDb)
    {
        DirectedReading[] given = [.. readings];
        DirectedReading[] merged = Merged(given);
        _angles = [.. merged.Select(r => r.AngleDegrees)];
        _levelsDb = [.. merged.Select(r => r.LevelsDb.ToArray())];
        _indicesDb = [.. merged.Select(r => table.IndexDb(r.AngleDegrees))];
        _table = table;
        _floorDb = floorDb;
        if (merged.Length == 0)
        {
            throw new ArgumentException("An envelope needs a reading.", nameof(readings));
        }

        _held = [.. given.Where(IsUnderIn).Select(r => (r.AngleDegrees, r.LevelsDb.ToArray()))];
    }

    /// <inheritdoc/>
    /// <remarks>
    /// The table's own slope, and where one envelope fades into another the difference of the two over the way it fades:
    /// that of the readings in the band where it is largest and that of their indices. Around a reading held where its
    /// neighbour is nearer, as much as it stands over the lowest level over the way it fades out.
    /// </remarks>
    public override double SteepestDbPerDegree =>
        _table.SteepestDbPerDegree
        + Enumerable
            .Range(0, _angles.Length - 1)
            .Select(i => DifferenceDb(i) / FadeDegrees(_angles[i + 1] - _angles[i]))
            .DefaultIfEmpty(0)
            .Max()
        + (HeldOverLowestDb() / SameDirectionDegrees);

    /// <inheritdoc/>
    public override void LevelsDb(double angleDegrees, Span<double> levelsDb)
    {
        Merged(angleDegrees, levelsDb);
        if (_held.Length > 0)
        {
            Hold(angleDegrees, levelsDb);
        }

        if (_floorDb is { } floor)
        {
            for (int band = 0; band < levelsDb.Length; band++)
            {
                levelsDb[band] = Math.Max(levelsDb[band], floor[band]);
            }
        }
    }

    private void Merged(double angleDegrees, Span<double> levelsDb)
    {
        double indexDb = _table.IndexDb(angleDegrees);
        int upper = 0;
        while (upper < _angles.Length && _angles[upper] < angleDegrees)
        {
            upper++;
        }

        if (upper == 0 || upper == _angles.Length)
        {
            Plain(Math.Min(upper, _angles.Length - 1), indexDb, levelsDb);
        }
        else
        {
            Between(upper - 1, upper, angleDegrees, indexDb, levelsDb);
        }
    }

    // A reading merged into one farther off than its neighbour holds in its own direction and fades out from there.
    private void Hold(double angleDegrees, Span<double> levelsDb)
    {
        Span<double> merged = stackalloc double[OctaveBand.Count];
        levelsDb.CopyTo(merged);
        foreach ((double heldDegrees, double[] heldDb) in _held)
        {
            double share = Math.Max(0, 1 - (Math.Abs(angleDegrees - heldDegrees) / SameDirectionDegrees));
            for (int band = 0; band < levelsDb.Length; band++)
            {
                double over = Math.Max(0, heldDb[band] - merged[band]);
                levelsDb[band] = Math.Max(levelsDb[band], merged[band] + (share * over));
            }
        }
    }

    private bool IsUnderIn(DirectedReading reading)
    {
        Span<double> levels = stackalloc double[OctaveBand.Count];
        Merged(reading.AngleDegrees, levels);
        bool isUnder = false;
        for (int band = 0; band < levels.Length; band++)
        {
            isUnder |= levels[band] < reading.LevelsDb[band];
        }

        return isUnder;
    }

    private double HeldOverLowestDb() =>
        _held
            .SelectMany(held => _levelsDb.Select(merged => held.LevelsDb.Zip(merged, (h, m) => h - m).Max()))
            .DefaultIfEmpty(0)
            .Max();

    private void Plain(int index, double indexDb, Span<double> levels)
    {
        double added = AddedDb(index, indexDb);
        double[] reading = _levelsDb[index];
        for (int band = 0; band < levels.Length; band++)
        {
            levels[band] = reading[band] + added;
        }
    }

    private void Between(int lower, int upper, double angle, double indexDb, Span<double> levels)
    {
        bool lowerIsNearer = angle - _angles[lower] <= _angles[upper] - angle;
        (int near, int far) = lowerIsNearer ? (lower, upper) : (upper, lower);
        double gap = _angles[upper] - _angles[lower];
        double share = Math.Min(1, Math.Abs(angle - _angles[near]) / FadeDegrees(gap));
        double nearAdded = AddedDb(near, indexDb);
        double farAdded = AddedDb(far, indexDb);
        double[] nearDb = _levelsDb[near];
        double[] farDb = _levelsDb[far];
        for (int band = 0; band < levels.Length; band++)
        {
            double own = nearDb[band] + nearAdded;
            double other = farDb[band] + farAdded;
            levels[band] = own + (share * Math.Max(0, other - own));
        }
    }

    private double DifferenceDb(int lower) =>
        _levelsDb[lower].Zip(_levelsDb[lower + 1], (a, b) => Math.Abs(b - a)).Max()
        + Math.Abs(_indicesDb[lower + 1] - _indicesDb[lower]);

    private static double FadeDegrees(double gap) => Math.Min(MeasuredWithinDegrees, gap / 2);

    private double AddedDb(int reading, double indexDb) => Math.Max(0, indexDb - _indicesDb[reading]);

    private static DirectedReading[] Merged(IEnumerable<DirectedReading> readings)
    {
        var merged = new List<DirectedReading>();
        foreach (DirectedReading reading in readings.OrderBy(r => r.AngleDegrees))
        {
            if (merged.Count > 0 && reading.AngleDegrees - merged[^1].AngleDegrees < SameDirectionDegrees)
            {
                merged[^1] = merged[^1] with { LevelsDb = merged[^1].LevelsDb.With(reading.LevelsDb, Math.Max) };
            }
            else
            {
                merged.Add(reading);
            }
        }

        return [.. merged];
    }
}
