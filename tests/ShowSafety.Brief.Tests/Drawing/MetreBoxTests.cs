using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class MetreBoxTests
{
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
