using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Citations;

/// <summary>Sources of the rooms about exposure.</summary>
public static class ExposureCitations
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<Citation> All { get; } =
    [
        new(
            "iso-1999-2013",
            "ISO 1999, Estimation of noise-induced hearing loss",
            "2013",
            "definitions of sound exposure and L_EX,8h",
            Basis.Memory,
            "daily and weekly exposure level, sound exposure"
        ),
        new(
            "iso-1996-2",
            "ISO 1996-2, Description, measurement and assessment of environmental noise: determination of levels",
            "2017",
            "free field, 3 dB at a façade",
            Basis.Memory,
            "equivalent levels at neighbours"
        ),
        new(
            "iso-9612-2009-tasks",
            "ISO 9612, Determination of occupational noise exposure, engineering method",
            "2009",
            "strategy 1 (task-based), Annex C; Annexes E, F",
            Basis.Memory,
            "level of a task, uncertainty of L_EX,8h"
        ),
        new(
            "directive-2003-10-ec",
            "Directive 2003/10/EC on the exposure of workers to noise",
            "2003, consolidated 2019-07-26",
            "Art. 3, 5 to 8",
            Basis.Read,
            "action and limit values, hearing zone"
        ),
        new(
            "uk-noise-2005",
            "The Control of Noise at Work Regulations 2005, SI 2005/1643",
            "2005",
            "reg. 4, 6, 7",
            Basis.Read,
            "action and limit values"
        ),
        new(
            "osha-1910-95",
            "29 CFR 1910.95, Occupational noise exposure",
            "as read, with tables G-16 and G-16a",
            "(b), (c), App. A, App. B",
            Basis.Read,
            "both doses, ceiling, impulse peak, use of the NRR"
        ),
        new(
            "niosh-98-126",
            "NIOSH 98-126, Criteria for a recommended standard: occupational noise exposure",
            "1998",
            "table 1-1",
            Basis.Read,
            "recommended dose"
        ),
        new(
            "who-venues-2022",
            "World Health Organization, global standard for listening at venues and events",
            "2022",
            "level limit",
            Basis.Read,
            "audience limit of 100 dB(A) over 15 minutes"
        ),
        new(
            "who-community-noise-1999",
            "World Health Organization, Guidelines for community noise",
            "1999",
            "table 4.1",
            Basis.Read,
            "peak 140 dB(C) for adults, 120 dB(C) for children"
        ),
        new(
            "iso-4869-2-2018",
            "ISO 4869-2, Hearing protectors: effective A-weighted levels",
            "2018",
            "cl. 5 to 8, table 2, Annexes A to D",
            Basis.Secondary,
            "octave band, HML and SNR methods"
        ),
        new(
            "en-458-2016",
            "EN 458, Hearing protectors: selection, use, care and maintenance",
            "2016; a 2025 edition exists",
            "classes of the level at the ear",
            Basis.Memory,
            "70 to 80 dB(A) at the ear, over-protection, wearing time"
        ),
        new(
            "hse-l108-2021",
            "HSE L108, Controlling noise at work",
            "2021",
            "allowance for real-world wear; plug and muff together",
            Basis.Secondary,
            "4 dB added to the level at the ear; 6 dB for a second protector"
        ),
        new(
            "hse-noise-reckoner-2020",
            "HSE weekly noise exposure ready-reckoner",
            "Crown copyright 2020",
            "points",
            Basis.Read,
            "exposure points"
        ),
    ];
}
