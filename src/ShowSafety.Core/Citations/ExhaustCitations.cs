using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Citations;

/// <summary>Sources of the rooms about exhaust.</summary>
public static class ExhaustCitations
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<Citation> All { get; } =
    [
        new(
            "ac-150-5300-13",
            "FAA AC 150/5300-13, Airport Design",
            "1989 with changes",
            "ch. 8",
            Basis.Read,
            "air speed of a jet on people and loose things"
        ),
        new(
            "adiabatic-wall",
            "Adiabatic wall under a jet: total temperature of the free jet",
            "",
            "consequence of the decay law",
            Basis.Derived,
            "air temperature at a wall"
        ),
        new(
            "attached-jet",
            "ASHRAE Handbook Fundamentals, space air diffusion",
            "",
            "jets along a plane",
            Basis.Memory,
            "reach of a jet along floor or wall, factor √2"
        ),
        new(
            "babrauskas-2007",
            "Babrauskas, Gray and Janssens, Prudent practices for the design and installation of heat-producing devices near wood, Fire and Materials 31:125",
            "2007",
            "abstract",
            Basis.Read,
            "wood near a hot body"
        ),
        new(
            "becker-1967",
            "Becker, Hottel and Williams, The nozzle-fluid concentration field of the round, turbulent, free jet, J. Fluid Mech. 30:285",
            "1967",
            "",
            Basis.Memory,
            "decay of temperature and mass fraction"
        ),
        new(
            "beltaos-rajaratnam-1974",
            "Beltaos and Rajaratnam, Impinging circular turbulent jets, J. Hydraul. Div. ASCE 100",
            "1974",
            "",
            Basis.Memory,
            "pressure where a jet strikes a wall"
        ),
        new(
            "cengel-boles",
            "Çengel and Boles, Thermodynamics: An Engineering Approach",
            "",
            "jet propulsion cycles",
            Basis.Memory,
            "check of a static turbojet"
        ),
        new(
            "choice-cloth-speed",
            "Choice of this project: 3.4 m/s (Beaufort 3) lifts loose cloth",
            "",
            "",
            Basis.Choice,
            "intake zone"
        ),
        new(
            "choice-crew-air",
            "Choice of this project: crew stay out of air over 60 °C",
            "",
            "",
            Basis.Choice,
            "heat zone of the crew"
        ),
        new(
            "choice-gust-factor",
            "Choice of this project: factor 1.5 on jet speed for gusts",
            "",
            "",
            Basis.Choice,
            "speed zones"
        ),
        new(
            "choice-ignition-margin",
            "Choice of this project: 100 K under an ignition temperature",
            "",
            "",
            Basis.Choice,
            "heat zones of dry plants and paper"
        ),
        new(
            "choice-start-flame",
            "Choice of this project: 3 m behind the nozzle and 1 m round the engine at a start",
            "",
            "",
            Basis.Choice,
            "start zone"
        ),
        new(
            "dallavalle",
            "DallaValle, velocity in front of exhaust openings, in an engineering handbook on the web",
            "",
            "plain opening",
            Basis.Read,
            "air speed in front of an intake"
        ),
        new(
            "en-13782",
            "EN 13782, Temporary structures, Tents, Safety",
            "2005",
            "wind loads",
            Basis.Memory,
            "pressure a tent wall is designed for"
        ),
        new(
            "fischer-1979",
            "Fischer et al., Mixing in Inland and Coastal Waters",
            "1979",
            "Tables 9.2 and 9.3",
            Basis.Memory,
            "decay and width of speed and temperature in a round jet"
        ),
        new(
            "gaussian-jet",
            "Integrals of a Gaussian jet: volume, momentum, scalar",
            "",
            "exact",
            Basis.Derived,
            "relations between decay, spread and entrainment"
        ),
        new(
            "hand-engines",
            "Usual fuel over air 0.015 to 0.025 and fuel consumption 0.14 to 0.25 kg/(N h) of hand-sized engines",
            "",
            "",
            Basis.CommonPractice,
            "questions about an engine sheet"
        ),
        new(
            "hsl-dose-2007",
            "Health and Safety Laboratory, thermal dose criteria",
            "2007",
            "",
            Basis.Read,
            "dose of radiation to pain and burns"
        ),
        new(
            "iso-13571",
            "ISO 13571, Life-threatening components of fire",
            "2012",
            "hot air, radiation, asphyxiants",
            Basis.Memory,
            "times and doses in fire"
        ),
        new(
            "iso-13732-1",
            "ISO 13732-1, Ergonomics of the thermal environment, contact with hot surfaces",
            "2006",
            "tables for bare metal",
            Basis.Memory,
            "burns by touch"
        ),
        new(
            "iso-13857",
            "ISO 13857, Safety of machinery, Safety distances",
            "2019",
            "reach of limbs",
            Basis.Memory,
            "reach round the intake"
        ),
        new(
            "jet-energy",
            "Energy balance of an engine sheet: fuel flow × heating value",
            "",
            "exact",
            Basis.Derived,
            "heat of the exhaust, checks of a sheet"
        ),
        new(
            "jet-heat",
            "Temperature law of a jet from its heat and thrust, with the exhaust's own specific heat",
            "",
            "from Fischer et al. 1979",
            Basis.Derived,
            "temperature in a jet"
        ),
        new(
            "jet-momentum",
            "Static thrust = mass flow × exhaust speed",
            "",
            "exact for an unchoked nozzle",
            Basis.Derived,
            "thrust, checks of a sheet"
        ),
        new(
            "jones-air-distribution",
            "Jones, Air distribution (book chapter)",
            "",
            "abstract",
            Basis.Read,
            "angle of a free jet"
        ),
        new(
            "kerosene-flash",
            "Jet A-1 specification, flash point not under 38 °C",
            "",
            "flash point",
            Basis.Memory,
            "heat zone of vehicles with fuel"
        ),
        new(
            "launder-rodi-1983",
            "Launder and Rodi, The turbulent wall jet: measurements and modeling, Annu. Rev. Fluid Mech. 15",
            "1983",
            "three-dimensional wall jet",
            Basis.Memory,
            "sideways spread of a jet on the floor"
        ),
        new(
            "martin-1977",
            "Martin, Heat and mass transfer between impinging gas jets and solid surfaces, Adv. Heat Transfer 13",
            "1977",
            "single round nozzle",
            Basis.Secondary,
            "heat transfer under a nozzle"
        ),
        new(
            "model-fuel-contest",
            "A model engineers' efficiency contest: 30 to 50 mL/min per kilogram of thrust",
            "",
            "",
            Basis.Read,
            "usual fuel consumption"
        ),
        new(
            "nchrp-415",
            "NCHRP Synthesis 415, Design Fires in Road Tunnels",
            "2011",
            "p. 18",
            Basis.Read,
            "dose of hot air and radiation"
        ),
        new(
            "nfpa-130",
            "NFPA 130, Fixed Guideway Transit and Passenger Rail Systems",
            "",
            "annex, exposure to hot air",
            Basis.Memory,
            "time in hot air"
        ),
        new(
            "nozzle-flow",
            "Isentropic flow through a nozzle",
            "",
            "exact for a perfect gas",
            Basis.Derived,
            "choking, exit state"
        ),
        new("paper-ignition", "Fire handbooks: paper ignites from 218 °C", "", "", Basis.Memory, "heat zone of paper"),
        new(
            "pope-2000",
            "Pope, Turbulent Flows",
            "2000",
            "Table 5.1, p. 44",
            Basis.Secondary,
            "band of decay and spread constants"
        ),
        new(
            "propulsion-course",
            "A university course's worked problem on propulsive efficiency",
            "",
            "",
            Basis.Read,
            "check of propulsive efficiency"
        ),
        new(
            "radiation-api-521",
            "API Standard 521, Pressure-relieving and Depressuring Systems",
            "",
            "permissible radiation",
            Basis.Read,
            "units of radiation limits"
        ),
        new(
            "rajaratnam-1976",
            "Rajaratnam, Turbulent Jets",
            "1976",
            "radial wall jet",
            Basis.Memory,
            "speed along a wall"
        ),
        new(
            "ricou-spalding-1961",
            "Ricou and Spalding, Measurements of entrainment by axisymmetrical turbulent jets, J. Fluid Mech. 11:21",
            "1961",
            "",
            Basis.Secondary,
            "air drawn into a jet"
        ),
        new(
            "saravanamuttoo",
            "Saravanamuttoo, Rogers and Cohen, Gas Turbine Theory",
            "",
            "Example 3.1",
            Basis.Memory,
            "check of a turbojet"
        ),
        new(
            "stoll-chianta",
            "Stoll and Chianta, burn criterion as printed in ASTM test methods",
            "1969",
            "",
            Basis.Read,
            "burns of bare skin"
        ),
        new(
            "tent-membrane",
            "Makers' sheets of PVC-coated polyester membrane: service to +70 °C",
            "",
            "",
            Basis.Memory,
            "heat zone of tent fabric"
        ),
        new(
            "ufc-3-260-01-a8-2",
            "UFC 3-260-01, Airfield and Heliport Planning and Design",
            "",
            "A8.2.2",
            Basis.Read,
            "air speed and loose things"
        ),
        new(
            "ufc-3-260-01-a8-5",
            "UFC 3-260-01, Airfield and Heliport Planning and Design",
            "",
            "A8.5.1",
            Basis.Memory,
            "air temperature behind an engine"
        ),
        new(
            "witze-1974",
            "Witze, Centerline velocity decay of compressible free jets, AIAA J. 12(4):417",
            "1974",
            "",
            Basis.Memory,
            "core and decay of a hot jet"
        ),
        new(
            "wood-handbook",
            "USDA Forest Products Laboratory, Wood Handbook",
            "",
            "fire properties",
            Basis.Read,
            "glow of plant matter"
        ),
    ];
}
