using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of the rooms of IndoorAir, in English.</summary>
internal static class IndoorAirPhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } =
    [
        new(
            "indoor-air.footprint-odd",
            "The footprint of {element} encloses no ground, so its air cannot be told.",
            "Draw the footprint of the hall or tent."
        ),
        new(
            "indoor-air.volume-missing",
            "The volume of {element} is not known, so its air cannot be told.",
            "Measure the height of the walls at the eaves."
        ),
        new(
            "indoor-air.fresh-air-missing",
            "How much outside air {element} gets is not known, so its air cannot be told. Open sides count only as far as somebody states a flow.",
            "Ask the venue for the fresh air in cubic metres per second that can be counted on; enter 0 when there is none."
        ),
        new(
            "indoor-air.programme-missing",
            "No run is planned in {element}, so its air cannot be told.",
            "Enter the runs with their throttle steps."
        ),
        new(
            "indoor-air.engine-blows-in",
            "{element} stands outside but blows towards the enclosure; its exhaust and heat are counted as staying inside.",
            "Turn the exhaust away from the enclosure."
        ),
        new(
            "indoor-air.state-unknown",
            "The programme of {element} names the throttle state {state}, which the engine sheet does not have. The air cannot be told.",
            "Correct the programme or add the state."
        ),
        new(
            "indoor-air.fuel-flow-missing",
            "The fuel flow of {element} at {state} is not known, so the air inside cannot be told.",
            "Weigh the fuel burnt in a minute."
        ),
        new(
            "indoor-air.carbon-monoxide-missing",
            "How much carbon monoxide {element} makes at {state} is not known. There is no value to assume, so the air inside cannot be told.",
            "Have the emission index measured, or run the engine outside."
        ),
        new(
            "indoor-air.nitrogen-oxides-missing",
            "How much nitrogen oxides {element} makes at {state} is not known. There is no value to assume, so the air inside cannot be told.",
            "Have the emission index measured, or run the engine outside."
        ),
        new(
            "indoor-air.danger-at-once",
            "In {element} {substance} reaches {mean} against {limit}, immediately dangerous to life or health, {moment} after the first light-up.",
            "Do not run inside; run the engine outside."
        ),
        new(
            "indoor-air.visitors-over-at-once",
            "In {element} {substance} reaches {mean}; for visitors the limit is {limit}. It is passed {moment} after the first light-up.",
            "Take visitors out before that moment and keep them out until the air is clear, shorten the runs, bring in more fresh air, or run the engine outside."
        ),
        new(
            "indoor-air.workers-over-at-once",
            "In {element} {substance} reaches {mean}; for people at work the limit is {limit}. It is passed {moment} after the first light-up.",
            "Shorten the runs, bring in more fresh air, or run the engine outside."
        ),
        new(
            "indoor-air.visitors-over",
            "In {element} {substance} reaches {mean} as a mean over {window}; guidance for the public is {limit}. It is passed {moment} after the first light-up.",
            "Take visitors out before that moment and keep them out until the air is clear, shorten the runs, bring in more fresh air, or run the engine outside."
        ),
        new(
            "indoor-air.workers-over",
            "In {element} {substance} reaches {mean} as a mean over {window}; the limit at work is {limit}. It is passed {moment} after the first light-up.",
            "Shorten the runs, bring in more fresh air, change crews, or run the engine outside."
        ),
        new(
            "indoor-air.rise-out-of-range",
            "The air of {element} warms by more than {rise} from {moment} after the first light-up. Beyond that the calculation of its air does not hold and nothing can be told.",
            "Shorten the runs, bring in more fresh air, or run the engine outside."
        ),
        new(
            "indoor-air.guidance-kept",
            "The air calculated for {element} keeps the guidance for visitors over the whole programme, if emission indices and fresh air are as stated.",
            "Watch it with gas meters and stop when they alarm."
        ),
        new(
            "indoor-air.never-clears",
            "After the last run the air of {element} never clears with the fresh air stated.",
            "Find out how the room can be aired, or run the engine outside."
        ),
        new(
            "indoor-air.heat-detectors",
            "Hot air under the roof of {element} may warm by {rise}: heat detectors and sprinklers can go off, or nobody has said that there are none.",
            "Ask the venue: taking detectors out of use needs its permit and a fire watch."
        ),
    ];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [
        new("indoor-air.volume", "Volume of air"),
        new("indoor-air.fresh-air", "Fresh air"),
        new("indoor-air.peak-carbon-monoxide", "Carbon monoxide, highest"),
        new("indoor-air.peak-carbon-dioxide", "Carbon dioxide, highest"),
        new("indoor-air.peak-nitrogen-dioxide", "Nitrogen dioxide, highest"),
        new("indoor-air.peak-temperature", "Air temperature, highest"),
        new("indoor-air.co-dose", "Dose of carbon monoxide over the runs, 1 incapacitates"),
        new("indoor-air.visitors-out-from", "Visitors out from, after the first light-up"),
        new("indoor-air.time-to-clear", "Time to clear after the last shut-down"),
        new("indoor-air.ceiling-rise", "Warming of the air under the roof over the engine"),
    ];
}
