using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Citations;

/// <summary>Sources of the rooms about debris.</summary>
public static class DebrisCitations
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<Citation> All { get; } = [.. Burst, .. Flight, .. Injury, .. Screens, .. Choices];

    private static ValueList<Citation> Burst =>
        [
            new(
                DebrisSources.AirworthinessModel,
                "FAA AC 20-128A and EASA AMC 20-128A, Design considerations for minimizing hazards caused by uncontained engine failure",
                "1997; AMC by ED Decision 2003/12/RM",
                "paragraph 9 (fragments and spread angles)",
                Basis.Memory,
                "pieces of a burst and their spread about the rotor plane"
            ),
            new(
                DebrisSources.AnglesTooNarrow,
                "DOT/FAA/AR-99/11, Large engine uncontained debris analysis",
                "1999",
                "conclusions",
                Basis.Read,
                "the spread angles of AC 20-128A are found too narrow, so they are the least to plan with"
            ),
            new(
                DebrisSources.BurstMechanics,
                "Mechanics of a turning disc broken into equal sectors",
                "",
                "conservation of energy and momentum",
                Basis.Derived,
                "speed and energy of the pieces"
            ),
            new(
                DebrisSources.ThreePieces,
                "Hagg and Sankey, The containment of disk burst fragments by cylindrical shells, J. Eng. Power",
                "1974",
                "three-piece burst",
                Basis.Memory,
                "three pieces as the usual worst case"
            ),
            new(
                DebrisSources.Densities,
                "Densities of nickel alloy, steel, titanium and aluminium as used in the trade",
                "",
                "",
                Basis.CommonPractice,
                "check of the rotor sheet against itself"
            ),
        ];

    private static ValueList<Citation> Flight =>
        [
            new(
                DebrisSources.MeanShadow,
                "Cauchy's surface area theorem",
                "",
                "mean shadow of a convex body = surface/4; of a convex outline = perimeter/π",
                Basis.Derived,
                "area of a tumbling piece"
            ),
            new(
                DebrisSources.QuadraticDrag,
                "Flight with quadratic drag: closed forms and equations of motion",
                "",
                "",
                Basis.Derived,
                "speed, energy, time, reach"
            ),
            new(
                DebrisSources.BestRange,
                "Baker and others, NASA CR-134906, Workbook for predicting pressure wave and fragment effects",
                "1975",
                "dimensionless fragment range, no lift",
                Basis.Memory,
                "farthest range against speed in dimensionless form"
            ),
            new(
                DebrisSources.DragValues,
                "Hoerner, Fluid-Dynamic Drag",
                "1965",
                "chapter 3",
                Basis.Memory,
                "drag coefficients of sharp-edged bodies"
            ),
            new(
                DebrisSources.StandardAir,
                "ISO 2533, Standard atmosphere",
                "1975",
                "gas constant of dry air",
                Basis.Memory,
                "density of the air"
            ),
            new(
                DebrisSources.WindProfile,
                "Wind growing with the seventh root of height over open ground",
                "",
                "",
                Basis.CommonPractice,
                "drift of lobbed pieces"
            ),
        ];

    private static ValueList<Citation> Injury =>
        [
            new(
                DebrisSources.AbleToInjure,
                "14 CFR Part 417 Appendix C, Flight safety analysis methodologies",
                "as amended, 85 FR 79716",
                "debris risk analysis, constraint (b)(3): 11 ft·lb",
                Basis.Read,
                "energy above which a piece counts as able to injure"
            ),
            new(
                DebrisSources.SevereInjury,
                "14 CFR 107.130, Category 3 operations",
                "2021",
                "(a)(1): 25 ft·lb",
                Basis.Read,
                "energy of a severe injury"
            ),
            new(
                DebrisSources.ExplosiveSafety,
                "DoD 6055.09 and NATO AASTP-1, explosive safety standards",
                "",
                "hazardous fragment 58 ft·lb, one on 600 ft²",
                Basis.Memory,
                "hazardous fragment and its density"
            ),
            new(
                DebrisSources.FragmentLength,
                "DDESB Technical Paper 12, Fragment and debris hazards",
                "by a public summary",
                "fragment length, chance of a hit",
                Basis.Secondary,
                "flight by mass alone; chance of a hit"
            ),
            new(
                DebrisSources.SkinSperrazza,
                "Sperrazza and Kokinakis, Ballistic limits of tissue and clothing, Ann. NY Acad. Sci. 152",
                "1968",
                "V50 of skin",
                Basis.Memory,
                "small pieces through skin"
            ),
            new(
                DebrisSources.SkinLewis,
                "Lewis and others, An empirical/mathematical model to estimate the probability of skin penetration, CSL-TR-78004",
                "1978",
                "bare skin",
                Basis.Memory,
                "chance of a small piece going through skin"
            ),
            new(
                DebrisSources.SkinMeasured,
                "DiMaio and others, Minimal velocities necessary for perforation of skin by air gun pellets and bullets",
                "1982",
                "abstract",
                Basis.Read,
                "measured energy per area through skin"
            ),
            new(
                DebrisSources.Blunt,
                "Sturdivan, Viano and Champion; Bir: blunt criterion",
                "2004",
                "",
                Basis.Memory,
                "blunt blow to the chest"
            ),
            new(
                DebrisSources.Eye,
                "Eye injuries from projectiles: normalized energy, J. Trauma (doi 10.1097/01.ta.0000174830.55282.32)",
                "2005",
                "50 % risk",
                Basis.Read,
                "small pieces and eyes"
            ),
        ];

    private static ValueList<Citation> Screens =>
        [
            new(
                DebrisSources.GuardTest,
                "BIA/IFA project 6054, impact tests of machining-centre guards",
                "",
                "summary: 100 g at up to 115 m/s",
                Basis.Read,
                "starting thickness of a screen for a test"
            ),
            new(
                DebrisSources.GuardMaterials,
                "Mewes and Trapp, Impact resistance of materials for guards on cutting machine tools, JOSE 6(4), doi 10.1080/10803548.2000.11076469",
                "2000",
                "abstract",
                Basis.Read,
                "8 mm polycarbonate like 3 mm steel"
            ),
            new(
                DebrisSources.GuardClasses,
                "EN ISO 23125, Machine tools - Safety - Turning machines",
                "by a public quotation",
                "Annex A, impact classes",
                Basis.Secondary,
                "energies of tested guards"
            ),
            new(
                DebrisSources.SteelPlate,
                "BC-TOP-9A, Design of structures for missile impact (Ballistic Research Laboratory formula)",
                "1974",
                "steel plate",
                Basis.Memory,
                "steel plate against pieces"
            ),
            new(
                DebrisSources.RechtIpson,
                "Recht and Ipson, Ballistic perforation dynamics, J. Appl. Mech. 30",
                "1963",
                "residual speed",
                Basis.Memory,
                "speed behind a perforated screen"
            ),
        ];

    private static ValueList<Citation> Choices =>
        [
            new(
                DebrisSources.ChoiceTrip,
                "Over-speed trip not stated: burst at 1.2 times the maximum speed",
                "",
                "",
                Basis.Choice,
                "speed of the burst"
            ),
            new(
                DebrisSources.ChoiceBounding,
                "Bounding rotor: a wheel as large as the casing, 440 m/s at the tip, density of its material",
                "",
                "",
                Basis.Choice,
                "stands in for a wheel nobody has measured"
            ),
            new(
                DebrisSources.ChoiceDragLow,
                "Drag to plan with: coefficient 0.80; direct flight tumbling, landing area edge on, since spin may hold a sector's plane",
                "",
                "",
                Basis.Choice,
                "reach to plan with"
            ),
            new(
                DebrisSources.ChoiceScreen,
                "A debris screen counts only on a test that covers every piece in energy, face and mass",
                "",
                "",
                Basis.Choice,
                "what a screen holds"
            ),
        ];
}
