using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about the sound of jets.</summary>
internal static class SoundJetSums
{
    private const string Choked = "choked";

    private static readonly SumParameter Speed = Number(
        "speedMetresPerSecond",
        "jet speed at the nozzle",
        Unit.MetrePerSecond,
        5,
        700
    );

    private static readonly SumParameter Nozzle = Number(
        "nozzleMetres",
        "diameter of the nozzle",
        Unit.Metre,
        0.005,
        1
    );

    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() => [Power(), Change(), Peak(), Directivity()];

    private static WorkedSum Power() =>
        new(
            "jet-noise-power",
            "sound power level of a jet by three textbook formulas",
            [
                Number("massFlowKilogramsPerSecond", "mass flow", Unit.KilogramPerSecond, 0.0001, 100),
                Speed,
                Number("temperatureKelvin", "jet temperature", Unit.Kelvin, 200, 2000),
                Nozzle,
            ],
            ["jet-noise"],
            input =>
            {
                double flow = input.Number("massFlowKilogramsPerSecond");
                double speed = input.Number("speedMetresPerSecond");
                double stream = JetNoise.StreamPowerWatts(flow, speed);
                double hot = JetNoise.HotJetPowerDb(flow, speed, input.Number("temperatureKelvin"));
                double cold = JetNoise.ColdJetPowerDb(flow, speed);
                double single = JetNoise.SingleStreamPowerDb(input.Number("nozzleMetres"), speed);
                return new(
                    [
                        new("hotJetPowerDb", hot, Unit.Decibel, "with jet temperature (Bies and Hansen)"),
                        new("coldJetPowerDb", cold, Unit.Decibel, "cold jet (Beranek, Raichel)"),
                        new("singleStreamPowerDb", single, Unit.Decibel, "cold single stream (SAE ARP 876)"),
                        new("streamPowerWatts", stream, Unit.Watt, "stream power"),
                    ],
                    [
                        Step($"W_m = ½ ṁ U² = {stream:F0} W"),
                        Step(
                            $"L_W = {hot:F1} / {cold:F1} / {single:F1} dB; hot jets ±{JetNoise.EstimateSpreadDb:F0} dB"
                        ),
                    ]
                );
            }
        );

    private static WorkedSum Change() =>
        new(
            "jet-speed-change",
            "change of level with jet speed",
            [
                Number("fromMetresPerSecond", "first speed", Unit.MetrePerSecond, 1, 1000),
                Number("toMetresPerSecond", "other speed", Unit.MetrePerSecond, 1, 1000),
            ],
            ["jet-noise"],
            input =>
            {
                double change = JetNoise.SpeedChangeDb(
                    input.Number("fromMetresPerSecond"),
                    input.Number("toMetresPerSecond")
                );
                return new(
                    [new("changeDb", change, Unit.Decibel, "change of level")],
                    [Step($"80 lg(U2/U1) = {change:F2} dB")]
                );
            }
        );

    private static WorkedSum Peak() =>
        new(
            "jet-peak-frequency",
            "where the spectrum of a jet peaks",
            [Speed, Nozzle],
            ["jet-noise"],
            input =>
            {
                double hertz = JetNoise.PeakHertz(input.Number("speedMetresPerSecond"), input.Number("nozzleMetres"));
                return new(
                    [
                        new("peakHertz", hertz, Unit.Hertz, "peak of the spectrum"),
                        .. BandResults("shapeDb", JetNoise.ShapeDb(hertz), Unit.Decibel, "shape scaled to 0 dB(A)"),
                    ],
                    [Step($"f = 0.2 U/D = {hertz:F0} Hz")]
                );
            }
        );

    private static WorkedSum Directivity() =>
        new(
            "jet-directivity",
            "published directivity of jets, and what a single reading leaves open",
            [
                Number("angleDegrees", "angle from the exhaust axis", Unit.Degree, 0, 180),
                new("table", "which jet", Unit.One) { Words = ["subsonic", Choked] },
            ],
            ["jet-directivity"],
            input =>
            {
                double angle = input.Number("angleDegrees");
                JetDirectivity table = input.Word("table") == Choked ? JetDirectivity.Choked : JetDirectivity.Subsonic;
                var single = new ReadingEnvelope([new(angle, BandValues.Zero)], table, null);
                double open = single.SphereMeanDb()[0];
                return new(
                    [
                        new("indexDb", table.IndexDb(angle), Unit.Decibel, "directivity index, sphere mean 0 dB"),
                        new("printedDb", table.PrintedDb(angle), Unit.Decibel, "as printed"),
                        new(
                            "printedMeanDb",
                            table.PrintedSphereMeanDb,
                            Unit.Decibel,
                            "sphere mean of the printed table"
                        ),
                        new("envelopeMeanDb", open, Unit.Decibel, "sphere mean over a single reading at this angle"),
                    ],
                    [
                        Step(
                            $"table {table.PrintedDb(angle):F2} dB less its sphere mean {table.PrintedSphereMeanDb:F2} dB"
                        ),
                        Step($"a single reading here: the envelope's sphere mean is {open:F2} dB above it"),
                    ]
                );
            }
        );
}
