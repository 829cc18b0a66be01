using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Enclosures;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about halls and tents.</summary>
internal static class SoundRoomSums
{
    private static readonly SumParameter Factor = Number(
        "directivityFactor",
        "Q: 1 free, 2 over a floor, 4 at an edge, 8 in a corner",
        Unit.One,
        0.01,
        100,
        2
    );

    private static readonly SumParameter Volume = Number("volumeCubicMetres", "volume", Unit.CubicMetre, 1, 1e7);

    private static readonly SumParameter Constant = Number(
        "roomConstantSquareMetres",
        "room constant R",
        Unit.SquareMetre,
        0.01,
        1e7
    );

    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() =>
        [Area(), RoomConstant(), Level(), Critical(), Reverberation(), FromTime(), Limp()];

    private static WorkedSum Area() =>
        new(
            "absorption-area",
            "absorption area of surfaces",
            [
                Several("areasSquareMetres", "areas of the surfaces", Unit.SquareMetre, 0, 1e6),
                Several("absorptionCoefficients", "their absorption coefficients", Unit.One, 0, 1),
            ],
            ["room-acoustics", "en-12354-6"],
            input =>
            {
                ValueList<double> areas = input.Numbers("areasSquareMetres");
                ValueList<double> coefficients = input.Numbers("absorptionCoefficients");
                if (areas.Count != coefficients.Count || !(areas.Sum() > 0))
                {
                    throw new ArgumentException(
                        "Give one coefficient for each area, and some area.",
                        "absorptionCoefficients"
                    );
                }

                double area = RoomAcoustics.AbsorptionSquareMetres(areas, coefficients);
                double mean = area / areas.Sum();
                return new(
                    [
                        new("absorptionSquareMetres", area, Unit.SquareMetre, "equivalent absorption area"),
                        new("meanAbsorption", mean, Unit.One, "mean absorption coefficient"),
                    ],
                    [Step($"A = Σ S α = {area:F3} m²; mean = A/{areas.Sum():F2} m² = {mean:F4}")]
                );
            }
        );

    private static WorkedSum RoomConstant() =>
        new(
            "room-constant",
            "room constant of an absorption area",
            [
                Number("absorptionSquareMetres", "equivalent absorption area", Unit.SquareMetre, 0.01, 1e7),
                Number("meanAbsorption", "mean absorption coefficient", Unit.One, 0, 0.999),
            ],
            ["room-acoustics"],
            input =>
            {
                double constant = RoomAcoustics.RoomConstantSquareMetres(
                    input.Number("absorptionSquareMetres"),
                    input.Number("meanAbsorption")
                );
                return new(
                    [new("roomConstantSquareMetres", constant, Unit.SquareMetre, "room constant R")],
                    [Step($"R = A/(1 - mean) = {constant:F2} m²")]
                );
            }
        );

    private static WorkedSum Level() =>
        new(
            "room-level",
            "level in a room by the classical theory",
            [
                Number("powerDb", "sound power level", Unit.Decibel, -200, 250),
                Factor,
                Number("distanceMetres", "distance", Unit.Metre, 0.05, 1e4),
                Constant,
            ],
            ["room-acoustics"],
            input =>
            {
                double level = RoomAcoustics.LevelDb(
                    input.Number("powerDb"),
                    input.Number("directivityFactor"),
                    input.Number("distanceMetres"),
                    input.Number("roomConstantSquareMetres")
                );
                return new(
                    [new("levelDb", level, Unit.Decibel, "level")],
                    [Step($"L = L_W + 10 lg(Q/(4π r²) + 4/R) = {level:F2} dB")]
                );
            }
        );

    private static WorkedSum Critical() =>
        new(
            "critical-distance",
            "distance where direct and diffuse sound are equally strong",
            [Factor, Constant],
            ["room-acoustics"],
            input =>
            {
                double metres = RoomAcoustics.CriticalDistanceMetres(
                    input.Number("directivityFactor"),
                    input.Number("roomConstantSquareMetres")
                );
                return new(
                    [new("criticalMetres", metres, Unit.Metre, "critical distance")],
                    [Step($"r = √(Q R/(16π)) = {metres:F2} m")]
                );
            }
        );

    private static WorkedSum Reverberation() =>
        new(
            "reverberation-time",
            "reverberation time of a room",
            [
                Volume,
                Number("absorptionSquareMetres", "equivalent absorption area", Unit.SquareMetre, 0.01, 1e7),
                Number("objectShare", "share of the volume taken by objects", Unit.One, 0, 0.9, 0),
            ],
            ["room-acoustics", "en-12354-6"],
            input =>
            {
                double volume = input.Number("volumeCubicMetres");
                double area = input.Number("absorptionSquareMetres");
                double sabine = RoomAcoustics.SabineSeconds(volume, area);
                double standard = RoomAcoustics.StandardSeconds(volume, input.Number("objectShare"), area);
                return new(
                    [
                        new("standardSeconds", standard, Unit.Second, "after EN 12354-6"),
                        new("sabineSeconds", sabine, Unit.Second, "after Sabine, 0.161 V/A"),
                    ],
                    [Step($"T = 55.3/345.6 · V (1 - ψ)/A = {standard:F3} s; 0.161 V/A = {sabine:F3} s")]
                );
            }
        );

    private static WorkedSum FromTime() =>
        new(
            "absorption-from-time",
            "absorption area from a reverberation time",
            [
                Volume,
                Number("seconds", "reverberation time", Unit.Second, 0.05, 60),
                Number("surfaceSquareMetres", "area of all surfaces", Unit.SquareMetre, 1, 1e6),
            ],
            ["room-acoustics"],
            input =>
            {
                double area = RoomAcoustics.AbsorptionFromTimeSquareMetres(
                    input.Number("volumeCubicMetres"),
                    input.Number("seconds")
                );
                double mean = area / input.Number("surfaceSquareMetres");
                return new(
                    [
                        new("absorptionSquareMetres", area, Unit.SquareMetre, "equivalent absorption area"),
                        new("meanAbsorption", mean, Unit.One, "mean absorption coefficient"),
                    ],
                    [Step($"A = 0.161 V/T = {area:F2} m²; mean = A/S = {mean:F4}")]
                );
            }
        );

    private static WorkedSum Limp() =>
        new(
            "limp-wall",
            "sound through fabric",
            [
                Number("frequencyHertz", "frequency", Unit.Hertz, 20, 20000),
                Number("massKilogramsPerSquareMetre", "mass per area", Unit.KilogramPerSquareMetre, 0.01, 100),
            ],
            ["limp-wall"],
            input =>
            {
                double hertz = input.Number("frequencyHertz");
                double mass = input.Number("massKilogramsPerSquareMetre");
                double normal = LimpWall.NormalTransmission(hertz, mass);
                double diffuse = LimpWall.DiffuseTransmission(hertz, mass);
                double reduction = -10 * Math.Log10(diffuse);
                return new(
                    [
                        new("diffuseTransmission", diffuse, Unit.One, "share passed, diffuse sound"),
                        new("normalTransmission", normal, Unit.One, "share passed, head-on"),
                        new("reductionDb", reduction, Unit.Decibel, "sound reduction, diffuse sound"),
                    ],
                    [
                        Step($"a = π f m/(ρc) = {LimpWall.Parameter(hertz, mass):G4}"),
                        Step($"head-on 1/(1 + a²) = {normal:G4}; diffuse ln(1 + a²)/a² = {diffuse:G4}"),
                    ]
                );
            }
        );
}
