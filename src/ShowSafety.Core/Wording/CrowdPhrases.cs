using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of the crowd, in English.</summary>
internal static class CrowdPhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } = [.. People(), .. Exits(), .. Barrier(), .. Watching()];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [
        new("crowd.capacity-by-area", "Visitors the viewing areas hold"),
        new("crowd.capacity-by-exits", "People the exits let out in time without the widest one"),
        new("crowd.panels", "Barrier panels for the crowd line"),
        new("crowd.reach-over-barrier", "Reach over the barrier towards hot and spinning parts"),
        new("crowd.highest-ambient-for-alarm", "Highest ambient level over which an alarm can be heard"),
    ];

    private static IEnumerable<FindingPhrase> People() =>
        [
            new(
                "crowd.visitors-not-on-plan",
                "The plan shows no visitors, so room and ways out were not checked.",
                "Draw where visitors stand and enter how many come."
            ),
            new(
                "crowd.adults-missing",
                "The number of adults in {element} is not stated.",
                "Ask the organiser for the most people expected at once."
            ),
            new(
                "crowd.children-missing",
                "The number of children in {element} is not stated.",
                "Ask the organiser, and count on children at a public event."
            ),
            new(
                "crowd.visitor-area-missing",
                "The area {element} keeps to is not drawn.",
                "Draw the area visitors stand in."
            ),
            new(
                "crowd.area-too-small",
                "{people} are expected where {capacity} have room.",
                "Make the area larger, or let fewer in at once."
            ),
        ];

    private static IEnumerable<FindingPhrase> Exits() =>
        [
            new(
                "crowd.exits-missing",
                "No way out is drawn for the visitors, so nobody can tell whether they get out in time.",
                "Draw every exit and enter its clear width."
            ),
            new(
                "crowd.one-exit",
                "{element} is the only way out. If it can't be used nobody gets out.",
                "Open a second exit on another side."
            ),
            new(
                "crowd.exit-width-missing",
                "The clear width of the exit {element} is not stated; it was not counted.",
                "Measure it with a tape."
            ),
            new(
                "crowd.exits-too-small",
                "{people} would have to leave, and without the widest exit {capacity} get out in time.",
                "Open or widen exits, or let fewer in at once."
            ),
        ];

    private static IEnumerable<FindingPhrase> Barrier() =>
        [
            new(
                "crowd.line-missing",
                "The plan has no crowd line, so what visitors can reach can't be told.",
                "Draw the line and enter height and infill of the barrier."
            ),
            new(
                "crowd.panel-length-missing",
                "The length of a barrier panel is not stated, so panels were not counted.",
                "Measure one panel."
            ),
            new(
                "crowd.barrier-stops-no-piece",
                "A pedestrian barrier marks the line. It stops no piece of a rotor and no pressing crowd.",
                "Check ground, wind and hooks of the barrier on the day."
            ),
            new(
                "crowd.barrier-height-missing",
                "The height of the barrier is not stated; the longest listed reach is used.",
                "Measure it with a tape."
            ),
            new(
                "crowd.barrier-too-low",
                "The barrier is {height} high. The table of reach lists none under 1 m.",
                "Use a barrier of at least 1.0 m, better 1.4 m."
            ),
            new(
                "crowd.barrier-needs-stewards",
                "The barrier is {height} high. Under 1.4 m it is not enough on its own.",
                "Keep stewards at the line while the engine is hot or runs."
            ),
            new("crowd.rope-is-no-barrier", "A rope keeps nobody from reaching over.", "Use panels."),
            new(
                "crowd.barrier-infill-missing",
                "It is not stated what fills the barrier, so nobody can tell what children can reach.",
                "Enter rails, mesh or closed sheets."
            ),
            new(
                "crowd.children-reach-through",
                "The barrier has rails. The table of reach is for people of 14 and over; what children reach through it can't be told.",
                "Use mesh or closed sheets, or keep a larger gap and name who watches it."
            ),
            new(
                "crowd.shaft-height-missing",
                "The shaft height of {element} is not stated; the longest reach over this barrier is used.",
                "Measure it with a tape."
            ),
            new(
                "crowd.engine-length-missing",
                "The length of {element} is not stated; {assumed} is assumed.",
                "Measure it with a tape."
            ),
            new(
                "crowd.casing-diameter-missing",
                "The casing diameter of {element} is not stated; {assumed} is assumed.",
                "Measure it with a tape."
            ),
        ];

    private static IEnumerable<FindingPhrase> Watching() =>
        [
            new(
                "crowd.published-practice",
                "Published practice keeps people who aren't needed {distance} away; others say 9 m or 7.6 m. That does not stop a piece.",
                "Keep this distance and the ones calculated here, whichever is larger."
            ),
            new(
                "crowd.steward-posts-missing",
                "No steward's post is on the plan.",
                "Place stewards at the line; each gives a clear sign before light-up."
            ),
            new(
                "crowd.wheelchair-places-missing",
                "No place for wheelchair users is on the plan.",
                "Keep level firm ground with a clear way, 1.4 m by 0.9 m at least, and plan how they get out."
            ),
            new(
                "crowd.alarm-by-eye",
                "Over {ambient} no alarm can be heard, and ear-muffs take more away.",
                "Agree on hand signals and lights; the signal for danger is the fuel cut."
            ),
        ];
}
