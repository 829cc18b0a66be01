using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Citations;

/// <summary>Sources of the rooms about sound.</summary>
public static class SoundCitations
{
    /// <summary>All of them, in the order they are listed.</summary>
    public static ValueList<Citation> All { get; } =
    [
        new(
            "iec-61672-1",
            "IEC 61672-1, Electroacoustics - Sound level meters - Part 1: Specifications",
            "2013",
            "Table 3 and annex E, via transcription",
            Basis.Secondary,
            "A- and C-weighting"
        ),
        new(
            "iec-61260-1",
            "IEC 61260-1, Electroacoustics - Octave-band and fractional-octave-band filters - Part 1",
            "2014",
            "exact base-10 midband frequencies",
            Basis.Memory,
            "octave and third-octave midbands"
        ),
        new(
            "iso-9613-1",
            "ISO 9613-1, Acoustics - Attenuation of sound during propagation outdoors - Part 1: Absorption by the atmosphere",
            "1993",
            "clauses 6.2 to 6.4, 7.1 and Table 1, via transcription",
            Basis.Secondary,
            "air absorption"
        ),
        new(
            "iso-9613-2",
            "ISO 9613-2, Acoustics - Attenuation of sound during propagation outdoors - Part 2: General method of calculation",
            "1996 (a 2024 edition exists and is not used)",
            "equations (3) to (11), clause 7.3.1, Tables 2, 3 and 5, via transcription; clauses 7.4 and 7.5 from memory",
            Basis.Secondary,
            "levels outdoors, ground, screens, walls, accuracy"
        ),
        new(
            "iso-tr-17534-3",
            "ISO/TR 17534-3, Acoustics - Software for the calculation of sound outdoors - Part 3",
            "2015",
            "clause 6.2.1, cases T01 to T03 and T08; A_bar in the form of clause 5.2",
            Basis.Memory,
            "conformity cases of ground and screens"
        ),
        new(
            "iso-3744",
            "ISO 3744, Acoustics - Sound power levels from sound pressure - Engineering methods over a reflecting plane",
            "2010",
            "K1, K2; 6 and 15 dB rules; distance, wind, calibration",
            Basis.Memory,
            "sound power from a reading, corrections"
        ),
        new(
            "iso-3746",
            "ISO 3746, Acoustics - Sound power levels from sound pressure - Survey method over a reflecting plane",
            "2010",
            "K1 down to 3 dB; K2",
            Basis.Memory,
            "background correction"
        ),
        new(
            "iso-9612-uncertainty",
            "ISO 9612, Acoustics - Determination of occupational noise exposure - Engineering method",
            "2009",
            "annex C: u2 0.7 and 1.5 dB, u3 1.0 dB, k = 1.65",
            Basis.Memory,
            "uncertainty of meter and position"
        ),
        new(
            "sound-uncertainty-choice",
            "Uncertainty of lapses of a measurement and of models",
            "",
            "0.5 to 3 dB each",
            Basis.Choice,
            "widening of U for each lapse"
        ),
        new(
            "sound-textbook",
            "Levels, sums and point sources, as in any textbook of acoustics",
            "",
            "10 lg Σ 10^(L/10); 20 lg r",
            Basis.Read,
            "sums of levels and distance"
        ),
        new(
            "room-acoustics",
            "Classical room acoustics: direct and diffuse field, Sabine; textbooks",
            "",
            "Lp = Lw + 10 lg(Q/(4π r²) + 4/R)",
            Basis.Read,
            "levels in halls and tents"
        ),
        new(
            "en-12354-6",
            "EN 12354-6, Building acoustics - Estimation of acoustic performance of buildings - Part 6: Sound absorption",
            "2003",
            "clause 4.4, annex E, via transcription",
            Basis.Secondary,
            "absorption area, reverberation time, doubled where the theory is outside its range"
        ),
        new(
            "limp-wall",
            "Mass law of a limp sheet: London; Fahy; Bies and Hansen, textbooks",
            "",
            "τ = 1/(1 + a²); diffuse ln(1 + a²)/a²",
            Basis.Memory,
            "fabric of tents"
        ),
        new(
            "absorption-tables",
            "Published tables of absorption coefficients (Everest, Master Handbook of Acoustics, appendix, and compilations)",
            "",
            "125 Hz to 4 kHz; 63 Hz and 8 kHz repeat their neighbours",
            Basis.Read,
            "surfaces of halls"
        ),
        new(
            "absorption-profiled-steel",
            "Absorption of profiled steel sheet",
            "",
            "low confidence",
            Basis.Memory,
            "profiled steel walls and roofs"
        ),
        new(
            "egan-absorption",
            "Egan, Architectural Acoustics",
            "",
            "grass, gravel, soil",
            Basis.Memory,
            "floors of tents on open ground"
        ),
        new(
            "open-side-definition",
            "An open side absorbs all sound that reaches it",
            "",
            "definition",
            Basis.Derived,
            "open sides"
        ),
        new(
            "absorption-of-people",
            "Kath and Kuhl in Kuttruff, Room Acoustics, brought down to the least published for a standing person",
            "",
            "0.4 m² at 1 kHz",
            Basis.Memory,
            "absorption of people"
        ),
        new(
            "jet-noise",
            "Bies and Hansen, Engineering Noise Control (gas jets); Beranek; Lighthill; SAE ARP 876",
            "",
            "η K M⁵, 10⁻⁴ M⁵, U⁸, St = 0.2",
            Basis.Memory,
            "check of a measured level, default spectrum"
        ),
        new(
            "jet-directivity",
            "Heller and Franken in Beranek; Bies and Hansen: directivity of gas jets",
            "",
            "table at 0 to 180 degrees from the exhaust axis",
            Basis.Memory,
            "directions nobody measured: added to, never taken off"
        ),
    ];
}
