using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// The sound of an engine in one throttle state by direction: in each direction the power level of an omnidirectional
/// source that would be as loud there. Angles are from the exhaust axis, 0 to 180 degrees.
/// </summary>
public abstract class DirectionalPower
{
    /// <summary>Writes the power levels in dB of the eight octave bands in a direction.</summary>
    public abstract void LevelsDb(double angleDegrees, Span<double> levelsDb);

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

    private readonly DirectedReading[] _readings;
    private readonly JetDirectivity _table;
    private readonly BandValues? _floorDb;

    /// <summary>Takes at least one reading; readings within <see cref="SameDirectionDegrees"/> are merged, the larger held.</summary>
    /// <param name="readings">Readings with their directions.</param>
    /// <param name="table">The published table.</param>
    /// <param name="floorDb">Power levels no direction may be under, from readings without a direction, or null.</param>
    /// <exception cref="ArgumentException">There is no reading.</exception>
    public ReadingEnvelope(IEnumerable<DirectedReading> readings, JetDirectivity table, BandValues? floorDb)
    {
        _readings = Merged(readings);
        _table = table;
        _floorDb = floorDb;
        if (_readings.Length == 0)
        {
            throw new ArgumentException("An envelope needs a reading.", nameof(readings));
        }
    }

    /// <inheritdoc/>
    public override void LevelsDb(double angleDegrees, Span<double> levelsDb)
    {
        int upper = Array.FindIndex(_readings, r => r.AngleDegrees >= angleDegrees);
        if (upper <= 0)
        {
            Plain(upper == 0 ? 0 : _readings.Length - 1, angleDegrees, levelsDb);
        }
        else
        {
            Between(_readings[upper - 1], _readings[upper], angleDegrees, levelsDb);
        }

        if (_floorDb is { } floor)
        {
            for (int band = 0; band < levelsDb.Length; band++)
            {
                levelsDb[band] = Math.Max(levelsDb[band], floor[band]);
            }
        }
    }

    private void Plain(int index, double angle, Span<double> levels)
    {
        double added = AddedDb(_readings[index], angle);
        for (int band = 0; band < levels.Length; band++)
        {
            levels[band] = _readings[index].LevelsDb[band] + added;
        }
    }

    private void Between(DirectedReading lower, DirectedReading upper, double angle, Span<double> levels)
    {
        bool lowerIsNearer = angle - lower.AngleDegrees <= upper.AngleDegrees - angle;
        (DirectedReading near, DirectedReading far) = lowerIsNearer ? (lower, upper) : (upper, lower);
        double gap = upper.AngleDegrees - lower.AngleDegrees;
        double share = Math.Min(1, Math.Abs(angle - near.AngleDegrees) / Math.Min(MeasuredWithinDegrees, gap / 2));
        double nearAdded = AddedDb(near, angle);
        double farAdded = AddedDb(far, angle);
        for (int band = 0; band < levels.Length; band++)
        {
            double own = near.LevelsDb[band] + nearAdded;
            double other = far.LevelsDb[band] + farAdded;
            levels[band] = own + (share * Math.Max(0, other - own));
        }
    }

    private double AddedDb(DirectedReading reading, double angle) =>
        Math.Max(0, _table.IndexDb(angle) - _table.IndexDb(reading.AngleDegrees));

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
