using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about levels and the measurement.</summary>
internal static class SoundLevelSums
{
    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() =>
        [LevelSum(), PowerLevel(), PressureLevel(), Distance(), SourcePower(), Background(), Environment()];

    private static WorkedSum LevelSum() =>
        new(
            "level-sum",
            "levels together, and their energy mean",
            [Several("levelsDb", "levels", Unit.Decibel, -200, 250)],
            ["sound-textbook"],
            input =>
            {
                ValueList<double> levels = input.Numbers("levelsDb");
                double sum = Decibels.Sum(levels);
                double mean = Decibels.Mean(levels);
                return new(
                    [new("sumDb", sum, Unit.Decibel, "all together"), new("meanDb", mean, Unit.Decibel, "energy mean")],
                    [
                        Step($"L = 10 lg Σ 10^(L_i/10) = {sum:F2} dB for {levels.Count} levels"),
                        Step($"mean: L - 10 lg {levels.Count} = {mean:F2} dB"),
                    ]
                );
            }
        );

    private static WorkedSum PowerLevel() =>
        new(
            "power-level",
            "sound power level of a sound power",
            [Number("watts", "sound power", Unit.Watt, 1e-12, 1e6)],
            ["sound-textbook"],
            input =>
            {
                double level = SoundPower.PowerLevelDb(input.Number("watts"));
                return new(
                    [new("powerDb", level, Unit.Decibel, "sound power level")],
                    [Step($"L_W = 10 lg({input.Number("watts"):G4} W / 1 pW) = {level:F2} dB")]
                );
            }
        );

    private static WorkedSum PressureLevel() =>
        new(
            "pressure-level",
            "sound pressure level of a sound pressure",
            [Number("pascals", "r.m.s. sound pressure", Unit.Pascal, 1e-7, 1e5)],
            ["sound-textbook"],
            input =>
            {
                double level = SoundPower.PressureLevelDb(input.Number("pascals"));
                return new(
                    [new("levelDb", level, Unit.Decibel, "sound pressure level")],
                    [Step($"L = 20 lg({input.Number("pascals"):G4} Pa / 20 µPa) = {level:F2} dB")]
                );
            }
        );

    private static WorkedSum Distance() =>
        new(
            "level-at-distance",
            "level of a point source at another distance, without air absorption",
            [
                Number("levelDb", "level at the first distance", Unit.Decibel, -200, 250),
                Number("fromMetres", "first distance", Unit.Metre, 0.01, 1e5),
                Number("toMetres", "other distance", Unit.Metre, 0.01, 1e5),
            ],
            ["sound-textbook"],
            input =>
            {
                double change = SoundPower.DistanceChangeDb(input.Number("fromMetres"), input.Number("toMetres"));
                double level = input.Number("levelDb") + change;
                return new(
                    [
                        new("levelDb", level, Unit.Decibel, "level at the other distance"),
                        new("changeDb", change, Unit.Decibel, "change"),
                    ],
                    [
                        Step($"20 lg({input.Number("fromMetres"):G6}/{input.Number("toMetres"):G6}) = {change:F2} dB"),
                        Step($"L = {input.Number("levelDb"):F2} + ({change:F2}) = {level:F2} dB"),
                    ]
                );
            }
        );

    private static WorkedSum SourcePower() =>
        new(
            "source-power",
            "sound power level from a level near the engine, over a hard floor, in free space, or by the plain half sphere",
            [
                Number("levelDb", "level at the microphone", Unit.Decibel, -200, 250),
                Number("distanceMetres", "distance along the ground", Unit.Metre, 0.05, 1000),
                Number("sourceHeightMetres", "height of the source", Unit.Metre, 0, 20, 0),
                Number("microphoneHeightMetres", "height of the microphone", Unit.Metre, 0, 20, 0),
            ],
            ["iso-9613-2", "iso-3744"],
            input =>
            {
                double level = input.Number("levelDb");
                double flat = input.Number("distanceMetres");
                double source = input.Number("sourceHeightMetres");
                double microphone = input.Number("microphoneHeightMetres");
                double slant = Sound.Outdoors.OutdoorPath.SlantMetres(flat, source - microphone);
                double image = SoundPower.FloorImageDb(flat, source, microphone);
                double power =
                    level
                    - Decibels.FromEnergy(Sound.Outdoors.OutdoorPath.HardGroundFactor(flat, source, microphone, 0));
                double sphere = level + SoundPower.SphereDb(slant);
                double half = level + SoundPower.HemisphereDb(slant);
                return new(
                    [
                        new("powerDb", power, Unit.Decibel, "sound power level, direct sound and floor image"),
                        new("floorImageDb", image, Unit.Decibel, "what the hard floor adds, D_Ω"),
                        new("freePowerDb", sphere, Unit.Decibel, "sound power level in free space"),
                        new("halfSpherePowerDb", half, Unit.Decibel, "sound power level by the plain half sphere"),
                        new("halfSphereShortDb", power - half, Unit.Decibel, "how far the plain half sphere is low"),
                    ],
                    [
                        Step($"r = {slant:F3} m; D_Ω = 10 lg(1 + r_direct²/r_image²) = {image:F2} dB"),
                        Step(
                            $"L_W = L + 10 lg(4π r²) - D_Ω = {level:F2} + {SoundPower.SphereDb(slant):F2} - {image:F2} = {power:F2} dB"
                        ),
                    ]
                );
            }
        );

    private static WorkedSum Background() =>
        new(
            "background-correction",
            "what a background takes off a reading",
            [
                Number("levelDb", "reading with the engine running", Unit.DecibelA, -200, 250),
                Number("backgroundDb", "reading with the engine stopped", Unit.DecibelA, -200, 250),
            ],
            ["iso-3744", "iso-3746"],
            input =>
            {
                double excess = input.Number("levelDb") - input.Number("backgroundDb");
                BackgroundCheck check = BackgroundCheck.Of(input.Number("levelDb"), input.Number("backgroundDb"));
                double formula =
                    excess > 0
                        ? SoundPower.BackgroundCorrectionDb(excess)
                        : throw new ArgumentException(
                            "The reading must be louder than the background.",
                            "backgroundDb"
                        );
                return new(
                    [
                        new("formulaDb", formula, Unit.Decibel, "K1 by the formula"),
                        new("usedDb", check.CorrectionDb, Unit.Decibel, "correction used here"),
                    ],
                    [
                        Step($"ΔL = {excess:F2} dB; K1 = -10 lg(1 - 10^(-0.1 ΔL)) = {formula:F2} dB"),
                        Step(
                            $"used: {check.CorrectionDb:F2} dB (none from 15 dB on, at most K1 at 6 dB, reading unused under 3 dB)"
                        ),
                    ]
                );
            }
        );

    private static WorkedSum Environment() =>
        new(
            "environment-correction",
            "what a room adds to a measurement of sound power",
            [
                Number("surfaceSquareMetres", "measurement surface", Unit.SquareMetre, 0.01, 1e5),
                Number("absorptionSquareMetres", "equivalent absorption area", Unit.SquareMetre, 0.1, 1e6),
            ],
            ["iso-3744", "iso-3746"],
            input =>
            {
                double surface = input.Number("surfaceSquareMetres");
                double area = input.Number("absorptionSquareMetres");
                double k2 = SoundPower.EnvironmentCorrectionDb(surface, area);
                return new(
                    [new("correctionDb", k2, Unit.Decibel, "environmental correction K2")],
                    [Step($"K2 = 10 lg(1 + 4 · {surface:G5}/{area:G5}) = {k2:F2} dB")]
                );
            }
        );
}
