using CsCheck;
using ShowSafety.Core.Gate;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Tests.Gate;

public sealed class RiskMatrixTests
{
    // Arithmetic of five by five: 7, 11, 13, 14, 17-19 and 21-24 can't occur.
    [Fact]
    public void Products_FiveByFive_AreFourteen() =>
        Assert.Equal([1, 2, 3, 4, 5, 6, 8, 9, 10, 12, 15, 16, 20, 25], RiskMatrix.Products);

    [Fact]
    public void CellsPerBand_AnyBands_AddUpToTwentyFive() =>
        Gen.Int[1, 24]
            .List[1, 6]
            .Sample(limits =>
            {
                ValueList<int> ascending = [.. limits.Distinct().Order()];
                Assert.Equal(25, RiskMatrix.CellsPerBand(ascending).Sum());
            });

    [Fact]
    public void Band_LimitsThatDoNotAscend_AreRefused() =>
        Assert.Throws<ArgumentException>(() => RiskMatrix.Band(5, [10, 4]));

    // Bands of a public body's form: Low 1-4, Medium 5-10, High 12-25.
    [Theory]
    [InlineData(4, 1)]
    [InlineData(5, 2)]
    [InlineData(10, 2)]
    [InlineData(12, 3)]
    [InlineData(25, 3)]
    public void Band_EdgesOfThePublishedBands_FallWhereTheyArePrinted(int product, int band) =>
        Assert.Equal(band, RiskMatrix.Band(product, [4, 10]));
}
