using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences and remedies for plans that do not make sense, in English.</summary>
internal static class PlanPhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } =
    [
        new(
            "plan.no-engine",
            "The plan has no engine, so nothing can be told about it.",
            "Put the engine on the plan and fill in its sheet."
        ),
        new("plan.id-used-twice", "Two elements of the plan have the id \"{id}\".", "Give one of them another id."),
        new(
            "plan.unknown-engine",
            "Run {run} names the engine \"{engine}\", which is not on the plan.",
            "Choose an engine of the plan for the run, or delete the run."
        ),
        new(
            "plan.evidence-twice",
            "There are two records of evidence for the engine \"{engine}\".",
            "Keep the one that is true."
        ),
        new(
            "plan.unknown-state",
            "Run {run} of {element} uses the throttle state \"{state}\", which its sheet does not have.",
            "Choose a throttle state of the sheet, or add it."
        ),
        new(
            "plan.measurement-of-unknown-state",
            "Sound measurement {measurement} of {element} belongs to the throttle state \"{state}\", which its sheet does not have.",
            "Choose the throttle state the engine ran at while measuring."
        ),
        new(
            "plan.unknown-protector",
            "{element} should wear the hearing protector \"{protector}\", which is not listed.",
            "Choose a protector of the list, or add it with its ratings."
        ),
        new(
            "plan.acceptance-of-unknown",
            "The decision on {finding} names \"{id}\", which is not on the plan.",
            "Check whether the decision still belongs to this plan."
        ),
        new(
            "plan.engine-off-site",
            "{element} stands outside the site.",
            "Move the engine onto the site, or correct the site's outline."
        ),
        new(
            "plan.bench-off-site",
            "The bench of {element} reaches beyond the edge of the site.",
            "Move the bench, or correct the site's outline."
        ),
        new(
            "plan.exit-off-edge",
            "The exit {element} is more than a metre from the edge of the site and of the hall or tent.",
            "Draw the exit in the edge it leads through."
        ),
        new(
            "plan.surrounding-without-edge",
            "What lies beyond edge {edge} is described, but the site has no such edge.",
            "Describe the edges the outline has."
        ),
        new(
            "plan.surrounding-twice",
            "What lies beyond edge {edge} of the site is described twice.",
            "Keep the description that is true."
        ),
        new(
            "plan.ridge-below-eaves",
            "The ridge of {element} ({ridge}) is lower than its eaves ({eaves}).",
            "Measure both heights again."
        ),
        new(
            "plan.side-without-wall",
            "Side {side} of {element} is described, but its footprint has no such side.",
            "Describe the sides the footprint has."
        ),
        new("plan.side-twice", "Side {side} of {element} is described twice.", "Keep the description that is true."),
        new(
            "plan.enclosure-off-site",
            "{element} stands partly outside the site.",
            "Move it, or correct the site's outline."
        ),
        new(
            "plan.engine-outside-enclosure",
            "{element} stands outside the hall or tent of the plan.",
            "Check that the engine really runs in the open."
        ),
        new(
            "plan.enclosure-lower-than-shaft",
            "The walls of the hall or tent ({eaves}) are no higher than the shaft of {element} ({shaft}).",
            "Measure both heights again."
        ),
        new(
            "plan.rim-beyond-tip",
            "Rotor {rotor} of {element}: the rim ({value}) is larger than the blade tips ({limit}).",
            "Measure both radii again."
        ),
        new(
            "plan.bore-beyond-rim",
            "Rotor {rotor} of {element}: the bore ({value}) is larger than the rim ({limit}).",
            "Measure both radii again."
        ),
        new(
            "plan.rotor-larger-than-casing",
            "Rotor {rotor} of {element}: its diameter ({value}) is larger than the casing ({limit}).",
            "Check whether a diameter was given as a radius."
        ),
        new(
            "plan.rotor-beyond-intake",
            "Rotor {rotor} of {element} lies {value} from the nozzle, but the engine is only {limit} long.",
            "Measure both from the nozzle's exit."
        ),
        new(
            "plan.trip-below-maximum-speed",
            "Rotor {rotor} of {element}: the over-speed trip ({trip}) is below the highest rated speed ({maximum}).",
            "Check both speeds."
        ),
        new(
            "plan.state-above-maximum-speed",
            "Throttle state {state} of {element} turns at {speed}; rotor {rotor} is rated for {maximum}.",
            "Lower the throttle state, or check the rating."
        ),
        new(
            "plan.state-order",
            "{element}: throttle state {faster} turns faster than {slower} but gives less thrust or burns less fuel.",
            "Check whether two rows of the sheet are mixed up."
        ),
        new(
            "plan.weather-band-empty",
            "The lowest temperature of the plan ({lowest}) is above the highest ({highest}).",
            "Swap or correct them."
        ),
        new(
            "plan.engine-without-run",
            "{element} has no run in the programme.",
            "Add its runs, or take the engine off the plan."
        ),
        new(
            "plan.run-outside-event",
            "Run {run} of {element} is on a day that is not a day of the event.",
            "Correct the day of the run or the days of the event."
        ),
        new("plan.run-past-midnight", "Run {run} of {element} ends after midnight.", "Start it earlier or shorten it."),
        new("plan.runs-overlap", "Runs {first} and {second} of {element} overlap.", "Move one of them."),
        new(
            "plan.group-without-place",
            "Nobody knows where {element} will be.",
            "Draw the area they keep to, or their place."
        ),
        new(
            "plan.presence-backwards",
            "{element} should be there from {from} to {to}, which is no time at all.",
            "Correct the times."
        ),
        new("plan.group-of-nobody", "{element} has no people in it.", "Enter how many there are, or delete the group."),
        new("plan.people-in-bench", "{element} is drawn on the bench of {engine}.", "Move the people or the engine."),
        new(
            "plan.group-off-site",
            "{element} is drawn partly outside the site.",
            "Move them, or call them neighbours."
        ),
    ];

    /// <summary>Labels of figures: the check calculates none.</summary>
    public static ValueList<FigurePhrase> Figures { get; } = [];
}
