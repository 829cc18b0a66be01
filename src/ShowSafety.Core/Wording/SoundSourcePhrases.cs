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
            "sound.peak-estimated",
            "For want of a measured peak, an estimate: if the sound of {element} at {state} were plain noise, its peaks would reach {estimate} at {distance} in the loudest direction, 16 dB over the C-weighted level. Light-up and surge may be far louder.",
            "Measure the C-weighted peak; the estimate stands for no measurement."
        ),
        new(
            "sound.declared-omnidirectional",
            "{element} is declared equally loud in all directions; the loudest reading is used everywhere and the uncertainty is wider.",
            "Measure in at least four directions instead."
        ),
        new(
            "sound.table-adds",
            "{element} at {state} was not measured all round. Where nobody measured, the larger of the readings and a published table is used; over all directions that is {added} more than what was measured.",
            "Measure in more directions: three more readings cost less than these decibels."
        ),
        new(
            "sound.state-interpolated",
            "{element} was not measured at {state}; the level is interpolated between measured throttle states in the logarithm of the exhaust speed. The uncertainty is wider.",
            "Measure the engine in this throttle state."
        ),
        new(
            "sound.state-interpolated-by-shaft",
            "{element} was not measured at {state}, and exhaust speeds are missing; the level is interpolated between measured throttle states in the logarithm of the shaft speed. The uncertainty is wider.",
            "Measure the engine in this throttle state, or enter the exhaust speeds."
        ),
        new(
            "sound.directivity-fitted",
            "The readings of {element} at {state} are joined by a fit over their directions; they deviate from it by {deviation}, reading {measurement} the most with {farthest}. The deviation widens the uncertainty.",
            "Look at the reading that deviates the most, and measure more directions."
        ),
        new(
            "sound.directivity-not-fitted",
            "The readings of {element} at {state} follow no jet: reading {measurement} deviates by {farthest} from a fit over their directions. The fit is not used; in each direction the larger of the readings and a published table counts.",
            "Check that reading, and measure more directions."
        ),
        new(
            "sound.blade-tone",
            "The blades of {rotor} of {element} make a tone at {tone} in {state}. A single tone may stand out of its octave band and annoy more than the level says.",
            "Listen for it while measuring, and note it."
        ),
        new(
            "sound.blade-tone-above-bands",
            "The blades of {rotor} of {element} make a tone at {tone} in {state}, above the 8 kHz band: octave bands don't show it, meters of class 2 are loosely specified there, and hearing protectors are not rated.",
            "Measure dB(A) beside the octave bands with a meter of class 1: what the bands lack shows as a difference."
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
