using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums about ground that changes along a path, and about ground near the source.</summary>
internal static class SoundGroundSums
{
    private static readonly ValueList<SumParameter> Parameters =
    [
        new("groundFactors", "G of the source, middle and receiver regions: 0 hard, 1 porous", Unit.One)
        {
            Min = 0,
            Max = 1,
            ListLength = 3,
        },
        Number("distanceMetres", "distance along the ground", Unit.Metre, 0.1, 1e4),
        Number("sourceHeightMetres", "height of the source", Unit.Metre, 0, 100),
        Number("receiverHeightMetres", "height of the ear", Unit.Metre, 0, 100),
    ];

    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() => [Regions(), Near()];

    /// <summary>The three factors of the inputs.</summary>
    public static GroundFactors Factors(SumInput input)
    {
        ValueList<double> g = input.Numbers("groundFactors");
        return new(g[0], g[1], g[2]);
    }

    private static WorkedSum Regions() =>
        new(
            "ground-attenuation-regions",
            "ground attenuation where the ground changes along the path",
            Parameters,
            ["iso-9613-2"],
            input =>
            {
                (double flat, double source, double receiver) = Way(input);
                BandValues ground = BandValues.Build(band =>
                    GroundEffect.AttenuationDb(band, Factors(input), flat, source, receiver)
                );
                return new(
                    [.. BandResults("groundDb", ground, Unit.Decibel, "A_gr")],
                    [
                        Step(
                            $"source region 30 h_s = {30 * source:F1} m, receiver region 30 h_r = {30 * receiver:F1} m"
                        ),
                        Step($"A_gr = A_s(G_s) + A_r(G_r) + A_m(G_m), ISO 9613-2:1996 Table 3"),
                    ]
                );
            }
        );

    private static WorkedSum Near() =>
        new(
            "ground-attenuation-near",
            "ground attenuation that holds near the source too",
            Parameters,
            ["iso-9613-2"],
            input =>
            {
                (double flat, double source, double receiver) = Way(input);
                BandValues ground = BandValues.Build(band =>
                    NearGround.AttenuationDb(band, Factors(input), flat, source, receiver, 0)
                );
                double image = NearGround.ImageDb(flat, source, receiver, 0);
                return new(
                    [
                        .. BandResults("groundDb", ground, Unit.Decibel, "A_gr'"),
                        new("floorImageDb", image, Unit.Decibel, "what the image in a hard floor adds, D_Ω"),
                    ],
                    [
                        Step($"D_Ω = 10 lg(1 + r_direct²/r_image²) = {image:F2} dB, air left out"),
                        Step($"A_gr' = A_gr + (3 - D_Ω)(1 - (G_s + G_r)/2); at 63 Hz whatever the ground"),
                    ]
                );
            }
        );

    private static (double Flat, double Source, double Receiver) Way(SumInput input) =>
        (input.Number("distanceMetres"), input.Number("sourceHeightMetres"), input.Number("receiverHeightMetres"));
}
