using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;
using ShowSafety.Core.Sound.Sources.Reduction;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about directions, throttle states and the estimate of a jet.</summary>
internal static class SoundSourceSums
{
    private const string Choked = "choked";

    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() => [Fit(), Between(), Consistency(), BladeTone()];

    private static WorkedSum Fit() =>
        new(
            "directivity-fit",
            "a fit through readings in three directions or more",
            [
                Several("anglesDegrees", "angles from the exhaust axis", Unit.Degree, 0, 180),
                Several("powersDb", "power levels of these readings, in the same order", Unit.Decibel, 0, 250),
                new("table", "which jet", Unit.One) { Words = ["subsonic", Choked] },
            ],
            ["jet-directivity"],
            input =>
            {
                ValueList<double> angles = input.Numbers("anglesDegrees");
                ValueList<double> powers = input.Numbers("powersDb");
                if (angles.Count != powers.Count)
                {
                    throw new ArgumentException("One power level for each angle.", "powersDb");
                }

                JetDirectivity table = input.Word("table") == Choked ? JetDirectivity.Choked : JetDirectivity.Subsonic;
                DirectedReading[] readings =
                [
                    .. angles.Zip(powers, (a, l) => new DirectedReading(a, BandValues.Uniform(l))),
                ];
                DirectivityFit fit =
                    DirectivityFit.Of(readings, table)
                    ?? throw new ArgumentException(
                        "Three directions at least, over which the published table changes by 3 dB or more.",
                        "anglesDegrees"
                    );
                return Answer(fit, new FittedPower(fit, readings, table, null).SphereMeanDb()[0]);
            }
        );

    private static SumAnswer Answer(DirectivityFit fit, double mean) =>
        new(
            [
                new("baseDb", fit.BaseDb[0], Unit.Decibel, "power level where the published index is 0 dB"),
                new("share", fit.Share[0], Unit.One, "share of the published directivity"),
                new("standardDb", fit.StandardDb, Unit.Decibel, "standard deviation of the residuals"),
                new("sphereMeanDb", mean, Unit.Decibel, "power level of the whole source"),
                .. fit.Residuals.Select(
                    (r, i) =>
                        new SumResult(
                            FormattableString.Invariant($"residual{i + 1}Db"),
                            r.BandsDb[0],
                            Unit.Decibel,
                            FormattableString.Invariant($"reading minus fit at {r.AngleDegrees:G4} degrees")
                        )
                ),
            ],
            [
                Step($"least squares: L = {fit.BaseDb[0]:F2} dB + {fit.Share[0]:F3} · index"),
                Step($"residuals: {string.Join(", ", fit.Residuals.Select(r => Step($"{r.BandsDb[0]:F2}")))} dB"),
                Step($"beyond 20 degrees from every reading nothing is taken off the envelope: mean {mean:F2} dB"),
            ]
        );

    private static WorkedSum Between() =>
        new(
            "level-between-states",
            "level between two measured throttle states",
            [
                Number(
                    "lowerSpeed",
                    "jet speed, or shaft speed, of the lower state, in any unit",
                    Unit.One,
                    0.001,
                    1e7
                ),
                Number("upperSpeed", "that of the upper state, in the same unit", Unit.One, 0.001, 1e7),
                Number("speed", "that of the state in between", Unit.One, 0.001, 1e7),
                Number("lowerLevelDb", "level in the lower state", Unit.Decibel, -200, 250),
                Number("upperLevelDb", "level in the upper state", Unit.Decibel, -200, 250),
            ],
            ["jet-noise"],
            input =>
            {
                double share =
                    StateInterpolation.Share(
                        input.Number("lowerSpeed"),
                        input.Number("upperSpeed"),
                        input.Number("speed")
                    ) ?? throw new ArgumentException("It must lie between two different speeds.", "speed");
                double lower = input.Number("lowerLevelDb");
                double level = lower + (share * (input.Number("upperLevelDb") - lower));
                return new(
                    [
                        new("levelDb", level, Unit.Decibel, "level in between"),
                        new("share", share, Unit.One, "share of the way in the logarithm of the speed"),
                    ],
                    [
                        Step($"lg(U/U1)/lg(U2/U1) = {share:F4}"),
                        Step(
                            $"L = {lower:F2} + {share:F4} · ({input.Number("upperLevelDb"):F2} - {lower:F2}) = {level:F2} dB"
                        ),
                    ]
                );
            }
        );

    private static WorkedSum Consistency() =>
        new(
            "jet-consistency",
            "a measured power level against the textbook estimate of the jet",
            [
                Number("powerDb", "measured power level, mean over all directions", Unit.Decibel, 0, 250),
                Number("massFlowKilogramsPerSecond", "mass flow", Unit.KilogramPerSecond, 0.0001, 100),
                Number("speedMetresPerSecond", "jet speed at the nozzle", Unit.MetrePerSecond, 5, 700),
                Number("temperatureKelvin", "jet temperature", Unit.Kelvin, 200, 2000),
            ],
            ["jet-noise"],
            input =>
            {
                double estimate = JetNoise.HotJetPowerDb(
                    input.Number("massFlowKilogramsPerSecond"),
                    input.Number("speedMetresPerSecond"),
                    input.Number("temperatureKelvin")
                );
                var judged = JetConsistency.Of(input.Number("powerDb"), estimate, isFastestJet: true);
                string verdict = judged.Verdict switch
                {
                    JetVerdict.TooQuiet => "too quiet: check distance, weighting and unit",
                    JetVerdict.TooLoud => "too loud: check distance, weighting and unit",
                    _ => "within the spread of the estimate",
                };
                return new(
                    [
                        new("excessDb", judged.ExcessDb, Unit.Decibel, "measured minus estimate"),
                        new("estimateDb", estimate, Unit.Decibel, "estimate for the jet alone, good to 8 dB"),
                    ],
                    [Step($"{input.Number("powerDb"):F2} - {estimate:F2} = {judged.ExcessDb:F2} dB: {verdict}")]
                );
            }
        );

    private static WorkedSum BladeTone() =>
        new(
            "blade-tone",
            "the tone of the blades of a wheel",
            [
                Number("shaftSpeedRevolutionsPerMinute", "shaft speed", Unit.RevolutionPerMinute, 100, 1e6),
                Number("blades", "number of blades, a whole number", Unit.One, 1, 500),
            ],
            ["iec-61260-1"],
            input =>
            {
                double speed = input.Number("shaftSpeedRevolutionsPerMinute");
                double blades = input.Number("blades");
                double tone = BladeTones.Hertz(
                    speed,
                    blades == Math.Floor(blades)
                        ? (int)blades
                        : throw new ArgumentException("Blades are counted: a whole number.", "blades")
                );
                double over = tone / BladeTones.LastBandEdgeHertz;
                return new(
                    [
                        new("toneHertz", tone, Unit.Hertz, "frequency of the tone"),
                        new(
                            "edgeShare",
                            over,
                            Unit.One,
                            "of the upper edge of the 8 kHz band; above 1 no band shows it"
                        ),
                    ],
                    [
                        Step($"f = {speed:F0}/60 · {blades:F0} = {tone:F0} Hz"),
                        Step($"upper edge of the 8 kHz band: {BladeTones.LastBandEdgeHertz:F0} Hz"),
                    ]
                );
            }
        );
}
