using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of the rooms of Exposure, in English.</summary>
internal static class ExposurePhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } =
    [
        new(
            "exposure.no-programme",
            "The plan has no runs, so nobody's noise exposure can be told.",
            "Enter when each engine runs, at which throttle and for how long."
        ),
        new(
            "exposure.run-of-unknown-engine",
            "{element} runs an engine '{engine}' that is not on the plan: its sound can't be told.",
            "Give the run an engine of the plan, or take the run out."
        ),
        new(
            "exposure.run-outside-event",
            "{element} is on a day that is not a day of the event. It is counted all the same.",
            "Correct the day of the run or the days of the event."
        ),
        new(
            "exposure.runs-contradict",
            "{element} and {other} have one engine at two throttle states at the same time: the sound can't be told.",
            "Move one of the two runs."
        ),
        new(
            "exposure.no-rule-set",
            "No noise rules are chosen, so no exposure is compared with anything.",
            "Choose the rules that bind your crew and your audience, and confirm them with your authority."
        ),
        new(
            "exposure.rule-set-unknown",
            "The rule set '{ruleSet}' is not known here: nothing is compared with it.",
            "Choose one of the rule sets listed."
        ),
        new(
            "exposure.legal-class-unknown",
            "Nobody says whether {element} are employed, self-employed, volunteers or visitors: which rules cover them "
                + "can't be told.",
            "State the legal class of {element}."
        ),
        new(
            "exposure.children-assumed",
            "Nobody says how many children are among {element}: children are assumed to be there.",
            "State the number of children, or none."
        ),
        new(
            "exposure.ear-height-assumed",
            "The height of the ears of {element} is not stated: the loudest of {lowest} to {highest} is used.",
            "Measure the height of the ears above the ground."
        ),
        new(
            "exposure.neighbour-heard",
            "Neighbours {element} hear {free} in the free field, {facade} at a façade, over the worst {period} of the programme: equivalent levels of the engines alone.",
            "Compare with the limits of the local authority, which may ask for more where a tone stands out; tell the neighbours the times of the runs."
        ),
        new(
            "exposure.presence-backwards",
            "A time of presence of {element} ends before it starts; it is left out, and without another they are taken "
                + "to be there for the whole programme.",
            "Correct the times."
        ),
        new(
            "exposure.place-unknown",
            "Nobody says where {element} ({people}) are: their noise exposure can't be told.",
            "Draw their area or their place."
        ),
        new(
            "exposure.level-at-people-unknown",
            "The sound level at {element} ({people}) can't be told: a usable measurement is missing for a throttle state "
                + "they would hear.",
            "Measure the sound level for every throttle state of the programme."
        ),
        new(
            "exposure.peak-at-people-unknown",
            "The peak level at {element} ({people}) can't be told: no C-weighted peak was measured.",
            "Measure the C-weighted peak for every throttle state, the start included."
        ),
        new(
            "exposure.level-unknown",
            "The sound zones can't be told: a usable measurement is missing for a throttle state of the programme.",
            "Measure the sound level for every throttle state of the programme."
        ),
        new(
            "exposure.peak-unknown",
            "Where peaks exceed the ceiling can't be told: no C-weighted peak was measured.",
            "Measure the C-weighted peak for every throttle state, the start included."
        ),
        new(
            "exposure.covered-by-no-rule",
            "None of the rules chosen covers {element} ({people}).",
            "Choose a rule that covers them, or write down by which standard they are looked after."
        ),
        new(
            "exposure.rule-as-comparison",
            "{ruleSet} does not bind anybody towards {element} ({people}); it is shown as a comparison this project chose. "
                + "Who owes them the duties it sets is not shown.",
            "Decide by name who looks after their hearing, and confirm with your authority which rules apply."
        ),
        new(
            "exposure.duty-inform-and-offer",
            "{element} ({people}) reach {value} by {ruleSet}; from {limit} they must be told and offered hearing protectors.",
            "Tell them about the noise and have hearing protectors ready for them."
        ),
        new(
            "exposure.duty-hearing-programme",
            "{element} ({people}) reach {value} by {ruleSet}; from {limit} a hearing conservation programme is due.",
            "Arrange monitoring, hearing tests, protectors and training, or shorten the stay."
        ),
        new(
            "exposure.duty-wear-and-mark",
            "{element} ({people}) reach {value} by {ruleSet}; from {limit} hearing protectors must be worn and the zone "
                + "marked.",
            "Have hearing protectors worn, mark the zone, and reduce the exposure by distance or shorter runs."
        ),
        new(
            "exposure.duty-not-to-exceed",
            "{element} ({people}) reach {value} by {ruleSet}; the limit is {limit}.",
            "Shorten the runs or the stay, move them away, or give them hearing protectors that are enough where the rule "
                + "counts them."
        ),
        new(
            "exposure.audience-limit-exceeded",
            "{element} ({people}) reach {value} by {ruleSet}; the limit for an audience is {limit}.",
            "Move the audience away, shorten the runs or run at a lower throttle."
        ),
        new(
            "exposure.fast-maximum-unknown",
            "{ruleSet} limits the largest fast level, which can't be told from mean levels.",
            "Measure the largest fast level on site."
        ),
        new(
            "exposure.ceiling-exceeded",
            "At {element} ({people}) the level reaches {value}; nobody stays at {limit} or more without a protector.",
            "Move them away."
        ),
        new(
            "exposure.peak-ceiling-exceeded",
            "At {element} ({people}) the peak reaches {value}; the ceiling is {limit}.",
            "Move them away, or find and remove what makes the peak."
        ),
        new(
            "exposure.no-protector-in-hearing-zone",
            "{element} ({people}) are in the hearing zone, where the level reaches {value}, and no protector is chosen for "
                + "them.",
            "Choose a hearing protector for them and have it worn while an engine runs, or move them out of the zone."
        ),
        new(
            "exposure.protector-not-listed",
            "{element} ({people}) wear a protector '{protector}' that is not listed: the level at the ear can't be told.",
            "List the protector with its ratings."
        ),
        new(
            "exposure.protector-not-rated",
            "{element} ({people}) wear {protector}, whose ratings are missing: the level at the ear can't be told.",
            "Copy H, M, L or SNR from the maker's leaflet."
        ),
        new(
            "exposure.protector-not-enough",
            "Under {protector}, {element} ({people}) still have {value} at the ear.",
            "Take a protector with a higher rating, or plug and muff together, or stand farther away."
        ),
        new(
            "exposure.protector-too-much",
            "Under {protector}, {element} ({people}) may have less than 70 dB(A) at the ear: calls and warnings may be "
                + "missed.",
            "Take a protector with a lower rating, and agree on hand signs."
        ),
        new(
            "exposure.protectors-too-few",
            "There are {pairs} pairs of {element} for {wearers}.",
            "Bring a pair for everybody who is to wear one."
        ),
    ];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [
        new("exposure.highest-level", "Highest level while running"),
        new("exposure.daily-level", "Daily noise exposure level from the demonstration"),
        new("exposure.whole-day-level", "Daily noise exposure level of the whole day"),
        new("exposure.weekly-level", "Weekly noise exposure level"),
        new("exposure.sound-exposure", "Sound exposure on the worst day"),
        new("exposure.peak", "Highest C-weighted peak"),
        new("exposure.neighbour-level", "Equivalent level at neighbours in the free field, engines alone"),
        new("exposure.level-at-ear", "Level at the ear under the protector"),
    ];
}
