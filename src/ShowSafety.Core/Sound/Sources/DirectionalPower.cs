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
