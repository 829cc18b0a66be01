using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences about sound measurements.</summary>
internal static class SoundMeasurementPhrases
{
    /// <summary>All of them.</summary>
    public static ValueList<FindingPhrase> All { get; } =
    [
        new(
            "sound.measurement-unusable",
            "Reading {measurement} of {element} has no level or no place that makes sense, and is not used: cannot tell.",
            "Enter the level in dB(A) or in octave bands, the distance and both heights."
        ),
        new(
            "sound.background-too-high",
            "Reading {measurement} of {element} is only {excess} above the background and is not used: cannot tell.",
            "Measure again nearer to the engine or where it is quieter."
        ),
        new(
            "sound.background-close",
            "Reading {measurement} of {element} is only {excess} above the background; {correction} was taken off, no more.",
            "Measure again with the background at least 6 dB below the engine."
        ),
        new(
            "sound.background-unknown",
            "The background of reading {measurement} of {element} was not recorded, so nothing is taken off.",
            "Note the level with the engine stopped at the same place."
        ),
        new(
            "sound.measured-far-and-low",
            "Reading {measurement} of {element} was taken {distance} away with the microphone {microphone} high; the method credits so low a way over the ground with up to 3 dB that need not have been there. The uncertainty is wider.",
            "Measure again nearer, or with the microphone 1.2 m high or more."
        ),
        new(
            "sound.measured-too-near",
            "Reading {measurement} of {element} was taken at {distance}; a jet is no point source nearer than 50 nozzle diameters, {wanted}. The uncertainty is wider.",
            "Measure again farther away."
        ),
        new(
            "sound.nearness-unknown",
            "Without the nozzle diameter of {element} nobody can say whether reading {measurement} was taken far enough away. The uncertainty is wider.",
            "Measure the nozzle diameter with a caliper."
        ),
        new(
            "sound.measured-in-wind",
            "Reading {measurement} of {element} was taken in wind of 5 m/s or more. The uncertainty is wider.",
            "Measure again in calm air with a wind shield."
        ),
        new(
            "sound.wind-unknown",
            "The wind during reading {measurement} of {element} was not recorded. The uncertainty is wider.",
            "Note the wind speed with each reading."
        ),
        new(
            "sound.measured-indoors",
            "Reading {measurement} of {element} was taken in a room or near walls. It holds reflected sound too: the engine is taken as louder than it is, and the uncertainty is wider.",
            "Measure again outdoors, at least 10 m from any wall."
        ),
        new(
            "sound.room-incomplete",
            "The room of reading {measurement} of {element} is described too little: nothing is taken off for it, so the engine is taken as louder than it is, and the uncertainty is wider.",
            "Enter volume and reverberation time of the room, or surface and mean absorption."
        ),
        new(
            "sound.room-though-outdoors",
            "Reading {measurement} of {element} is said to be taken outdoors and in a room. Nothing is taken off for the room.",
            "Correct one of the two."
        ),
        new(
            "sound.room-taken-off",
            "Reading {measurement} of {element} was taken in a described room, whose share of the sound, {correction}, was taken off. The uncertainty is wider.",
            "Measure again outdoors, at least 10 m from any wall."
        ),
        new(
            "sound.room-live",
            "The room of reading {measurement} of {element} adds {correction}, more than the 4 dB of ISO 3744 and within the 7 dB of ISO 3746. It was taken off; the uncertainty is wider.",
            "Measure again outdoors, or nearer to the engine."
        ),
        new(
            "sound.room-too-live",
            "The room of reading {measurement} of {element} adds {correction}, more than any method takes off. No more than 7 dB was taken off in a band: the engine is taken as louder than it is, and the uncertainty is wider.",
            "Measure again outdoors."
        ),
        new(
            "sound.low-bands-raised",
            "Reading {measurement} of {element} has more dB(C) than the assumed spectrum; its bands up to 250 Hz were raised by {raised}.",
            "Measure octave bands."
        ),
        new(
            "sound.levels-doubtful",
            "In reading {measurement} of {element} dB(C) and dB(A) are {difference} apart, which hardly any jet gives: one of them is doubtful. The louder reading of both is used, and the uncertainty is wider.",
            "Check both levels and their weighting."
        ),
        new(
            "sound.not-calibrated",
            "No calibrator was used, or none is recorded, for reading {measurement} of {element}. The uncertainty is wider.",
            "Use a sound calibrator before and after and record it."
        ),
        new(
            "sound.meter-unclassed",
            "Reading {measurement} of {element} was taken with a telephone or a meter without a class. The uncertainty is wider.",
            "Borrow a meter of class 1 or 2 after IEC 61672-1."
        ),
        new(
            "sound.level-from-maker",
            "Reading {measurement} of {element} comes from the maker and was not checked on this engine. The uncertainty is wider.",
            "Measure this engine."
        ),
        new(
            "sound.level-estimated",
            "Reading {measurement} of {element} is an estimate, not a measurement. The uncertainty is wider.",
            "Measure this engine."
        ),
        new(
            "sound.bands-and-level-disagree",
            "In reading {measurement} of {element} the dB(A) level and the sum of the octave bands differ by {difference}; the larger is used. Something loud may lie above the 8 kHz band, such as the tone of the blades.",
            "Check both entries; protectors are not rated above 8 kHz."
        ),
        new(
            "sound.spectrum-borrowed",
            "Reading {measurement} of {element} has no octave bands; the shape of another reading in the same throttle state is used.",
            "Measure octave bands there too."
        ),
        new(
            "sound.spectrum-jet-shape",
            "Reading {measurement} of {element} has no octave bands; a textbook jet spectrum about its peak is assumed. The uncertainty is wider.",
            "Measure octave bands."
        ),
        new(
            "sound.spectrum-flat",
            "Reading {measurement} of {element} has no octave bands and the exhaust speed or nozzle diameter is missing; equal octave levels are assumed. The uncertainty is wider.",
            "Measure octave bands, or enter exhaust speed and nozzle diameter."
        ),
        new(
            "sound.angle-unknown",
            "The angle from the exhaust axis of reading {measurement} of {element} is unknown. It may have been taken where the engine is quietest; the loudest direction is taken to be louder accordingly.",
            "Note the angle: 0 degrees behind the engine in the jet, 180 ahead of the intake."
        ),
        new(
            "sound.state-not-on-sheet",
            "Reading {measurement} of {element} belongs to a throttle state that is not on the engine's sheet.",
            "Add the throttle state or correct the reading."
        ),
    ];
}
