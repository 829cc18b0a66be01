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
            "sound.soft-ground-not-credited",
            "Grass and other soft ground would take something off far levels; here the ground counts as hard everywhere.",
            "Nothing to do: the levels are on the high side."
        ),
        new(
            "sound.structures-reflect",
            "Walls, buildings and screens on the plan count as endless mirrors of sound on the engine's side and shield nobody.",
            "Nothing to do: the levels are on the high side."
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
