using System.Runtime.Intrinsics;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// The sound of an engine in one throttle state by direction: in each direction the power level of an omnidirectional
/// source that would be as loud there. Angles are from the exhaust axis, 0 to 180 degrees.
/// </summary>
public abstract class DirectionalPower
{
    private const double EnergyPerDecibel = 0.23025850929940457; // ln(10)/10

    private readonly Lazy<PowerRange> _range;

    /// <summary>Makes a power whose ranges are prepared when first asked for.</summary>
    protected DirectionalPower() => _range = new(() => new PowerRange(this));

    /// <summary>The least and the most power over ranges of directions.</summary>
    internal PowerRange Range => _range.Value;

    /// <summary>Writes the power levels in dB of the eight octave bands in a direction.</summary>
    public abstract void LevelsDb(double angleDegrees, Span<double> levelsDb);

    /// <summary>A slope in dB per degree that no band's level exceeds anywhere, up or down.</summary>
    public abstract double SteepestDbPerDegree { get; }

    /// <summary>Writes the powers of the eight octave bands in a direction as energies.</summary>
    public void Energies(double angleDegrees, Span<double> energies)
    {
        LevelsDb(angleDegrees, energies);
        for (int band = 0; band < OctaveBand.Count; band += Vector256<double>.Count)
        {
            Vector256<double> levels = Vector256.Create<double>(energies[band..]);
            Vector256.Exp(levels * EnergyPerDecibel).CopyTo(energies[band..]);
        }
    }

    /// <summary>Power levels in dB of the eight octave bands in a direction.</summary>
    public BandValues LevelsDb(double angleDegrees)
    {
        var levels = new double[OctaveBand.Count];
        LevelsDb(angleDegrees, levels);
        return BandValues.Of(levels);
    }

    /// <summary>
    /// Power levels of the whole source in dB: the energy mean over the sphere, which a diffuse field is made of.
    /// </summary>
    public BandValues SphereMeanDb()
    {
        Span<double> levels = stackalloc double[OctaveBand.Count];
        var energies = new double[OctaveBand.Count];
        foreach ((double angle, double weight) in SphereMean.Directions)
        {
            LevelsDb(angle, levels);
            for (int band = 0; band < energies.Length; band++)
            {
                energies[band] += weight * Decibels.ToEnergy(levels[band]);
            }
        }

        return BandValues.Build(band => Decibels.FromEnergy(energies[band]));
    }
}

/// <summary>One reading as a direction and its power levels.</summary>
/// <param name="AngleDegrees">Angle of the microphone from the exhaust axis, seen from the nozzle, 0 to 180.</param>
/// <param name="LevelsDb">Power levels of an omnidirectional source with this reading, in dB.</param>
public sealed record DirectedReading(double AngleDegrees, BandValues LevelsDb);

/// <summary>
/// The envelope of readings and the published jet table. The table is used only to add: in the direction of a reading
/// the reading holds; away from it the larger of the plain reading and the table through that reading; between two
/// readings the larger of both envelopes, faded in over 20 degrees (or half the gap) from the nearer one.
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
    private readonly JetDirectivity _table;
    private readonly BandValues? _floorDb;

    /// <summary>Takes at least one reading; readings within <see cref="SameDirectionDegrees"/> are merged, the larger held.</summary>
    /// <param name="readings">Readings with their directions.</param>
    /// <param name="table">The published table.</param>
    /// <param name="floorDb">Power levels no direction may be under, from readings without a direction, or null.</param>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public ReadingEnvelope(IEnumerable<DirectedReading> readings, JetDirectivity table, BandValues? floorDb)
    {
        DirectedReading[] merged = Merged(readings);
        _angles = [.. merged.Select(r => r.AngleDegrees)];
        _levelsDb = [.. merged.Select(r => r.LevelsDb.ToArray())];
        _indicesDb = [.. merged.Select(r => table.IndexDb(r.AngleDegrees))];
        _table = table;
        _floorDb = floorDb;
        if (merged.Length == 0)
        {
            throw new ArgumentException("An envelope needs a reading.", nameof(readings));
        }
    }

    /// <inheritdoc/>
    /// <remarks>
    /// The table's own slope, and where one envelope fades into another the difference of the two over the way it fades:
    /// that of the readings in the band where it is largest and that of their indices.
    /// </remarks>
    public override double SteepestDbPerDegree =>
        _table.SteepestDbPerDegree
        + Enumerable
            .Range(0, _angles.Length - 1)
            .Select(i => DifferenceDb(i) / FadeDegrees(_angles[i + 1] - _angles[i]))
            .DefaultIfEmpty(0)
            .Max();

    /// <inheritdoc/>
    public override void LevelsDb(double angleDegrees, Span<double> levelsDb)
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

        if (_floorDb is { } floor)
        {
            for (int band = 0; band < levelsDb.Length; band++)
            {
                levelsDb[band] = Math.Max(levelsDb[band], floor[band]);
            }
        }
    }

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

/// <summary>The same power levels in every direction.</summary>
/// <param name="powerDb">Power levels in dB.</param>
public sealed class UniformPower(BandValues powerDb) : DirectionalPower
{
    /// <inheritdoc/>
    public override double SteepestDbPerDegree => 0;

    /// <inheritdoc/>
    public override void LevelsDb(double angleDegrees, Span<double> levelsDb)
    {
        for (int band = 0; band < levelsDb.Length; band++)
        {
            levelsDb[band] = powerDb[band];
        }
    }
}

/// <summary>A state between two measured ones: levels interpolated direction by direction and band by band.</summary>
/// <param name="lower">The slower state.</param>
/// <param name="upper">The faster state.</param>
/// <param name="share">0 at the slower state, 1 at the faster one.</param>
public sealed class InterpolatedPower(DirectionalPower lower, DirectionalPower upper, double share) : DirectionalPower
{
    /// <inheritdoc/>
    public override double SteepestDbPerDegree => Math.Max(lower.SteepestDbPerDegree, upper.SteepestDbPerDegree);

    /// <inheritdoc/>
    public override void LevelsDb(double angleDegrees, Span<double> levelsDb)
    {
        Span<double> above = stackalloc double[OctaveBand.Count];
        lower.LevelsDb(angleDegrees, levelsDb);
        upper.LevelsDb(angleDegrees, above);
        for (int band = 0; band < levelsDb.Length; band++)
        {
            levelsDb[band] += share * (above[band] - levelsDb[band]);
        }
    }
}
