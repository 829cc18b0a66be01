using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about air, ground and levels outdoors.</summary>
internal static class SoundOutdoorSums
{
    private static readonly ValueList<SumParameter> Geometry =
    [
        Number("distanceMetres", "distance along the ground", Unit.Metre, 0.1, 1e4),
        Number("sourceHeightMetres", "height of the source", Unit.Metre, 0, 100),
        Number("receiverHeightMetres", "height of the ear", Unit.Metre, 0, 100),
    ];

    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() =>
        [AirAt(), AirBands(), Divergence(), Ground(), Standard(), WithImage()];

    private static WorkedSum AirAt() =>
        new(
            "air-absorption",
            "absorption of sound by air at a frequency",
            [Number("frequencyHertz", "frequency, exact midband", Unit.Hertz, 40, 12000), .. Air],
            ["iso-9613-1"],
            input =>
            {
                double hertz = input.Number("frequencyHertz");
                double alpha = AirAbsorption.DecibelsPerKilometre(hertz, AirOf(input));
                return new(
                    [new("absorptionDbPerKilometre", alpha, Unit.DecibelPerKilometre, "attenuation coefficient")],
                    [Step($"α(f = {hertz:F1} Hz) after ISO 9613-1, clause 6 = {alpha:G4} dB/km")]
                );
            }
        );

    private static WorkedSum AirBands() =>
        new(
            "air-absorption-octaves",
            "absorption of sound by air in octave bands",
            Air,
            ["iso-9613-1", "iso-9613-2"],
            input =>
                new(
                    [
                        .. BandResults(
                            "absorptionDbPerKilometre",
                            AirAbsorption.BandsDecibelsPerKilometre(AirOf(input)),
                            Unit.DecibelPerKilometre,
                            "attenuation coefficient"
                        ),
                    ],
                    [Step($"α after ISO 9613-1, clause 6, at exact midbands 1000·10^(3k/10) Hz")]
                )
        );

    private static WorkedSum Divergence() =>
        new(
            "divergence",
            "spreading of sound from a point",
            [Number("slantMetres", "distance in a straight line", Unit.Metre, 0.1, 1e5)],
            ["iso-9613-2"],
            input =>
            {
                double divergence = StandardMethod.DivergenceDb(input.Number("slantMetres"));
                return new(
                    [new("divergenceDb", divergence, Unit.Decibel, "A_div")],
                    [Step($"A_div = 20 lg({input.Number("slantMetres"):G6} m) + 11 = {divergence:F2} dB")]
                );
            }
        );

    private static WorkedSum Ground() =>
        new(
            "ground-attenuation",
            "ground attenuation, general method",
            [Number("groundFactor", "G: 0 hard, 1 porous", Unit.One, 0, 1), .. Geometry],
            ["iso-9613-2"],
            input =>
                new(
                    [
                        .. BandResults(
                            "groundDb",
                            GroundEffect.BandsDb(
                                input.Number("groundFactor"),
                                input.Number("distanceMetres"),
                                input.Number("sourceHeightMetres"),
                                input.Number("receiverHeightMetres")
                            ),
                            Unit.Decibel,
                            "A_gr"
                        ),
                    ],
                    [Step($"A_gr = A_s + A_r + A_m, ISO 9613-2:1996 Table 3")]
                )
        );

    private static WorkedSum Standard() =>
        new(
            "standard-outdoor-level",
            "level over flat ground as the standard prints it",
            [
                Bands("powerBandsDb", "power levels, 63 Hz to 8 kHz"),
                Number("groundFactor", "G: 0 hard, 1 porous", Unit.One, 0, 1),
                .. Geometry,
                .. Air,
            ],
            ["iso-9613-2", "iso-9613-1", "iso-tr-17534-3"],
            input =>
            {
                BandValues levels = StandardMethod.LevelsDb(
                    input.Bands("powerBandsDb"),
                    input.Number("groundFactor"),
                    input.Number("distanceMetres"),
                    input.Number("sourceHeightMetres"),
                    input.Number("receiverHeightMetres"),
                    AirOf(input)
                );
                return Levels(levels, Step($"L = L_W - A_div - A_atm - A_gr in each band"));
            }
        );

    private static WorkedSum WithImage() =>
        new(
            "outdoor-level",
            "level over open hard ground: direct sound, floor image, air",
            [Bands("powerBandsDb", "power levels in the direction asked, 63 Hz to 8 kHz"), .. Geometry, .. Air],
            ["iso-9613-2", "iso-9613-1"],
            input =>
            {
                BandValues air = AirAbsorption
                    .BandsDecibelsPerKilometre(AirOf(input))
                    .Map(AirAbsorption.PowerCoefficientPerMetre);
                BandValues path = BandValues.Build(band =>
                    Decibels.FromEnergy(
                        OutdoorPath.HardGroundFactor(
                            input.Number("distanceMetres"),
                            input.Number("sourceHeightMetres"),
                            input.Number("receiverHeightMetres"),
                            air[band]
                        )
                    )
                );
                return Levels(
                    input.Bands("powerBandsDb") + path,
                    Step($"p² = W/(4π) · (e^(-m r_direct)/r_direct² + e^(-m r_image)/r_image²) in each band")
                );
            }
        );

    private static SumAnswer Levels(BandValues levels, string step)
    {
        double a = FrequencyWeighting.LevelDbA(levels);
        return new(
            [
                new("levelDbA", a, Unit.DecibelA, "A-weighted level"),
                .. BandResults("weightedDb", levels + FrequencyWeighting.ABandsDb, Unit.DecibelA, "A-weighted level"),
            ],
            [step, Step($"L_A = {a:F2} dB(A)")]
        );
    }
}
