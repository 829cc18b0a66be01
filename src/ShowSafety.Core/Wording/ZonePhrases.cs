using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>How a zone is put in words.</summary>
/// <param name="Row">Row of the zones table.</param>
/// <param name="Part">Finer name inside the row; null for any that has no phrase of its own.</param>
/// <param name="Called">What the part is called behind the row's label; "{part}" is the title of a rule set.</param>
/// <param name="Matter">What it is, a clause. Placeholders: {element}, {part}.</param>
/// <param name="Edge">What draws its edge, a clause. Placeholders: {boundary}, {reach}, {element}.</param>
/// <param name="Asks">What a zone that requires something asks for, a clause.</param>
internal sealed record ZonePhrase(
    ZoneRow Row,
    string? Part,
    string Called,
    string Matter,
    string Edge,
    string Asks = ""
);

/// <summary>Phrases of all rows of the zones table and of the parts the rooms make, in English.</summary>
internal static class ZonePhrases
{
    private const string Slowed = "its edge is where the jet has slowed to {boundary}";
    private const string Cooled = "its edge is where the jet has cooled to {boundary}";
    private const string LineOf = "its edge is the line of {boundary}";
    private const string Energy = "its edge is drawn from {boundary}, the energy able to injure";

    /// <summary>All phrases; a phrase for a part stands before the one for any part of its row.</summary>
    public static ValueList<ZonePhrase> All { get; } =
    [
        new(
            ZoneRow.DirectFlight,
            "",
            "",
            "pieces of a bursting rotor can fly straight through here and injure",
            Energy
        ),
        new(
            ZoneRow.DirectFlight,
            "one-third-disc",
            "large pieces",
            "the largest pieces of a bursting rotor fly within this part of the direct flight",
            Energy
        ),
        new(
            ZoneRow.DirectFlight,
            "intermediate",
            "middle-sized pieces",
            "middle-sized pieces of a bursting rotor fly within this part of the direct flight",
            Energy
        ),
        new(
            ZoneRow.LandingArea,
            "",
            "",
            "pieces of a bursting rotor that are lobbed high can come down anywhere here",
            "its edge is the farthest landing worked out, {reach}"
        ),
        new(ZoneRow.JetSpeedPublic, "", "", "the jet is too fast for the public here", Slowed),
        new(ZoneRow.JetSpeedCrew, "", "", "the jet is too fast for crew here", Slowed),
        new(
            ZoneRow.JetSpeedCrew,
            "nothing-loose",
            "nothing loose",
            "the jet can carry loose things away from here",
            Slowed,
            "nothing loose lies or hangs there"
        ),
        new(ZoneRow.JetHeatPublic, "", "", "the jet is too hot for the public here", Cooled),
        new(ZoneRow.JetHeatCrew, "", "", "the jet is too hot for crew here", Cooled),
        Heat("tent-fabric", "tent fabric"),
        Heat("wood", "wood"),
        Heat("dry-vegetation", "dry grass or leaves"),
        Heat("paper", "paper"),
        Heat("vehicle", "vehicles"),
        new(
            ZoneRow.StartFlame,
            "",
            "",
            "flame can come out of the exhaust at a start",
            "its edge is {reach} from the nozzle, a choice"
        ),
        new(
            ZoneRow.Intake,
            "",
            "",
            "the intake draws in what comes near, and an arm can reach it",
            "its edge is {reach} from the intake"
        ),
        new(
            ZoneRow.Intake,
            "nothing-loose",
            "nothing loose",
            "the intake draws in what comes near",
            "its edge is {reach} from the intake",
            "nothing is loose on clothes, on the head or in the hand"
        ),
        new(
            ZoneRow.HotAndSpinningParts,
            "",
            "",
            "hot and spinning parts can be reached from here",
            "its edge is a reach of {boundary} from the engine"
        ),
        new(
            ZoneRow.PublishedPractice,
            "",
            "",
            "published practice keeps people who aren't needed this far away",
            "its edge is {boundary} from the engine, which stops no piece of a rotor"
        ),
        new(
            ZoneRow.HearingZone,
            "",
            "",
            "it can be loud enough here to need hearing protection",
            LineOf,
            "hearing protection is worn"
        ),
        new(ZoneRow.AudienceLimit, null, "{part}", "the noise limit for an audience is exceeded here ({part})", LineOf),
        new(ZoneRow.SoundCeiling, "level", "level", "it is too loud here for an ear without protector", LineOf),
        new(ZoneRow.SoundCeiling, "peak", "peaks", "peaks of the sound are too high here for an ear", LineOf),
        new(
            ZoneRow.SoundCeiling,
            "child-peak",
            "peaks, children",
            "peaks of the sound are too high here for the ear of a child",
            LineOf
        ),
        new(
            ZoneRow.AtTheEar,
            "",
            "",
            "none of the hearing protectors listed is enough here",
            "its edge is where the best of them leaves {boundary} at the ear"
        ),
        new(
            ZoneRow.IndoorAir,
            "",
            "",
            "the air of {element} becomes unfit for visitors",
            "it is the whole room, because {boundary} is passed in it"
        ),
        new(
            ZoneRow.FuelAndGas,
            "no-ignition-source",
            "nothing that ignites",
            "fuel or gas ({element}) could be set on fire from here",
            "its edge is {boundary} from the store",
            "nothing that could ignite it is there"
        ),
        new(
            ZoneRow.FuelAndGas,
            "reach",
            "within reach",
            "fuel or gas ({element}) can be reached from here",
            "its edge is a reach of {boundary}"
        ),
        new(
            ZoneRow.SpillFire,
            "",
            "",
            "a spill fire would radiate more here than people in ordinary clothes stand for long",
            "its edge is where the heat has fallen to {boundary}"
        ),
    ];

    private static ZonePhrase Heat(string part, string thing) =>
        new(
            ZoneRow.JetHeatMaterials,
            part,
            thing,
            $"the jet is too hot for {thing} here",
            Cooled,
            $"no {thing} {(thing.EndsWith('s') ? "are" : "is")} there"
        );
}
