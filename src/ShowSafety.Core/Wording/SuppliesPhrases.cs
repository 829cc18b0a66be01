using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of fuel, gas and extinguishers, in English.</summary>
internal static class SuppliesPhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } =
    [.. Separations(), .. Stores(), .. Extinguishers(), .. Spill()];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [
        new("supplies.spill-area", "Area the largest spill covers"),
        new("supplies.spill-heat-release", "Heat release of its fire"),
        new("supplies.spill-flame-height", "Height of its flame"),
        new("supplies.spill-radiation-distance", "Distance at which its radiation has fallen to 1.6 kW/m²"),
        new("supplies.gas-mixture", "Air and gas that can be lit if the whole cylinder leaks"),
    ];

    private static IEnumerable<FindingPhrase> Separations() =>
        [
            Near("fuel", "engine", "the engine {other}"),
            Near("fuel", "battery", "the battery {other}"),
            Near("gas", "engine", "the engine {other}"),
            Near("gas", "battery", "the battery {other}"),
            Near("gas", "burnable", "{other}, which burns"),
            Near("gas", "fuel", "the fuel {other}"),
            Near("gas", "opening", "the exit {other}"),
            Near("gas", "building", "the wall or building {other}"),
            new(
                "supplies.gas-near-boundary",
                "The gas {element} stands {gap} from the edge of the site; {needed} is the listed distance.",
                "Move the gas, or the edge."
            ),
        ];

    private static FindingPhrase Near(string store, string what, string other) =>
        new(
            $"supplies.{store}-near-{what}",
            $"The {store} {{element}} stands {{gap}} from {other}; {{needed}} is the listed distance.",
            "Move one of them away, and bring only what a run needs."
        );

    private static IEnumerable<FindingPhrase> Stores() =>
        [
            new(
                "supplies.fuel-not-on-plan",
                "The plan does not show where fuel is kept.",
                "Draw every container and enter what it holds."
            ),
            new(
                "supplies.fuel-amount-missing",
                "The amount of fuel in {element} is not stated; the largest listed distance is used.",
                "Enter the litres."
            ),
            new(
                "supplies.fuel-indoors",
                "The fuel {element} stands in the hall or tent.",
                "Keep fuel outside and bring in only what one run needs."
            ),
            new(
                "supplies.petrol-notice",
                "{amount} of petrol are on site. In England more than 30 L must be notified.",
                "Ask your petroleum authority; other countries have other limits."
            ),
            new(
                "supplies.petrol-licence",
                "{amount} of petrol are on site. In England more than 275 L need a licence.",
                "Bring less, or ask your petroleum authority."
            ),
            new(
                "supplies.gas-amount-missing",
                "The content of the gas cylinder {element} is not stated; the larger listed distance is used.",
                "Weigh the cylinder or read its label."
            ),
            new(
                "supplies.gas-indoors",
                "The gas {element} stands in the hall or tent. Published rules keep cylinders in the open air.",
                "Keep it outside, away from openings and drains: the gas is heavier than air."
            ),
            new(
                "supplies.gas-powder-few",
                "{there} powder extinguishers of 9 kg stand by; for the gas on site {wanted} are listed.",
                "Keep them at the gas, not at the engine."
            ),
        ];

    private static IEnumerable<FindingPhrase> Extinguishers() =>
        [
            new(
                "supplies.extinguisher-none",
                "No fire extinguisher is on the plan.",
                "Place a carbon dioxide extinguisher at each engine and an ordinary one on site."
            ),
            new(
                "supplies.extinguisher-not-at-engine",
                "No carbon dioxide or foam extinguisher of at least {least} stands within {reach} of {element}.",
                "Place one there, to the side, with a person who can use it."
            ),
            new(
                "supplies.extinguisher-content-missing",
                "The content of the extinguisher at {element} is not stated; at least {least} within {reach} are asked for.",
                "Read the label and enter the kilograms."
            ),
            new(
                "supplies.extinguisher-powder-only",
                "All extinguishers hold powder. An engine that draws powder in needs an overhaul.",
                "Add carbon dioxide; keep powder for the gas."
            ),
            new(
                "supplies.extinguisher-no-ordinary",
                "All extinguishers hold carbon dioxide, which leaves things hot enough to burn again.",
                "Add an ordinary extinguisher, foam or water, for what is around the engine."
            ),
            new(
                "supplies.extinguisher-class-a-short",
                "The floor of {element} asks for {wanted}A in all; the labels entered add up to {there}A.",
                "Add extinguishers with a class A rating, or enter the labels of those there."
            ),
        ];

    private static IEnumerable<FindingPhrase> Spill() =>
        [
            new(
                "supplies.spill-amount-missing",
                "The largest amount of fuel that can spill is not stated, so the fire of a spill was not calculated.",
                "Enter the litres in tank and lines at the engine."
            ),
            new(
                "supplies.spill-fuel-missing",
                "The fuel of {element} is not stated, so the fire of a spill was not calculated.",
                "Enter the fuel."
            ),
            new(
                "supplies.spill-gas-not-calculated",
                "{element} burns gas. The fire of a gas leak is not calculated here.",
                "Ask the fire authority about it."
            ),
            new(
                "supplies.spill-rating-missing",
                "No class B rating is entered for the extinguishers at {element}.",
                "Read the number before the B on the label and enter it."
            ),
            new(
                "supplies.spill-beyond-rating",
                "The largest spill at {element} burns on {area}; the strongest extinguisher there is rated for {rated}.",
                "Use less fuel or a small tray that holds the spill, and cut the fuel first."
            ),
        ];
}
