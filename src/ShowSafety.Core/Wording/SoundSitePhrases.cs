using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences about the site as sound meets it.</summary>
internal static class SoundSitePhrases
{
    /// <summary>All of them.</summary>
    public static ValueList<FindingPhrase> All { get; } =
    [
        new(
            "sound.air-assumed",
            "Temperature or humidity of the air is not stated; 10 °C and 70 % stand in for what is missing.",
            "Enter the air of the day."
        ),
        new(
            "sound.soft-ground-credited",
            "Grass and other soft ground on the plan takes something off levels farther away (ISO 9613-2:1996, general method); the floor of a hall or tent counts as hard.",
            "Draw every path, road and boarded area as a patch of its own: hard ground that is missing makes levels too low."
        ),
        new(
            "sound.gravel-assumed",
            "Loose gravel is neither of the two kinds of ground of ISO 9613-2:1996; it counts as half hard, half soft.",
            "Enter a ground factor of its own where you know better; 0 is the cautious one."
        ),
        new(
            "sound.structures-counted",
            "Walls, buildings, screens and deflectors on the plan throw sound back where they are large enough. At a place behind one, what it takes off counts; hearing zones and areas are drawn as if nothing screened.",
            "Check that what is drawn will stand there, closed and without gaps."
        ),
        new(
            "sound.structure-shields-nobody",
            "{element} has no stated height, or no stated mass of 10 kg/m² or more: it throws sound back but takes nothing off behind it.",
            "State height and mass per area if it is meant to shield somebody."
        ),
        new(
            "sound.wind-outside-method",
            "The plan holds for wind up to {wind}; the method for sound outdoors holds for light wind, up to {most}.",
            "Downwind of the engine it may be louder than shown: measure at the crowd line on the day."
        ),
        new(
            "sound.distance-outside-method",
            "{element} is {distance} from an engine; how well the method for sound outdoors does is stated up to {most} only.",
            "Measure there if the level matters."
        ),
        new(
            "sound.engine-outside-enclosure",
            "{element} stands outside the hall or tent; its walls are not counted, inside or out.",
            "Check that the engine is drawn where it will run."
        ),
        new(
            "sound.walls-not-credited",
            "Outside {element} no wall or fabric takes anything off the direct sound, and the sound of the room that gets out is added.",
            "Nothing to do: the levels are on the high side."
        ),
        new(
            "sound.enclosure-cannot-tell",
            "The outline or the height of {element} is missing or makes no sense: the level inside cannot be told.",
            "Measure the height at the eaves and draw the outline."
        ),
        new(
            "sound.material-assumed",
            "A material of {element} is not named; the least absorbing one is assumed.",
            "Name the materials of floor, walls and roof."
        ),
        new(
            "sound.material-unknown",
            "Nothing is known of the material {material} of {element}; the least absorbing one is assumed.",
            "Choose a material of the list, or enter absorption coefficients."
        ),
        new(
            "sound.fabric-mass-assumed",
            "The mass per area of the fabric of {element} is not stated; {mass} is assumed, a heavy fabric that reflects more.",
            "Ask the maker of the tent for the mass per area."
        ),
        new(
            "sound.enclosure-side-unknown",
            "{element} has no side {side}; the entry is not used.",
            "Sides count from 0, from the first point of the outline to the second."
        ),
        new(
            "sound.diffuse-model-outside-range",
            "{element} is long, flat, of fabric or partly open, where the theory of rooms is outside its range; the sound of the room is doubled (3 dB).",
            "Measure the level at the crowd line during a trial run."
        ),
    ];
}
