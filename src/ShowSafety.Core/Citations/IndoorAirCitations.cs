using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Citations;

/// <summary>Sources of the rooms about indoor air.</summary>
public static class IndoorAirCitations
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<Citation> All { get; } =
    [
        new(
            "aegl-co",
            "US EPA acute exposure guideline levels, carbon monoxide, AEGL-2",
            "",
            "",
            Basis.Memory,
            "public guidance"
        ),
        new(
            "aegl-no2",
            "US EPA acute exposure guideline levels, nitrogen dioxide, AEGL-1",
            "",
            "",
            Basis.Memory,
            "public guidance"
        ),
        new(
            "alpert-1972",
            "Alpert, Calculation of response time of ceiling-mounted fire detectors, Fire Technology 8:181",
            "1972",
            "",
            Basis.Memory,
            "hot air under the roof"
        ),
        new(
            "ashrae-62-1",
            "ASHRAE 62.1, Ventilation for Acceptable Indoor Air Quality",
            "",
            "annex on carbon dioxide",
            Basis.Memory,
            "check of people's carbon dioxide"
        ),
        new(
            "choice-heat-stays-inside",
            "Choice of this project: exhaust blown into an enclosure stays there with all its heat",
            "",
            "",
            Basis.Choice,
            "which engines foul the room"
        ),
        new(
            "choice-largest-rise",
            "Choice of this project: a well-mixed room is not calculated beyond a rise of 30 K",
            "",
            "",
            Basis.Choice,
            "range of the room model"
        ),
        new(
            "choice-mixing-factor",
            "Choice of this project: half of the stated fresh air counts, because it mixes unevenly",
            "",
            "",
            Basis.Choice,
            "fresh air to plan with"
        ),
        new(
            "choice-public-co2",
            "Choice of this project: the eight-hour limit of EH40 for carbon dioxide, held over any 15 min for visitors",
            "",
            "",
            Basis.Choice,
            "visitors' carbon dioxide"
        ),
        new(
            "choice-room-heat",
            "Choice of this project: room air to 38 °C for visitors, to 45 °C for crew",
            "",
            "",
            Basis.Choice,
            "room temperature"
        ),
        new(
            "combustion-balance",
            "Mole balance of complete combustion",
            "",
            "exact",
            Basis.Derived,
            "combustion products"
        ),
        new(
            "combustion-efficiency",
            "Combustion efficiency from emission indices, heating value of carbon monoxide 10.1 MJ/kg",
            "",
            "exact",
            Basis.Derived,
            "bound on carbon monoxide"
        ),
        new(
            "eh40",
            "EH40/2005, Workplace exposure limits",
            "4th edition, 2020",
            "Table 1",
            Basis.Memory,
            "limits at work"
        ),
        new("en-54-5", "EN 54-5, Point heat detectors", "2017", "class A1", Basis.Memory, "heat detectors"),
        new(
            "iso-13571-fed",
            "ISO 13571, Life-threatening components of fire",
            "2012",
            "asphyxiants",
            Basis.Memory,
            "dose of carbon monoxide"
        ),
        new(
            "kerosene-formula",
            "Xu, Wang et al., average formula of jet kerosene C11.4H21.7",
            "2015",
            "",
            Basis.Read,
            "combustion products"
        ),
        new("niosh-co", "NIOSH Pocket Guide, carbon monoxide, ceiling 200 ppm", "", "", Basis.Read, "limits at work"),
        new(
            "niosh-idlh",
            "NIOSH, concentrations immediately dangerous to life or health",
            "",
            "",
            Basis.Memory,
            "danger to everyone"
        ),
        new(
            "nrc-no2",
            "US National Research Council, short-term public guidance for nitrogen dioxide, in NIOSH's documentation",
            "1994",
            "",
            Basis.Read,
            "public guidance"
        ),
        new(
            "room-balance",
            "Mass and heat balance of one well-mixed room",
            "",
            "exact",
            Basis.Derived,
            "air of the room"
        ),
        new(
            "who-air-2000",
            "WHO, Air Quality Guidelines for Europe",
            "2nd edition, 2000",
            "carbon monoxide",
            Basis.Read,
            "public guidance"
        ),
        new(
            "who-air-2010",
            "WHO, Guidelines for Indoor Air Quality: selected pollutants",
            "2010",
            "nitrogen dioxide",
            Basis.Memory,
            "public guidance"
        ),
    ];
}
