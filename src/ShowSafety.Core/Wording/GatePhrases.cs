using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of the gate, in English.</summary>
internal static class GatePhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } =
    [
        new(
            "gate.event-days-missing",
            "The plan names no day, so nobody can tell whether permissions and checks hold.",
            "Enter the days of the event."
        ),
        new(
            "gate.fuel-unknown",
            "The fuel of {element} is not stated. Petrol and gas ask for the fire authority's permission as well.",
            "Enter the fuel, or enter the fire authority's permission."
        ),
        .. Evidence(),
        .. Restraint(),
        .. Stopping(),
        .. Roof(),
    ];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [
        new("gate.bench-tips-load", "Moment of the thrust on the bench, planned with twice the thrust"),
        new("gate.bench-tips-hold", "Moment that keeps the bench from tipping"),
        new("gate.bench-slides-load", "Thrust on the bench, planned with twice the thrust"),
        new("gate.bench-slides-hold", "Force that keeps the bench from sliding"),
    ];

    private static IEnumerable<FindingPhrase> Evidence() =>
        [
            new(
                "gate.running-hours-missing",
                "The running time of the rotors of {element} is not stated.",
                "Enter the hours from the engine's log."
            ),
            new(
                "gate.crack-check-missing",
                "No crack check of the rotors of {element} is stated.",
                "Have the rotors checked for cracks and enter the date."
            ),
            new(
                "gate.crack-check-late",
                "The crack check of the rotors of {element} is dated after the first day of the event.",
                "Check the date, or have the rotors checked before the event."
            ),
            new(
                "gate.trip-proof-missing",
                "No proof of the over-speed trip of {element} is stated.",
                "Prove that the trip cuts the fuel, away from people, and enter the date."
            ),
            new(
                "gate.trip-proof-late",
                "The proof of the over-speed trip of {element} is dated after the first day of the event.",
                "Check the date, or prove the trip before the event."
            ),
            new(
                "gate.rated-runs-missing",
                "It is not stated how many ten-minute runs at rated power {element} has stood one after the other.",
                "Run it three times for ten minutes at rated power, away from people, and enter the number."
            ),
            new(
                "gate.rated-runs-few",
                "{element} has stood {runs} ten-minute runs at rated power one after the other; three are asked for.",
                "Run it three times for ten minutes at rated power, away from people, without damage."
            ),
            new(
                "gate.evidence-contradicts",
                "The stated running time of {element} is shorter than its rated runs alone take.",
                "Check both numbers in the engine's log."
            ),
            new(
                "gate.evidence-assumed",
                "The evidence for {element} is marked as assumed or estimated and counts as missing.",
                "Enter what was done and where it is recorded."
            ),
            new(
                "gate.evidence-without-engine",
                "There is evidence for an engine {engine} that is not on the plan.",
                "Correct the engine's id, or take the entry out."
            ),
            new("gate.overhaul-recorded", "An overhaul of {element} is recorded: {reference}", "Bring the record."),
            new(
                "gate.containment-recorded",
                "A containment test of {element} is recorded: {reference} Zones are not made smaller by it here.",
                "Bring the report."
            ),
        ];

    private static IEnumerable<FindingPhrase> Restraint() =>
        [
            .. Unknown("thrust", "The highest thrust of {element} is not known", "Measure it with a spring balance"),
            .. Unknown("mass", "The mass of bench and engine of {element} is not stated", "Weigh both"),
            .. Unknown(
                "arm",
                "The distance from the centre of mass to the tipping edge of {element} is not stated",
                "Measure it with a tape"
            ),
            .. Unknown("height", "The shaft height of {element} is not stated", "Measure it with a tape"),
            new(
                "gate.bench-tips",
                "The bench of {element} can tip: twice the thrust makes {load}, and {hold} holds it.",
                "Add ballast, lower the engine, widen the base or anchor the bench, and tether it."
            ),
            new(
                "gate.bench-slides",
                "The bench of {element} can slide: twice the thrust is {load}, and {hold} holds it.",
                "Add ballast or anchor the bench, and measure the friction with a spring balance."
            ),
            new(
                "gate.anchoring-unrated",
                "The anchoring of {element} has no tested or rated force and was not counted.",
                "Pull the bench with a spring balance and enter the force it stood."
            ),
        ];

    private static IEnumerable<FindingPhrase> Unknown(string what, string sentence, string remedy) =>
        [
            new(
                $"gate.restraint-unknown-{what}",
                $"{sentence}, so nobody can tell whether the bench holds.",
                $"{remedy} and enter it."
            ),
        ];

    private static IEnumerable<FindingPhrase> Stopping() =>
        [
            new(
                "gate.fuel-cut-time-missing",
                "The time from the fuel cut to no fuel at the engine is not stated.",
                "Time it with a stop-watch; at most 2 s are accepted here."
            ),
            new(
                "gate.fuel-cut-slow",
                "The fuel cut takes {time}; at most 2 s are accepted here.",
                "Fit a valve close to the engine and time it again."
            ),
            new(
                "gate.fuel-cut-independence-missing",
                "It is not stated whether the fuel cut works without the engine's own controller.",
                "Try it with the controller unplugged and enter the result."
            ),
            new(
                "gate.fuel-cut-dependent",
                "The fuel cut depends on the engine's own controller.",
                "Fit a valve in the fuel line that works by hand."
            ),
            new(
                "gate.stop-people-few",
                "{people} people are placed who can stop the engine; two are asked for.",
                "Place two people with a fuel cut each, outside every sector."
            ),
            new(
                "gate.stop-triggers-missing",
                "The plan does not say what makes the crew stop the engine.",
                "Enter numbers for exhaust temperature, speed, vibration and wind, and say that anybody over the line stops the run."
            ),
        ];

    private static IEnumerable<FindingPhrase> Roof() =>
        [
            new(
                "gate.indoors-practice",
                "The engine is to run in a hall or tent. At least one maker's manual says never to run indoors.",
                "Read the manual of this engine on this point and name who decides."
            ),
            new(
                "gate.tent-fabric-certificate-missing",
                "The fire certificate of the tent's fabric is missing.",
                "Get it from the tent's owner and enter standard, class and number."
            ),
            new(
                "gate.tent-wind-limit-missing",
                "The wind speed at which the tent must be cleared is not stated.",
                "Take it from the tent's papers; the push of the jet on the fabric comes on top."
            ),
            new(
                "gate.tent-wind-within-plan",
                "The tent must be cleared at {limit}, and the plan is made for wind up to {wind}.",
                "Plan for less wind, or name who clears the tent and when."
            ),
        ];
}
