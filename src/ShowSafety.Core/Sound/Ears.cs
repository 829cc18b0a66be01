using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>How somebody holds the head.</summary>
public enum Posture
{
    /// <summary>An adult standing.</summary>
    Standing,

    /// <summary>Somebody sitting, on a chair or in a wheelchair.</summary>
    Seated,

    /// <summary>A child standing.</summary>
    Child,

    /// <summary>A child on an adult's shoulders: over most crowds, and over a low screen.</summary>
    ChildOnShoulders,
}

/// <summary>
/// Heights of ears and the worst of them. Heights are planning values of common practice without a published source.
/// Which height is loudest depends on ground and screens, so every one is asked.
/// </summary>
public static class Ears
{
    /// <summary>All postures, lowest number first.</summary>
    public static ValueList<Posture> All { get; } =
    [Posture.Standing, Posture.Seated, Posture.Child, Posture.ChildOnShoulders];

    /// <summary>Height of the ear above the ground in metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such posture.</exception>
    public static double HeightMetres(Posture posture) =>
        posture switch
        {
            Posture.Standing => 1.6,
            Posture.Seated => 1.2,
            Posture.Child => 1.0,
            Posture.ChildOnShoulders => 2.2,
            _ => throw new ArgumentOutOfRangeException(
                nameof(posture),
                posture,
                "Standing, seated, child or child on shoulders."
            ),
        };

    /// <summary>The posture with the highest level, the first of equal ones.</summary>
    /// <param name="postures">Postures to be expected, one at least.</param>
    /// <param name="levelAtHeight">Level in dB at a height of the ear in metres.</param>
    /// <exception cref="ArgumentException">No posture, or a level that is not a number.</exception>
    public static WorstEar Worst(IReadOnlyCollection<Posture> postures, Func<double, double> levelAtHeight)
    {
        if (postures.Count == 0)
        {
            throw new ArgumentException("One posture at least is needed, none was given.", nameof(postures));
        }

        WorstEar[] ears = [.. postures.Select(p => Heard(p, levelAtHeight))];
        return ears.MaxBy(e => e.LevelDb);
    }

    private static WorstEar Heard(Posture posture, Func<double, double> levelAtHeight)
    {
        double height = HeightMetres(posture);
        double level = levelAtHeight(height);
        // A comparison would pass over it in silence.
        return double.IsNaN(level)
            ? throw new ArgumentException($"No level at a height of {height} m.", nameof(levelAtHeight))
            : new(posture, height, level);
    }
}

/// <summary>The ear that is worst off.</summary>
/// <param name="Posture">How the head is held.</param>
/// <param name="HeightMetres">Height of the ear above the ground in metres.</param>
/// <param name="LevelDb">Its level in dB, weighted as asked.</param>
public readonly record struct WorstEar(Posture Posture, double HeightMetres, double LevelDb);
