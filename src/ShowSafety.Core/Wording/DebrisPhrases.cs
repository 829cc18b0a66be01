using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of the rooms of Debris, in English.</summary>
internal static class DebrisPhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } = [.. Missing, .. Odd, .. Flight, .. Screens];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [
        new("debris.burst-speed", "Speed of the wheel taken for a burst"),
        new("debris.tip-speed", "Speed of the blade tips at that speed"),
        new("debris.wheel-energy", "Energy of the turning wheel"),
        .. OfPiece("half-disc", "half of the wheel"),
        .. OfPiece("one-third-disc", "third of the wheel"),
        .. OfPiece("quarter-disc", "quarter of the wheel"),
        .. OfPiece("intermediate", "piece of intermediate size"),
        .. OfPiece("blade", "single blade"),
        new(
            "debris.direct-reach",
            "Longest direct flight of any piece until its energy has fallen to 14.9 J or it lands"
        ),
        new("debris.landing-reach", "Farthest landing of any piece with the day's wind"),
        new("debris.landing-apex", "Greatest height on the flight that lands farthest"),
        new("debris.landing-energy", "Energy at the farthest landing"),
        new("debris.small-piece-energy-per-area", "Largest energy of a piece over the face it strikes with"),
        new(
            "debris.path-share-at-10-metres",
            "Share of all directions that a person 10 m away takes up in the rotor plane, once a rotor has burst"
        ),
        new("debris.starting-thickness-steel", "Steel sheet to start a test of a screen with, not an acceptance"),
        new(
            "debris.starting-thickness-aluminium",
            "Aluminium sheet to start a test of a screen with, not an acceptance"
        ),
        new(
            "debris.starting-thickness-polycarbonate",
            "Polycarbonate sheet to start a test of a screen with, not an acceptance"
        ),
        new(
            "debris.steel-plate-thickness",
            "Steel plate by the formula for missiles, to start a test with, not an acceptance"
        ),
    ];

    private static ValueList<FindingPhrase> Missing =>
        [
            new(
                "debris.no-rotors",
                "Cannot tell where pieces of a rotor would go: the sheet of {element} lists no rotor.",
                "Ask the maker for radius, mass, position and speed of every wheel, or enter a bounding rotor."
            ),
            new(
                "debris.rotor-radius-missing",
                "Cannot tell where pieces of rotor {rotor} of {element} would go: its tip radius is not stated.",
                "Take the radius from the maker's drawing, or enter a bounding rotor."
            ),
            new(
                "debris.rotor-mass-missing",
                "Cannot tell where pieces of rotor {rotor} of {element} would go: its mass is not stated.",
                "Weigh the wheel with its blades or ask the maker."
            ),
            new(
                "debris.rotor-speed-missing",
                "Cannot tell how fast pieces of rotor {rotor} of {element} would leave: neither trip speed nor maximum speed is stated.",
                "Ask the maker for the maximum speed and measure at which speed the over-speed trip cuts the fuel."
            ),
            new(
                "debris.rotor-position-missing",
                "Cannot tell where the plane of rotor {rotor} of {element} lies along the shaft.",
                "Measure the distance from the nozzle's exit to the middle of the wheel."
            ),
            new(
                "debris.bounding-casing-missing",
                "Cannot tell: the bounding rotor {rotor} of {element} needs the diameter of the casing.",
                "Measure the outer diameter of the casing."
            ),
            new(
                "debris.bounding-thickness-missing",
                "Cannot tell: the bounding rotor {rotor} of {element} needs a mass or a thickness along the shaft.",
                "Enter the longest the wheel can be along the shaft."
            ),
            new(
                "debris.trip-speed-assumed",
                "The trip speed of rotor {rotor} of {element} is not stated: {speed}, 1.2 times the maximum speed, is assumed.",
                "Measure at which speed the over-speed trip cuts the fuel."
            ),
            new(
                "debris.blades-unknown",
                "Cannot tell how heavy a single blade of rotor {rotor} of {element} is: rim radius or number of blades is missing.",
                "Count the blades and measure the rim they stand on."
            ),
            new(
                "debris.shaft-height-assumed",
                "The height of the shaft of {element} is not stated: flights are taken from {height}, and no screen counts.",
                "Measure the height of the shaft above the ground."
            ),
        ];

    private static ValueList<FindingPhrase> Odd =>
        [
            new(
                "debris.rotor-bore-odd",
                "Cannot tell: the bore of rotor {rotor} of {element} is not smaller than the wheel.",
                "Correct the radii: both are radii, not diameters."
            ),
            new(
                "debris.rotor-rim-odd",
                "The rim of rotor {rotor} of {element} does not lie between bore and blade tips: the tip speed is taken for the rim.",
                "Correct the radii: all are radii, not diameters."
            ),
            new(
                "debris.trip-below-running-speed",
                "Rotor {rotor} of {element} is said to trip at {trip} but to run at {running}: the faster is taken.",
                "Check trip speed, maximum speed and the speeds of the throttle states."
            ),
            new(
                "debris.sheet-density",
                "Mass and size of rotor {rotor} of {element} imply {implied}, its material has about {material}.",
                "Check mass, radii, thickness and material: all speeds and reaches of pieces rest on them."
            ),
            new(
                "debris.wheel-larger-than-casing",
                "Rotor {rotor} of {element} is {wheel} across and its casing {casing}: the wheel does not fit.",
                "Check whether a diameter was entered as a radius."
            ),
            new(
                "debris.bounding-rotor",
                "A bounding rotor stands in for rotor {rotor} of {element}: {diameter} across, {mass}, {speed} at the tips.",
                "Replace it by the maker's figures: they shorten the reach."
            ),
        ];

    private static ValueList<FindingPhrase> Flight =>
        [
            new(
                "debris.direct-flight",
                "If a rotor of {element} bursts, pieces with up to {energy} leave within 15° of its plane on both sides and can hurt at up to {reach} in direct flight. The 15° are the least to plan with. Distance alone does not make the rotor plane harmless. How often rotors of this size burst is not published, and no rate is assumed.",
                "Keep everybody, crew included, out of the sectors while the rotor turns, or stop the pieces with a screen tested for them."
            ),
            new(
                "debris.landing-area",
                "Pieces of {element} thrown upwards can come down anywhere within {reach}, the hardest with {energy}. No field is large enough to empty this area.",
                "Let a named person who may do so accept the landing area in writing, knowing who is inside it."
            ),
            new(
                "debris.landing-area-accepted",
                "{by} has accepted that pieces of {element} thrown upwards can come down within {reach}, the hardest with {energy}.",
                "Check that the acceptance still fits the plan."
            ),
            new(
                "debris.eye-protection",
                "Small pieces of {element} strike with up to {energy}; {rupture} ruptures half of the eyes struck. Energy alone understates small pieces.",
                "Let the crew wear impact-rated goggles or a face shield whenever the rotor turns."
            ),
        ];

    private static ValueList<FindingPhrase> Screens =>
        [
            new(
                "debris.screen-holds",
                "The test of screen {element} covers every piece of {engine}: level flight is cut off behind it. Pieces thrown over it still come down.",
                "Build the screen as it was tested: sheet, fixing and ground."
            ),
            new(
                "debris.screen-without-evidence",
                "Cannot tell whether screen {element} holds pieces of {engine}: a test with energy, mass and face of the projectile and its report is missing. It counts as holding nothing.",
                "Have a sample of the screen tested, or keep everybody out of the sectors."
            ),
            new(
                "debris.screen-test-too-weak",
                "The test of screen {element} does not cover a piece of rotor {rotor} of {engine}: {energy}, {edge} across edge on. It counts as holding nothing.",
                "Test a stronger sheet with a projectile that is no blunter, or keep everybody out of the sectors."
            ),
            new(
                "debris.screen-projectile-too-light",
                "The projectile of the test of screen {element} was lighter than a piece of rotor {rotor} of {engine}: {mass}. It counts as holding nothing.",
                "Test with a projectile at least as heavy, or keep everybody out of the sectors."
            ),
            new(
                "debris.screen-acrylic",
                "Screen {element} is acrylic, which holds a 100 g projectile to about 25 m/s only. It counts as holding nothing against pieces of {engine}.",
                "Use steel, aluminium or polycarbonate, tested for these pieces."
            ),
            new(
                "debris.screen-pieces-unknown",
                "Cannot tell whether screen {element} holds every piece of {engine}: a rotor is not known.",
                "Complete the rotor sheet."
            ),
            new(
                "debris.screen-height-unknown",
                "Cannot tell whether screen {element} stands in the line of flight from {engine} to a standing person's head: a height is missing. It counts as holding nothing.",
                "Measure the height of the screen and of the shaft."
            ),
            new(
                "debris.screen-too-low",
                "Screen {element} is lower than {needed}: pieces of {engine} can fly over it to a standing person's head. It counts as holding nothing.",
                "Make the screen at least {needed} high, from the ground up."
            ),
            new(
                "debris.screen-too-short",
                "Screen {element} is too short or too close to {engine} to hide any ground from every part of its wheels.",
                "Make the screen longer or move it away from the wheels."
            ),
            new(
                "debris.screen-beside",
                "Screen {element} stands in no rotor's sectors and stops nothing.",
                "Move it into the sectors, or take it off the plan."
            ),
        ];

    private static ValueList<FigurePhrase> OfPiece(string key, string name) =>
        [
            new($"debris.{key}-mass", $"Mass of a {name}"),
            new($"debris.{key}-speed", $"Speed of a {name} at release"),
            new($"debris.{key}-energy", $"Energy of flight of a {name} at release"),
            new($"debris.{key}-direct-reach", $"Level flight of a {name} until its energy has fallen to 14.9 J"),
            new($"debris.{key}-landing-reach", $"Farthest landing of a {name}"),
        ];
}
