using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about weighting and uncertainty.</summary>
internal static class SoundWeightingSums
{
    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() => [Weighting(), Weighted(), Uncertainty()];

    private static WorkedSum Weighting() =>
        new(
            "frequency-weighting",
            "A- and C-weighting at a third-octave midband",
            [Number("thirdOctaveNumber", "n of the exact midband 10^(n/10) Hz: 30 is 1 kHz", Unit.One, 10, 43)],
            ["iec-61672-1", "iec-61260-1"],
            input =>
            {
                double hertz = FrequencyWeighting.ExactThirdOctaveHertz(
                    (int)Math.Round(input.Number("thirdOctaveNumber"))
                );
                double a = FrequencyWeighting.ADb(hertz);
                double c = FrequencyWeighting.CDb(hertz);
                return new(
                    [
                        new("aDb", a, Unit.Decibel, "A-weighting"),
                        new("cDb", c, Unit.Decibel, "C-weighting"),
                        new("frequencyHertz", hertz, Unit.Hertz, "exact midband frequency"),
                    ],
                    [Step($"f = 10^(n/10) = {hertz:F2} Hz; A = {a:F2} dB; C = {c:F2} dB")]
                );
            }
        );

    private static WorkedSum Weighted() =>
        new(
            "weighted-level",
            "A- and C-weighted level of octave band levels",
            [Bands("bandsDb", "unweighted octave band levels, 63 Hz to 8 kHz")],
            ["iec-61672-1"],
            input =>
            {
                BandValues bands = input.Bands("bandsDb");
                double a = FrequencyWeighting.LevelDbA(bands);
                double c = FrequencyWeighting.LevelDbC(bands);
                return new(
                    [
                        new("levelDbA", a, Unit.DecibelA, "A-weighted level"),
                        new("levelDbC", c, Unit.DecibelC, "C-weighted level"),
                        new("levelDb", Decibels.Sum(bands), Unit.Decibel, "unweighted level"),
                        .. BandResults("weightedDb", bands + FrequencyWeighting.ABandsDb, Unit.DecibelA, "A-weighted"),
                    ],
                    [Step($"L_A = 10 lg Σ 10^((L_i + A_i)/10) = {a:F2} dB(A); L_C = {c:F2} dB(C)")]
                );
            }
        );

    private static WorkedSum Uncertainty() =>
        new(
            "expanded-uncertainty",
            "uncertainty of a level, one-sided 95 %",
            [Several("standardDb", "standard uncertainties of the parts", Unit.Decibel, 0, 50)],
            ["iso-9612-uncertainty", "sound-uncertainty-choice"],
            input =>
            {
                ValueList<double> parts = input.Numbers("standardDb");
                double expanded = LevelUncertainty.ExpandedDb(parts.Select(p => new UncertaintyPart("part", p)));
                return new(
                    [new("expandedDb", expanded, Unit.Decibel, "expanded uncertainty U")],
                    [
                        Step(
                            $"U = 1.65 √(Σ u²) = 1.65 · {expanded / LevelUncertainty.CoverageFactor:F2} = {expanded:F2} dB"
                        ),
                    ]
                );
            }
        );
}
