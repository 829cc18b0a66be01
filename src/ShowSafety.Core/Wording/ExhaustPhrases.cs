using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of the rooms of Exhaust, in English.</summary>
internal static class ExhaustPhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } =
    [
        new(
            "exhaust.thrust-missing",
            "No thrust is known for {state} of {element}, and it does not follow from mass flow and exhaust speed. How far the jet reaches cannot be told.",
            "Measure the thrust with a spring balance, or take thrust, air mass flow and exhaust speed from the maker's sheet."
        ),
        new(
            "exhaust.thrust-bounded",
            "No thrust is known for {state} of {element}; a state of at least the same shaft speed stands in for it.",
            "Measure the thrust of this state too."
        ),
        new(
            "exhaust.thrust-derived",
            "The thrust of {state} of {element} is not stated; {thrust} follows from mass flow and exhaust speed.",
            "Check it with a spring balance."
        ),
        new(
            "exhaust.temperature-missing",
            "The exhaust temperature of {state} of {element} is not known. How far the hot air reaches cannot be told.",
            "Measure the exhaust temperature or take it from the maker's sheet."
        ),
        new(
            "exhaust.flow-missing",
            "The heat of the exhaust of {state} of {element} is not known: air mass flow and fuel flow are both missing. How far the hot air reaches cannot be told.",
            "Find out the air mass flow from the maker, or weigh the fuel burnt in a minute."
        ),
        new(
            "exhaust.heat-from-fuel",
            "The heat of the exhaust of {state} of {element} is taken as that of all its fuel, {heat}.",
            "Find out air mass flow and exhaust temperature and check them against the fuel."
        ),
        new(
            "exhaust.thrust-disagrees",
            "The sheet of {element} disagrees with itself at {state}: the thrust is stated as {thrust}, mass flow times exhaust speed give {product}. The odd one is probably: {odd}. The larger thrust is used for the jet's speed, the smaller for its heat.",
            "Measure the thrust and ask the maker for the other two."
        ),
        new(
            "exhaust.fuel-air-unusual",
            "At {state}, {element} burns {ratio} of fuel in its air, which is unusual for an engine of this size. The odd one is probably: {odd}.",
            "Weigh the fuel burnt in a minute and check the air mass flow with the maker."
        ),
        new(
            "exhaust.consumption-unusual",
            "At {state}, {element} burns {consumption} kg of fuel per newton and hour, which is unusual for an engine of this size. The odd one is probably: {odd}.",
            "Weigh the fuel burnt in a minute and measure the thrust."
        ),
        new(
            "exhaust.energy-disagrees",
            "At {state} the exhaust of {element} would carry {carried} while its fuel releases {released}. The odd one is probably: {odd}.",
            "Check exhaust temperature, fuel flow and air mass flow."
        ),
        new(
            "exhaust.nozzle-choked",
            "At {state}, {element} would blow at {speed} with {temperature}: that is the speed of sound or more, so the nozzle is choked or a value is wrong. Thrust may be more than mass flow times speed.",
            "Measure the thrust with a spring balance."
        ),
        new(
            "exhaust.day-as-hot-as-limit",
            "The plan holds for air up to {air}, about as hot as the limit of {limit}. The zone is drawn for a rise of {rise}; on such a day the limit cannot be kept anywhere.",
            "State the highest air temperature at which the engine will be run."
        ),
        new(
            "exhaust.meets-floor",
            "The jet of {element} may meet the floor from {distance} behind the nozzle. From there it clings to it, reaches farther and spreads sideways; the zones allow for it.",
            "Raise the shaft or turn the exhaust to open ground to shorten the zones."
        ),
        new(
            "exhaust.inside-enclosure",
            "{element} runs inside. Its heat zones start from air of {air}; as the room warms they grow, which is not calculated here.",
            "See what is said about the air inside, and keep runs short."
        ),
        new(
            "exhaust.beside-wall",
            "The jet of {element} runs along a wall and reaches farther because of it; the zones allow for it.",
            "Turn the exhaust away from the wall."
        ),
        new(
            "exhaust.thing-in-heat",
            "{element} lies where the exhaust of {engine} may be hotter than it bears, {limit}.",
            "Clear it away, or turn or move the engine."
        ),
        new(
            "exhaust.loose-things-in-jet",
            "{element} lies where the exhaust of {engine} may blow faster than {limit}: loose things become missiles.",
            "Clear it away, or turn or move the engine."
        ),
        new(
            "exhaust.wall-heat-unknown",
            "The jet of {engine} strikes {element} {distance} behind the nozzle with {pressure}; how hot it gets cannot be told.",
            "Find out the exhaust temperature, or turn the exhaust away."
        ),
        new(
            "exhaust.fabric-wall-too-hot",
            "The exhaust of {engine} strikes the fabric of {element} {distance} behind the nozzle, at {temperature} and {pressure}. Coated fabric softens there and may burn. The jet along the wall is not calculated.",
            "Turn the exhaust to a side that stands wholly open, or run the engine outside."
        ),
        new(
            "exhaust.wall-hot",
            "The exhaust of {engine} strikes {element} {distance} behind the nozzle, at {temperature} and {pressure}. Wood near such heat may catch fire in time. The jet along the wall is not calculated.",
            "Turn the exhaust away, or have the wall checked by somebody competent and watched."
        ),
        new(
            "exhaust.wall-in-jet",
            "The jet of {engine} strikes {element} {distance} behind the nozzle, at {temperature} and {pressure}. Where it goes along the wall is not calculated.",
            "Keep people and loose things away from both ends of the wall, or turn the exhaust."
        ),
        new(
            "exhaust.deflector-in-jet",
            "The jet of {engine} strikes the deflector {element} {distance} behind the nozzle, at {temperature} and {pressure}. No zone is shortened for it.",
            "Have the deflector's hold and its heat checked by somebody competent."
        ),
        new(
            "exhaust.fabric-wall-load",
            "The jet of {engine} may press on the fabric of {element} with {pressure}; tents are designed for wind of about {design}.",
            "Turn the exhaust away from the fabric, or ask the tent's maker."
        ),
        new(
            "exhaust.intake-place-missing",
            "Where the intake of {element} lies is not known, so the zone round it cannot be drawn.",
            "Measure the length from the nozzle to the intake."
        ),
        new(
            "exhaust.intake-flow-missing",
            "The air mass flow of {element} is not known; round the intake only an arm's reach is kept, and how far it pulls at loose cloth cannot be told.",
            "Find out the air mass flow from the maker."
        ),
    ];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [
        new("exhaust.thrust", "Thrust, largest of all throttle states"),
        new("exhaust.floor-contact", "Jet meets the floor, distance behind the nozzle"),
        new("exhaust.speed-reach-public", "Reach of the jet's speed for the public"),
        new("exhaust.speed-reach-crew", "Reach of the jet's speed for crew"),
        new("exhaust.heat-reach-public", "Reach of the hot air for the public"),
        new("exhaust.heat-reach-crew", "Reach of the hot air for crew"),
        new("exhaust.heat-reach-tent-fabric", "Reach of air too hot for tent fabric"),
        new("exhaust.heat-reach-wood", "Reach of air too hot for wood"),
        new("exhaust.heat-reach-dry-vegetation", "Reach of air too hot for dry grass and straw"),
        new("exhaust.heat-reach-paper", "Reach of air too hot for paper"),
        new("exhaust.heat-reach-vehicle", "Reach of air too hot for a vehicle with fuel"),
        new("exhaust.intake-reach", "Reach of the intake's pull on loose cloth"),
        new("exhaust.wall-distance", "Wall in the jet, distance behind the nozzle"),
        new("exhaust.wall-pressure", "Wall in the jet, pressure"),
        new("exhaust.wall-temperature", "Wall in the jet, air temperature"),
    ];
}
