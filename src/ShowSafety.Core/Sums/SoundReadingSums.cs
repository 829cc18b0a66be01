using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Sources.Reduction;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums from a reading to sound power.</summary>
internal static class SoundReadingSums
{
    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() => [Power(), TwoLevels()];

    private static WorkedSum Power() =>
        new(
            "reading-power",
            "sound power levels from one reading: background, room, ground and air taken off",
            [
                Bands("bandsDb", "levels at the microphone, 63 Hz to 8 kHz"),
                Number("backgroundDbA", "level with the engine stopped, -200 for none", Unit.DecibelA, -200, 200, -200),
                Number(
                    "absorptionSquareMetres",
                    "absorption area of the room, the largest number for outdoors",
                    Unit.SquareMetre,
                    0.1,
                    1e12,
                    1e12
                ),
                Number("groundFactor", "G: 0 hard, 1 porous", Unit.One, 0, 1, 0),
                Number("distanceMetres", "distance along the ground", Unit.Metre, 0.1, 1000),
                Number("sourceHeightMetres", "height of the source", Unit.Metre, 0, 20),
                Number("microphoneHeightMetres", "height of the microphone", Unit.Metre, 0, 20),
                .. Air,
            ],
            ["iso-3744", "iso-3746", "iso-9613-2", "iso-9613-1"],
            input =>
            {
                var place = new MicrophonePlace(
                    input.Number("distanceMetres"),
                    input.Number("sourceHeightMetres"),
                    input.Number("microphoneHeightMetres"),
                    GroundFactors.Even(input.Number("groundFactor"))
                );
                ReducedReading reduced =
                    ReducedReading.Of(
                        input.Bands("bandsDb"),
                        input.Number("backgroundDbA"),
                        BandValues.Uniform(input.Number("absorptionSquareMetres")),
                        place,
                        AirAbsorption
                            .BandsDecibelsPerKilometre(AirOf(input))
                            .Map(AirAbsorption.PowerCoefficientPerMetre)
                    )
                    ?? throw new ArgumentException(
                        "The background is less than 3 dB below the reading: the level can't be told.",
                        "backgroundDbA"
                    );
                return Answer(reduced);
            }
        );

    private static SumAnswer Answer(ReducedReading reduced)
    {
        double room = reduced.Room?.FormulaDbA ?? 0;
        double level = FrequencyWeighting.LevelDbA(reduced.FreeDb);
        double power = FrequencyWeighting.LevelDbA(reduced.PowerDb);
        return new(
            [
                new("powerDbA", power, Unit.DecibelA, "A-weighted power level"),
                new("backgroundCorrectionDb", reduced.Background.CorrectionDb, Unit.Decibel, "K1 used"),
                new("roomCorrectionDb", room, Unit.Decibel, "K2 of the A-weighted level by the formula"),
                new("freeLevelDbA", level, Unit.DecibelA, "level of the engine alone in the open"),
                .. BandResults("powerDb", reduced.PowerDb, Unit.Decibel, "power level"),
            ],
            [
                Step(
                    $"K1 = {reduced.Background.CorrectionDb:F2} dB in every band; K2 = {room:F2} dB of the A-weighted level, no more than 7 dB used in a band"
                ),
                Step($"engine alone in the open: {level:F2} dB(A)"),
                Step($"L_W = L + 10 lg(4π r²) + A_atm + A_gr' in each band; together {power:F2} dB(A)"),
            ]
        );
    }

    private static WorkedSum TwoLevels() =>
        new(
            "spectrum-from-two-levels",
            "an assumed spectrum made to meet the dB(A) and the dB(C) read",
            [
                Bands("shapeDb", "the assumed spectrum, at any level"),
                Number("levelDbA", "A-weighted level read", Unit.DecibelA, 0, 200),
                Number("levelDbC", "C-weighted level read", Unit.DecibelC, 0, 200),
            ],
            ["iec-61672-1"],
            input =>
            {
                BandValues shape = input.Bands("shapeDb");
                BandValues assumed = shape + (input.Number("levelDbA") - FrequencyWeighting.LevelDbA(shape));
                var fitted = LowBands.Of(assumed, input.Number("levelDbC"));
                double a = FrequencyWeighting.LevelDbA(fitted.BandsDb);
                double c = FrequencyWeighting.LevelDbC(fitted.BandsDb);
                return new(
                    [
                        new("levelDbA", a, Unit.DecibelA, "A-weighted level of the spectrum used"),
                        new("levelDbC", c, Unit.DecibelC, "C-weighted level of the spectrum used"),
                        new("lowChangeDb", fitted.LowChangeDb, Unit.Decibel, "added to the bands up to 250 Hz"),
                        .. BandResults("bandDb", fitted.BandsDb, Unit.Decibel, "level"),
                    ],
                    [
                        Step(
                            $"assumed: {FrequencyWeighting.LevelDbA(assumed):F2} dB(A), {FrequencyWeighting.LevelDbC(assumed):F2} dB(C)"
                        ),
                        Step($"63 to 250 Hz up by {fitted.LowChangeDb:F2} dB: {a:F2} dB(A), {c:F2} dB(C)"),
                    ]
                );
            }
        );
}
