using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Citations;

/// <summary>Sources of the rooms about site, crowd, supplies, gate and layout.</summary>
public static class SiteCitations
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<Citation> All { get; } = [.. Gate, .. Supplies, .. Crowd];

    private static ValueList<Citation> Gate =>
        [
            new(
                SiteSources.GatePermissions,
                "Permissions asked for by kind of place and fuel",
                "",
                "",
                Basis.Choice,
                "who must have allowed a run"
            ),
            new(
                SiteSources.GateEvidence,
                "Code of practice of a hobby association for model gas turbines",
                "issue 9, 2001; issue 10, 2022",
                "running in public",
                Basis.Read,
                "three consecutive ten-minute rated runs, over-speed made impossible"
            ),
            new(
                SiteSources.GateRestraint,
                "Statics of a bench with the thrust counted twice",
                "",
                "",
                Basis.Choice,
                "overturning and sliding"
            ),
            new(
                SiteSources.GateStopping,
                "Guidelines for model gas turbines of the Canadian national model flying body",
                "as published",
                "shut-down",
                Basis.Read,
                "fail-safe shut-down within 2 s; two people is this project's choice"
            ),
            new(
                SiteSources.GateNeverIndoors,
                "Manual of a maker of model gas turbines",
                "as published",
                "p. 7",
                Basis.Read,
                "never indoors"
            ),
            new(
                SiteSources.GateTentFabric,
                "EN 13501-1 and NFPA 701, fire certificates of fabrics",
                "current",
                "classification",
                Basis.Memory,
                "papers of a tent"
            ),
            new(
                SiteSources.GateTentWind,
                "EN 13782, Temporary structures - Tents",
                "2015",
                "wind",
                Basis.Memory,
                "wind speed at which a tent is cleared"
            ),
            new(
                SiteSources.GateMomentum,
                "Momentum theorem for an unchoked nozzle",
                "",
                "",
                Basis.Derived,
                "thrust from mass flow and exhaust speed"
            ),
            new(
                SiteSources.GateRiskBands,
                "Risk assessment form of a public body, five by five matrix",
                "pims-doc-05-2",
                "bands",
                Basis.Read,
                "Low 1-4, Medium 5-10, High 12-25"
            ),
        ];

    private static ValueList<Citation> Supplies =>
        [
            new(
                SiteSources.SuppliesGasSeparation,
                "Published rules of gas suppliers and a local authority for cylinders",
                "as published",
                "separations",
                Basis.Read,
                "1 m up to 400 kg, 3 m above; 2 m from openings; 3 m from combustible stock"
            ),
            new(
                SiteSources.SuppliesGasOpenAir,
                "Guidance of a local authority on liquefied petroleum gas",
                "as published",
                "storage",
                Basis.Read,
                "cylinders upright in the open air"
            ),
            new(
                SiteSources.SuppliesGasExtinguishers,
                "Published rules of a cylinder store supplier",
                "as published",
                "extinguishers",
                Basis.Read,
                "powder extinguishers by mass of gas"
            ),
            new(
                SiteSources.SuppliesFuelSeparation,
                "HSG51, The storage of flammable liquids in containers",
                "2nd edition, 1998",
                "separation table",
                Basis.Memory,
                "2 m up to 1,000 L, 4 m above"
            ),
            new(
                SiteSources.SuppliesReach,
                "ISO 13857, Safety distances to prevent hazard zones being reached",
                "2019",
                "table 2",
                Basis.Memory,
                "longest reach over a barrier"
            ),
            new(
                SiteSources.SuppliesLowerLimit,
                "IEC 60079-20-1, Material characteristics for gas and vapour classification",
                "2010",
                "annex B",
                Basis.Memory,
                "lower flammable limits of propane and butane"
            ),
            new(
                SiteSources.SuppliesPetrol,
                "Guidance of English fire and rescue services on storing petrol",
                "as published",
                "non-workplaces",
                Basis.Read,
                "notice above 30 L, licence above 275 L; confirm with your authority"
            ),
            new(
                SiteSources.SuppliesExtinguisher,
                "Canadian national body's guidelines, and an adviser's page on model gas turbines",
                "as published",
                "extinguishers",
                Basis.Read,
                "carbon dioxide or another non-powder extinguisher of at least 2 kg within reach"
            ),
            new(
                SiteSources.SuppliesExtinguisherReach,
                "Extinguisher within 5 m of its engine",
                "",
                "",
                Basis.Choice,
                "what counts as within reach"
            ),
            new(
                SiteSources.SuppliesOrdinaryExtinguisher,
                "Rules of the German national model flying body for gas turbines",
                "as published",
                "extinguishers",
                Basis.Read,
                "an ordinary extinguisher on site besides the turbine's own"
            ),
            new(
                SiteSources.SuppliesPowder,
                "Manual of a maker of model gas turbines",
                "as published",
                "p. 7",
                Basis.Read,
                "powder is drawn into the engine and means an overhaul"
            ),
            new(
                SiteSources.SuppliesClassA,
                "Event fire advice, after BS 5306-8",
                "as published",
                "class A",
                Basis.Read,
                "one 13A for 200 m²"
            ),
            new(
                SiteSources.SuppliesRating,
                "EN 3-7, Portable fire extinguishers, as quoted in Int. J. Environ. Res. Public Health 2020, 17(2), 411",
                "2004",
                "annex on class B test fires",
                Basis.Secondary,
                "litres of test liquid and tray area of a B number"
            ),
            new(
                SiteSources.SuppliesSpill,
                "SFPE Handbook of Fire Protection Engineering, liquid fuel fires",
                "5th edition, 2016",
                "unconfined spills",
                Basis.Memory,
                "area of a spill"
            ),
            new(
                SiteSources.SuppliesPoolFire,
                "NUREG-1805, Fire Dynamics Tools",
                "2004",
                "ch. 3, table 3-2, eqs. 3-4 and 3-7",
                Basis.Memory,
                "heat release and flame height of a pool fire"
            ),
            new(
                SiteSources.SuppliesPointSource,
                "NUREG-1805, Fire Dynamics Tools",
                "2004",
                "ch. 5, point source model",
                Basis.Memory,
                "radiation at a distance"
            ),
            new(
                SiteSources.SuppliesRadiation,
                "API Standard 521, Pressure-relieving and Depressuring Systems, as quoted in a hydrogen handbook's answers",
                "as quoted",
                "permissible radiation",
                Basis.Secondary,
                "1.577 kW/m² for continuous exposure in clothes"
            ),
        ];

    private static ValueList<Citation> Crowd =>
        [
            new(
                SiteSources.CrowdArea,
                "HSG195, The event guide, as quoted, and a county's event guide",
                "1999",
                "para. 87",
                Basis.Secondary,
                "0.5 m² for each person outdoors"
            ),
            new(
                SiteSources.CrowdUnstable,
                "Crowd dynamics guide of an English borough",
                "2i",
                "density",
                Basis.Read,
                "above 4 people/m² a crowd is unstable"
            ),
            new(
                SiteSources.CrowdOpenAirFlow,
                "Capacity guide of an English borough",
                "as published",
                "exits",
                Basis.Read,
                "109 people per metre and minute, 5 min where the risk is high"
            ),
            new(
                SiteSources.CrowdEnclosedFlow,
                "Guide to Safety at Sports Grounds, as quoted by a county",
                "as quoted",
                "exits",
                Basis.Secondary,
                "82 people per metre and minute, widest exit left out"
            ),
            new(
                SiteSources.CrowdEnclosedTime,
                "Evacuation time of 2.5 min for places with fuel",
                "memory",
                "time",
                Basis.Memory,
                "time to leave a hall or tent"
            ),
            new(
                SiteSources.CrowdExitWidths,
                "Approved Document B, volume 2 (England)",
                "2019",
                "widths of escape routes and exits",
                Basis.Memory,
                "people one exit serves"
            ),
            new(
                SiteSources.CrowdPanels,
                "Length of a line over the length of its panels",
                "",
                "",
                Basis.Derived,
                "number of barrier panels"
            ),
            new(
                SiteSources.CrowdBarriers,
                "Health and Safety Executive (Great Britain), Using barriers at events",
                "as published",
                "barriers",
                Basis.Read,
                "barriers are risk-assessed; a pedestrian barrier marks the line"
            ),
            new(
                SiteSources.CrowdReach,
                "ISO 13857, Safety distances to prevent hazard zones being reached",
                "2008 and 2019",
                "table 2",
                Basis.Memory,
                "reach over a barrier by people of 14 and over"
            ),
            new(
                SiteSources.CrowdAssumedSize,
                "Size taken for an engine nobody measured: 1 m long, 0.5 m wide",
                "",
                "",
                Basis.Choice,
                "outline of the engine"
            ),
            new(
                SiteSources.CrowdPracticeTen,
                "Guidelines for model gas turbines of the Canadian national model flying body",
                "as published",
                "start",
                Basis.Read,
                "10 m for people who aren't needed"
            ),
            new(
                SiteSources.CrowdPracticeNine,
                "Manual of a maker of model gas turbines",
                "as published",
                "p. 7",
                Basis.Read,
                "9 m for unconnected people"
            ),
            new(
                SiteSources.CrowdPracticeFeet,
                "Advice page of a supplier of model gas turbines",
                "as published",
                "distances",
                Basis.Read,
                "25 ft out of the wheel's plane"
            ),
            new(
                SiteSources.CrowdWheelchair,
                "Guidance on accessible viewing places of an American state body",
                "as published",
                "clear space",
                Basis.Read,
                "914 mm by 1,219 mm of level firm ground"
            ),
            new(
                SiteSources.CrowdAlarm,
                "ISO 7731, Danger signals for public and work areas - Auditory danger signals",
                "2003",
                "levels",
                Basis.Memory,
                "15 dB above ambient, at most 118 dB(A)"
            ),
            new(
                SiteSources.CrowdEscapeSigns,
                "EN 1838, Emergency lighting, as quoted by a lighting supplier",
                "as quoted",
                "viewing distance",
                Basis.Secondary,
                "distance factor 100 or 200"
            ),
            new(
                SiteSources.CrowdSigns,
                "Directive 92/58/EEC as adopted by D.Lgs. 81/2008",
                "2008",
                "annex XXV",
                Basis.Read,
                "area of signs, A over L²/2000"
            ),
        ];
}
