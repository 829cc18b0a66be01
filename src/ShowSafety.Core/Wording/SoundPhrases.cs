using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of the rooms of Sound, in English.</summary>
internal static class SoundPhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } =
    [.. SoundMeasurementPhrases.All, .. SoundSourcePhrases.All, .. SoundSitePhrases.All];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [
        new("sound.power-level", "A-weighted sound power level, mean over all directions"),
        new("sound.level-at-10-m", "Level at 10 m in the loudest direction over open hard ground"),
        new("sound.uncertainty", "Uncertainty added for planning (one-sided 95 %)"),
        new("sound.fit-residual", "Reading minus the fit through the readings of its throttle state, A-weighted"),
        new("sound.absorption-area", "Absorption area at 1 kHz"),
        new(
            "sound.critical-distance",
            "Distance beyond which the sound of the room outweighs the direct sound, at 1 kHz"
        ),
    ];
}
