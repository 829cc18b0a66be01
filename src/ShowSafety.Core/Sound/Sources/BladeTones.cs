using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>
/// The tone of the blades, shaft rate times number of blades, of each wheel at the fastest throttle state. Above the
/// 8 kHz band no octave band tells of it: meters of class 2 are loosely specified there and protectors are not rated.
/// </summary>
public static class BladeTones
{
    /// <summary>Upper edge of the 8 kHz octave band, 1000·10^(0.9 + 0.15) Hz (IEC 61260-1, base ten).</summary>
    public static double LastBandEdgeHertz { get; } = 1000 * Math.Pow(10, 1.05);

    /// <summary>Blade passing frequency in hertz.</summary>
    /// <param name="revolutionsPerMinute">Shaft speed, above 0.</param>
    /// <param name="blades">Number of blades, above 0.</param>
    public static double Hertz(double revolutionsPerMinute, int blades) => revolutionsPerMinute / 60 * blades;

    /// <summary>Names the tone of every wheel whose blades are counted.</summary>
    internal static void Say(Engine engine, SoundFindings findings)
    {
        ThrottleState? fastest = engine
            .Sheet?.States.Where(s => s.ShaftSpeedRevolutionsPerMinute is { Value: > 0 and < double.PositiveInfinity })
            .MaxBy(s => s.ShaftSpeedRevolutionsPerMinute!.Value);
        if (fastest is null)
        {
            return;
        }

        foreach (Rotor rotor in engine.Sheet!.Rotors.Where(r => r.BladeCount > 0).DistinctBy(r => r.Id))
        {
            double hertz = Hertz(fastest.ShaftSpeedRevolutionsPerMinute!.Value, rotor.BladeCount!.Value);
            findings.Add(
                hertz > LastBandEdgeHertz ? "sound.blade-tone-above-bands" : "sound.blade-tone",
                Severity.Note,
                engine.Id,
                "Rotor.BladeCount",
                FindingArgument.Of("rotor", rotor.Id),
                FindingArgument.Of("state", fastest.Name ?? fastest.Id),
                FindingArgument.Of("tone", Quantity.Plain(hertz, Unit.Hertz))
            );
        }
    }
}
