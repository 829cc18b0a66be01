using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences about engines as sources of sound.</summary>
internal static class SoundSourcePhrases
{
    /// <summary>All of them.</summary>
    public static ValueList<FindingPhrase> All { get; } =
    [
        new(
            "sound.engine-cannot-tell",
            "{element} has neither throttle states nor sound measurements: nobody can say how loud it is.",
            "Measure the engine with a sound level meter in each throttle state that will be shown."
        ),
        new(
            "sound.level-cannot-tell",
            "How loud {element} is at {state} cannot be told: no usable measurement, and none it could be worked out from.",
            "Measure the engine in this throttle state."
        ),
        new(
            "sound.peak-not-measured",
            "The C-weighted peak of {element} at {state} was not measured: cannot tell.",
            "Measure the C-weighted peak, light-up included."
        ),
        new(
            "sound.declared-omnidirectional",
            "{element} is declared equally loud in all directions; the loudest reading is used everywhere and the uncertainty is wider.",
            "Measure in at least four directions instead."
        ),
        new(
            "sound.table-adds",
            "{element} at {state} was not measured all round. Where nobody measured, the larger of the readings and a published table is used; over all directions that is {added} more than the readings.",
            "Measure in more directions: three more readings cost less than these decibels."
        ),
        new(
            "sound.state-interpolated",
            "{element} was not measured at {state}; the level is interpolated between measured throttle states by exhaust or shaft speed. The uncertainty is wider.",
            "Measure the engine in this throttle state."
        ),
        new(
            "sound.state-takes-lowest",
            "{element} was not measured at {state}, which is slower than the slowest measured throttle state; it is taken to be as loud as that one.",
            "Measure the engine in this throttle state."
        ),
        new(
            "sound.jet-power-far-off",
            "The readings of {element} at {state} give a sound power level of {measured}, a textbook jet {estimate}: more than 8 dB apart.",
            "Check distance, weighting and unit of the readings, and mass flow, speed and temperature of the exhaust."
        ),
        new(
            "sound.shaft-height-assumed",
            "The shaft height of {element} is missing; {height}, as when it was measured, is assumed for the sound.",
            "Measure the height of the shaft above the ground with a tape."
        ),
    ];
}
