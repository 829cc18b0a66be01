using ShowSafety.Brief.Drawing;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class MetrePointTests
{
    // Headings as on a compass: clockwise from +y (common practice, no source).
    [Theory]
    [InlineData(0, 0, 10)]
    [InlineData(90, 10, 0)]
    [InlineData(180, 0, -10)]
    [InlineData(270, -10, 0)]
    public void Towards_Heading_CountsClockwiseFromUp(double heading, double x, double y)
    {
        MetrePoint point = new MetrePoint(1, 2).Towards(heading, 10);

        Assert.Equal(1 + x, point.XMetres, 1e-9);
        Assert.Equal(2 + y, point.YMetres, 1e-9);
    }

    [Fact]
    public void Around_NoPoints_IsNothing()
    {
        Assert.Null(MetreBox.Around([]));
    }

    [Fact]
    public void Around_Points_IsSmallestBox()
    {
        Assert.Equal(new MetreBox(-1, 2, 4, 7), MetreBox.Around([new(4, 2), new(-1, 7), new(0, 5)]));
    }
}
