using CsCheck;
using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Zones;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Exposure.Zones;

public sealed class WornBoundTests
{
    private static Gen<HearingProtector> Protectors { get; } =
        Gen.Select(
            Gen.Double[0, 40],
            Gen.Double[0, 40],
            Gen.Double[0, 40],
            Gen.Double[0, 40],
            Gen.Bool,
            (high, medium, low, snr, isHml) =>
                isHml
                    ? new HearingProtector
                    {
                        HighDb = Is(high),
                        MediumDb = Is(medium),
                        LowDb = Is(low),
                    }
                    : new HearingProtector { SnrDb = Is(snr) }
        );

    private static Gen<(double Least, double Most)> Range { get; } =
        Gen.Select(Gen.Double[60, 130], Gen.Double[0, 25], (least, width) => (least, least + width));

    private static Gen<double> Share { get; } = Gen.OneOf(Gen.Double[0, 1], Gen.Const(0.0), Gen.Const(1.0));

    [Fact]
    public void HighestDbA_OverRanges_IsNotExceededAtAnyLevelsWithin() =>
        Gen.Select(Protectors, Range, Range, Share, Share)
            .Sample(
                (protector, a, c, shareOfA, shareOfC) =>
                {
                    double worn = WornProtector.LevelDbA(protector, Within(a, shareOfA), Within(c, shareOfC))!.Value;
                    Assert.True(worn <= new WornBound(protector).HighestDbA(a, c) + 1e-9);
                },
                iter: 50_000
            );

    [Fact]
    public void HighestDbA_OfOneLevel_IsTheLevelUnderTheProtector() =>
        Gen.Select(Protectors, Gen.Double[60, 130], Gen.Double[60, 130])
            .Sample(
                (protector, a, c) =>
                    Assert.Equal(
                        WornProtector.LevelDbA(protector, a, c)!.Value,
                        new WornBound(protector).HighestDbA((a, a), (c, c)),
                        1e-9
                    )
            );

    [Fact]
    public void IsSteady_WhereTrue_TheMostOfBothLevelsIsTheWorst() =>
        Gen.Select(Protectors, Range, Range)
            .Where((protector, _, _) => new WornBound(protector).IsSteady)
            .Sample(
                (protector, a, c) =>
                {
                    var bound = new WornBound(protector);
                    Assert.Equal(bound.HighestDbA(a, c), bound.HighestDbA((a.Most, a.Most), (c.Most, c.Most)), 1e-9);
                },
                iter: 20_000
            );

    // A usual muff, H over M over L by a few dB, is steady; one that gives more against low tones is not.
    [Theory]
    [InlineData(34, 29, 20, false)]
    [InlineData(30, 28, 22, true)]
    [InlineData(20, 25, 30, false)]
    public void IsSteady_OfRatings_IsAsTheSlopesSay(double high, double medium, double low, bool isSteady) =>
        Assert.Equal(
            isSteady,
            new WornBound(
                new()
                {
                    HighDb = Is(high),
                    MediumDb = Is(medium),
                    LowDb = Is(low),
                }
            ).IsSteady
        );

    private static double Within((double Least, double Most) range, double share) =>
        range.Least + (share * (range.Most - range.Least));

    private static Stated Is(double value) => new() { Value = value, Pedigree = Pedigree.Measured };
}
