using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums with the United States' noise reduction rating.</summary>
internal static class NoiseReductionSums
{
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "protector-nrr",
            "level at the ear with a noise reduction rating",
            [
                ExposureSums.Level("averageDb", "time-weighted average without protector", Unit.Decibel),
                ProtectorSums.Rating("ratingDb", "NRR"),
                new("weighting", "weighting of the average", Unit.One) { Words = ["A", "C"] },
                new("halved", "whether half the reduction is counted for field use", Unit.One)
                {
                    Words = ["no", "yes"],
                },
            ],
            ["osha-1910-95"],
            Nrr
        ),
        new(
            "protector-nrr-double",
            "level at the ear with plug and muff by the noise reduction rating",
            [
                ExposureSums.Level("averageDbA", "time-weighted average without protector"),
                ProtectorSums.Rating("firstDb", "NRR of one"),
                ProtectorSums.Rating("secondDb", "NRR of the other"),
                new("halved", "whether half the reduction is counted for field use", Unit.One)
                {
                    Words = ["no", "yes"],
                },
            ],
            ["osha-1910-95"],
            NrrDouble
        ),
    ];

    private static SumAnswer Nrr(SumInput input)
    {
        double average = input.Number("averageDb");
        double rating = input.Number("ratingDb");
        bool isHalved = input.Word("halved") == "yes";
        bool isC = input.Word("weighting") == "C";
        if (isC && isHalved)
        {
            throw ProtectorSums.Refused("Half the reduction is used with A-weighted averages only.", "halved");
        }

        double ear = isC
            ? NoiseReductionRating.FromCWeightedDbA(average, rating)
            : NoiseReductionRating.FromAWeightedDbA(average, rating, isHalved);
        return Ear(
            ear,
            isC ? "TWA_C − NRR"
                : isHalved ? "TWA_A − (NRR − 7)/2"
                : "TWA_A − (NRR − 7)"
        );
    }

    private static SumAnswer NrrDouble(SumInput input)
    {
        bool isHalved = input.Word("halved") == "yes";
        double ear = NoiseReductionRating.DoubleDbA(
            input.Number("averageDbA"),
            input.Number("firstDb"),
            input.Number("secondDb"),
            isHalved
        );
        return Ear(ear, isHalved ? "TWA_A − [(higher NRR − 7)/2 + 5]" : "TWA_A − [(higher NRR − 7) + 5]");
    }

    private static SumAnswer Ear(double ear, string formula) =>
        new(
            [new("earDbA", ear, Unit.DecibelA, "level at the ear")],
            [ExposureSums.Line($"{formula} = {ear:0.0} dB(A)")]
        );
}
