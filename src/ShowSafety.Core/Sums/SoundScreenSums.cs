using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Outdoors.Screens;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about screens: over one edge, over two, round an end, and a whole level behind one.</summary>
internal static class SoundScreenSums
{
    // Wide enough for sound to take no other way.
    private const double WideMetres = 1000;

    private static readonly ValueList<SumParameter> Section =
    [
        Number("distanceMetres", "distance along the ground from source to ear", Unit.Metre, 0.2, 1e4),
        Number("sourceHeightMetres", "height of the source", Unit.Metre, 0, 100),
        Number("earHeightMetres", "height of the ear", Unit.Metre, 0, 100),
        Number("screenAtMetres", "distance along the ground from source to screen", Unit.Metre, 0.1, 1e4),
    ];

    private static readonly SumParameter Height = Number(
        "screenHeightMetres",
        "height of the screen",
        Unit.Metre,
        0.1,
        100
    );

    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() => [Single(), Double(), RoundEnd(), Level()];

    private static WorkedSum Single() =>
        new(
            "screen-over-one-edge",
            "what a long screen takes off over its top, ground left out",
            [.. Section, Height],
            ["iso-9613-2"],
            input => OverTop(input, [Upright(input, "screenAtMetres", "screenHeightMetres")])
        );

    private static WorkedSum Double() =>
        new(
            "screen-over-two-edges",
            "what two long screens, or the two edges of a building, take off over their tops",
            [
                .. Section,
                Height,
                Number(
                    "secondAtMetres",
                    "distance along the ground from source to the second edge",
                    Unit.Metre,
                    0.1,
                    1e4
                ),
                Number("secondHeightMetres", "height of the second edge", Unit.Metre, 0.1, 100),
            ],
            ["iso-9613-2"],
            input =>
                OverTop(
                    input,
                    [
                        Upright(input, "screenAtMetres", "screenHeightMetres"),
                        Upright(input, "secondAtMetres", "secondHeightMetres"),
                    ]
                )
        );

    private static WorkedSum RoundEnd() =>
        new(
            "screen-round-its-end",
            "what a screen takes off from sound that goes round one end of it",
            [
                .. Section,
                Number("endAsideMetres", "how far the screen reaches beyond the straight line", Unit.Metre, 0.01, 1000),
            ],
            ["iso-9613-2"],
            input =>
            {
                double at = Between(input, "screenAtMetres");
                var screen = new Obstacle(
                    "screen",
                    [new(at, -WideMetres), new(at, input.Number("endAsideMetres"))],
                    false,
                    100
                );
                DetourPath path =
                    Detours.RoundSide(Source(input), Ear(input), [screen], left: true)
                    ?? throw new ArgumentException("There is no way round this end.", "endAsideMetres");
                return Answer(path, BandValues.Build(band => ScreenDiffraction.RoundEndDb(band, path)), 1);
            }
        );

    private static WorkedSum Level() =>
        new(
            "screened-level",
            "level behind a screen over ground that changes, over its top and round its ends",
            [
                Bands("powerBandsDb", "power levels, 63 Hz to 8 kHz"),
                Metres("sourceMetres", "source: x, y, height", 3),
                Metres("earMetres", "ear: x, y, height", 3),
                Metres("screenMetres", "ends of the screen: x, y, x, y", 4),
                Height,
                new("groundFactors", "G of the source, middle and receiver regions: 0 hard, 1 porous", Unit.One)
                {
                    Min = 0,
                    Max = 1,
                    ListLength = 3,
                },
                .. Air,
            ],
            ["iso-9613-2", "iso-9613-1", "iso-tr-17534-3"],
            input =>
            {
                ValueList<double> ends = input.Numbers("screenMetres");
                var screen = new Obstacle(
                    "screen",
                    [new(ends[0], ends[1]), new(ends[2], ends[3])],
                    false,
                    input.Number("screenHeightMetres")
                );
                BandValues Levels(ValueList<Obstacle> obstacles) =>
                    StandardMethod.LevelsDb(
                        input.Bands("powerBandsDb"),
                        Raised(input, "sourceMetres"),
                        Raised(input, "earMetres"),
                        SoundGroundSums.Factors(input),
                        obstacles,
                        AirOf(input)
                    );
                return Both(Levels([screen]), Levels([]));
            }
        );

    private static SumAnswer Both(BandValues screened, BandValues open)
    {
        double level = FrequencyWeighting.LevelDbA(screened);
        double gain = FrequencyWeighting.LevelDbA(open) - level;
        return new(
            [
                new("levelDbA", level, Unit.DecibelA, "A-weighted level"),
                new("screenGainDb", gain, Unit.Decibel, "what the screen takes off the A-weighted level"),
                .. BandResults("weightedDb", screened + FrequencyWeighting.ABandsDb, Unit.DecibelA, "A-weighted level"),
                .. BandResults("screenDb", open - screened, Unit.Decibel, "A_bar"),
            ],
            [
                Step($"L = L_W - A_div - A_atm - A_gr - A_bar in each band"),
                Step($"A_bar = max(0, D_z - max(A_gr, 0)) over the top; D_z round the ends; never under 0 together"),
                Step($"L_A = {level:F2} dB(A); without the screen {level + gain:F2} dB(A)"),
            ]
        );
    }

    private static SumAnswer OverTop(SumInput input, Obstacle[] screens)
    {
        DetourPath path =
            Detours.OverTop(Source(input), Ear(input), screens)
            ?? throw new ArgumentException("The screen must stand between source and ear.", nameof(screens));
        return Answer(
            path,
            BandValues.Build(band => ScreenDiffraction.OverTopDb(band, path)),
            ScreenDiffraction.Meteorology(path)
        );
    }

    private static SumAnswer Answer(DetourPath path, BandValues diffraction, double meteorology) =>
        new(
            [
                new(
                    "extraMetres",
                    path.ExtraMetres,
                    Unit.Metre,
                    "z, how much longer the way is; below 0 where it sees over"
                ),
                new("meteorology", meteorology, Unit.One, "K_met"),
                .. BandResults("diffractionDb", diffraction, Unit.Decibel, "D_z"),
            ],
            [
                Step(
                    $"z = {path.FirstLegMetres:F4} + {path.BetweenMetres:F4} + {path.LastLegMetres:F4} against {path.DirectMetres:F4} m = {path.ExtraMetres:F4} m"
                ),
                Step($"K_met = {meteorology:F4}"),
                Step(
                    $"D_z = 10 lg(3 + 20/λ · C_3 · z · K_met), λ = 340/f; over one edge at most 20 dB, over two 25 dB"
                ),
            ]
        );

    private static Obstacle Upright(SumInput input, string at, string height)
    {
        double x = Between(input, at);
        return new(at, [new(x, -WideMetres), new(x, WideMetres)], false, input.Number(height));
    }

    private static double Between(SumInput input, string key) =>
        input.Number(key) < input.Number("distanceMetres")
            ? input.Number(key)
            : throw new ArgumentException("It must stand between source and ear.", key);

    private static RaisedPoint Source(SumInput input) => new(new(0, 0), input.Number("sourceHeightMetres"));

    private static RaisedPoint Ear(SumInput input) =>
        new(new(input.Number("distanceMetres"), 0), input.Number("earHeightMetres"));

    /// <summary>A point of three numbers, its height 0 or more.</summary>
    public static RaisedPoint Raised(SumInput input, string key)
    {
        ValueList<double> xyz = input.Numbers(key);
        return xyz[2] >= 0
            ? new(new(xyz[0], xyz[1]), xyz[2])
            : throw new ArgumentException("The third number is a height: 0 or more.", key);
    }
}
