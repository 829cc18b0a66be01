using ShowSafety.Brief.Drawing;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class DrawingScaleTests
{
    // By the meaning of a scale (ISO 5455:1979, clause 3): drawn size over real size.
    [Theory]
    [InlineData(10, 200, 50)]
    [InlineData(10, 100, 100)]
    [InlineData(1, 50, 20)]
    [InlineData(250, 1000, 250)]
    public void ToMillimetres_LengthAtScale_IsDrawnSize(double metres, int denominator, double millimetres)
    {
        var scale = new DrawingScale(denominator);

        Assert.Equal(millimetres, scale.ToMillimetres(metres), 1e-12);
        Assert.Equal(metres, scale.ToMetres(millimetres), 1e-12);
    }

    [Theory]
    [InlineData(8.5, 5, 50)]
    [InlineData(17, 5, 100)]
    [InlineData(17.01, 5, 200)]
    [InlineData(34.01, 5, 250)]
    [InlineData(5, 100, 500)]
    [InlineData(4000, 100, 25_000, "beyond the series")]
    public void Fitting_Extent_IsLargestRoundScaleThatHoldsIt(
        double width,
        double height,
        int expected,
        string? note = null
    )
    {
        int rounded = note is null ? expected : 30_000;

        DrawingScale scale = DrawingScale.Fitting(new MetreBox(0, 0, width, height), 170, 200);

        Assert.Equal(rounded, scale.Denominator);
    }

    [Fact]
    public void Fitting_ExtentOfOnePoint_IsLargestScaleOfSeries()
    {
        Assert.Equal(20, DrawingScale.Fitting(new MetreBox(3, 3, 3, 3), 170, 200).Denominator);
    }

    [Fact]
    public void ToString_Scale_ReadsAsRatio()
    {
        Assert.Equal("1:250", new DrawingScale(250).ToString());
    }
}
