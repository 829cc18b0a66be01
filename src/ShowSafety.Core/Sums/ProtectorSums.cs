using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about hearing protectors.</summary>
internal static class ProtectorSums
{
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "protector-octave",
            "level at the ear by the octave band method",
            [
                Bands("aWeightedBandsDb", "A-weighted octave band levels, 63 Hz to 8 kHz"),
                Bands("assumedProtectionDb", "assumed protection values, 63 Hz to 8 kHz"),
            ],
            ["iso-4869-2-2018", "hse-l108-2021"],
            Octave
        ),
        new(
            "protector-hml",
            "level at the ear by the HML method",
            [
                ExposureSums.Level("levelDbA", "A-weighted level without protector"),
                ExposureSums.Level("levelDbC", "C-weighted level without protector", Unit.DecibelC),
                Rating("highDb", "H"),
                Rating("mediumDb", "M"),
                Rating("lowDb", "L"),
            ],
            ["iso-4869-2-2018", "hse-l108-2021"],
            Hml
        ),
        new(
            "protector-snr",
            "level at the ear by the SNR method",
            [
                ExposureSums.Level("levelDbC", "C-weighted level without protector", Unit.DecibelC),
                Rating("snrDb", "SNR"),
                ExposureSums.Level("levelDbA", "A-weighted level without protector, which caps the result") with
                {
                    Default = 200,
                },
            ],
            ["iso-4869-2-2018", "hse-l108-2021"],
            Snr
        ),
        new(
            "protector-rating",
            "H, M, L and SNR of the attenuation of one or more subjects",
            [
                new("attenuationsDb", "attenuation 63 Hz to 8 kHz, eight numbers a subject", Unit.Decibel)
                {
                    Min = -20,
                    Max = 100,
                    ListLength = 0,
                },
                new("alpha", "standard deviations taken off where there are two subjects or more", Unit.One)
                {
                    Min = 0,
                    Max = 3,
                    Default = ProtectorRating.Alpha84,
                },
            ],
            ["iso-4869-2-2018"],
            Ratings
        ),
        new(
            "protector-double",
            "most that plug and muff together give",
            [Rating("firstDb", "reduction of one"), Rating("secondDb", "reduction of the other")],
            ["hse-l108-2021"],
            Double
        ),
        new(
            "protector-partly-worn",
            "reduction left of a protector worn a part of the time",
            [
                Rating("reductionDb", "reduction while worn"),
                new("wornPercent", "part of the time it is worn", Unit.Percent) { Min = 0, Max = 100 },
            ],
            ["en-458-2016"],
            PartlyWorn
        ),
    ];

    private static SumParameter Bands(string key, string meaning) =>
        new(key, meaning, Unit.Decibel)
        {
            Min = -20,
            Max = 200,
            ListLength = OctaveBand.Count,
        };

    internal static SumParameter Rating(string key, string meaning) =>
        new(key, meaning, Unit.Decibel) { Min = 0, Max = 60 };

    internal static ArgumentException Refused(string reason, string parameter) => new(reason, parameter);

    private static SumAnswer AtEar(double calculated, double unprotected, ValueList<string> steps)
    {
        double worn = EarLevel.Worn(calculated, unprotected);
        return new(
            [
                new("earDbA", calculated, Unit.DecibelA, "calculated level at the ear"),
                new("wornDbA", worn, Unit.DecibelA, "level at the ear with the allowance for daily wear"),
            ],
            [.. steps, ExposureSums.Line($"daily wear: {calculated:0.00} + 4 = {worn:0.00} dB(A)")]
        );
    }

    private static SumAnswer Octave(SumInput input)
    {
        BandValues bands = input.Bands("aWeightedBandsDb");
        double ear = EarLevel.OctaveBandDbA(bands, input.Bands("assumedProtectionDb"));
        return AtEar(
            ear,
            Decibels.Sum(bands),
            [ExposureSums.Line($"10 lg Σ 10^((L_Af − APV_f)/10) = {ear:0.00} dB(A)")]
        );
    }

    private static SumAnswer Hml(SumInput input)
    {
        double levelA = input.Number("levelDbA");
        double levelC = input.Number("levelDbC");
        double reduction = EarLevel.HmlReductionDb(
            levelA,
            levelC,
            input.Number("highDb"),
            input.Number("mediumDb"),
            input.Number("lowDb")
        );
        SumAnswer ear = AtEar(
            levelA - reduction,
            levelA,
            [
                ExposureSums.Line($"L_C − L_A = {levelC - levelA:0.0} dB"),
                levelC - levelA <= 2 ? "PNR = M − (H − M)/4·(L_C − L_A − 2)" : "PNR = M − (M − L)/8·(L_C − L_A − 2)",
                ExposureSums.Line($"PNR = {reduction:0.00} dB, at the ear {levelA - reduction:0.00} dB(A)"),
            ]
        );
        return ear with
        {
            Results = [.. ear.Results, new("reductionDb", reduction, Unit.Decibel, "predicted noise level reduction")],
        };
    }

    private static SumAnswer Snr(SumInput input)
    {
        double ear = EarLevel.SnrDbA(input.Number("levelDbC"), input.Number("snrDb"));
        return AtEar(
            ear,
            input.Number("levelDbA"),
            [
                ExposureSums.Line(
                    $"L_C − SNR = {input.Number("levelDbC"):0.0} − {input.Number("snrDb"):0.0} = {ear:0.0} dB(A)"
                ),
            ]
        );
    }

    private static SumAnswer Ratings(SumInput input)
    {
        ValueList<double> numbers = input.Numbers("attenuationsDb");
        if (numbers.Count % OctaveBand.Count != 0)
        {
            throw Refused($"Eight numbers a subject are needed, {numbers.Count} were given.", "attenuationsDb");
        }

        BandValues[] subjects = [.. numbers.Chunk(OctaveBand.Count).Select(s => BandValues.Of(s))];
        ProtectorRatings ratings =
            subjects.Length == 1
                ? ProtectorRating.Of(subjects[0])
                : ProtectorRating.OfSubjects(subjects, input.Number("alpha"));
        return new(
            [
                new("highDb", ratings.HighDb, Unit.Decibel, "H"),
                new("mediumDb", ratings.MediumDb, Unit.Decibel, "M"),
                new("lowDb", ratings.LowDb, Unit.Decibel, "L"),
                new("snrDb", ratings.SnrDb, Unit.Decibel, "SNR"),
            ],
            [
                "PNR_i = 100 − 10 lg Σ 10^((L_Af,i − a_f)/10), 125 Hz to 8 kHz",
                "H = mean(PNR 1..4) − 0.48 Σ d_i PNR_i; M = mean(PNR 5..8) − 0.16 Σ d_i PNR_i; L = mean + 0.23 Σ d_i PNR_i",
                "of each subject; for a group, mean less alpha standard deviations",
                ExposureSums.Line(
                    $"H {ratings.HighDb:0.00}, M {ratings.MediumDb:0.00}, L {ratings.LowDb:0.00}, SNR {ratings.SnrDb:0.00} dB"
                ),
            ]
        );
    }

    private static SumAnswer Double(SumInput input)
    {
        double reduction = EarLevel.DoubleReductionDb(input.Number("firstDb"), input.Number("secondDb"));
        return new(
            [new("reductionDb", reduction, Unit.Decibel, "reduction of both together, at most")],
            [ExposureSums.Line($"the better one + 6 dB = {reduction:0.0} dB; ratings are never added")]
        );
    }

    private static SumAnswer PartlyWorn(SumInput input)
    {
        double reduction = EarLevel.PartlyWornReductionDb(
            input.Number("reductionDb"),
            input.Number("wornPercent") / 100
        );
        return new(
            [new("reductionDb", reduction, Unit.Decibel, "effective reduction")],
            [ExposureSums.Line($"−10 lg[w·10^(−R/10) + (1 − w)] = {reduction:0.0} dB")]
        );
    }
}
