using System.Collections;

namespace ShowSafety.Core.Measures;

/// <summary>
/// One number per octave band, 63 Hz to 8 kHz, immutable and equal by value. What the numbers are (levels in dB,
/// attenuations in dB, absorption coefficients, energies) is said by the member that holds them.
/// </summary>
public sealed class BandValues : IReadOnlyList<double>, IEquatable<BandValues>
{
    private readonly double[] _values;

    private BandValues(double[] values) => _values = values;

    /// <summary>Eight times zero.</summary>
    public static BandValues Zero { get; } = new(new double[OctaveBand.Count]);

    /// <summary>Number of bands: 8.</summary>
    public int Count => OctaveBand.Count;

    /// <summary>The value of band <paramref name="index"/>, 0 (63 Hz) to 7 (8 kHz).</summary>
    public double this[int index] => _values[index];

    /// <summary>Takes eight finite numbers, 63 Hz first.</summary>
    /// <exception cref="ArgumentException">Not exactly eight numbers, or one of them is not finite.</exception>
    public static BandValues Of(params IReadOnlyList<double> values)
    {
        if (values.Count != OctaveBand.Count)
        {
            throw new ArgumentException($"Eight octave bands are needed, {values.Count} were given.", nameof(values));
        }

        foreach (double value in values)
        {
            if (!double.IsFinite(value))
            {
                throw new ArgumentException($"Band values must be finite, one is {value}.", nameof(values));
            }
        }

        return new([.. values]);
    }

    /// <summary>The same number in every band.</summary>
    public static BandValues Uniform(double value) => Build(_ => value);

    /// <summary>Makes the value of each band from its index.</summary>
    public static BandValues Build(Func<int, double> value)
    {
        var values = new double[OctaveBand.Count];
        for (int band = 0; band < values.Length; band++)
        {
            values[band] = value(band);
        }

        return new(values);
    }

    /// <summary>Applies <paramref name="change"/> to every band.</summary>
    public BandValues Map(Func<double, double> change) => Build(band => change(_values[band]));

    /// <summary>Combines two sets of values band by band.</summary>
    public BandValues With(BandValues other, Func<double, double, double> combine) =>
        Build(band => combine(_values[band], other[band]));

    /// <summary>Band by band sum.</summary>
    public static BandValues operator +(BandValues left, BandValues right) => left.With(right, (a, b) => a + b);

    /// <summary>Band by band difference.</summary>
    public static BandValues operator -(BandValues left, BandValues right) => left.With(right, (a, b) => a - b);

    /// <summary>Adds the same number to every band.</summary>
    public static BandValues operator +(BandValues left, double right) => left.Map(a => a + right);

    /// <summary>Takes the same number off every band.</summary>
    public static BandValues operator -(BandValues left, double right) => left.Map(a => a - right);

    /// <inheritdoc/>
    public bool Equals(BandValues? other) => other is not null && _values.AsSpan().SequenceEqual(other._values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as BandValues);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (double value in _values)
        {
            hash.Add(value);
        }

        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<double> GetEnumerator() => ((IEnumerable<double>)_values).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
