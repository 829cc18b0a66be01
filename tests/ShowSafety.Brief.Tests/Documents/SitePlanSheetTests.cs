using ShowSafety.Brief.Documents;
using ShowSafety.Brief.Drawing;

namespace ShowSafety.Brief.Tests.Documents;

public sealed class SitePlanSheetTests
{
    [Theory]
    [InlineData(60, 10, 267)]
    [InlineData(10, 60, 180)]
    [InlineData(30, 30, 180)]
    public void Of_Drawing_IsTurnedWhereThatShowsItLarger(double width, double height, double sheetWidth)
    {
        var drawing = new ScaleDrawing("Site", "", [], []) { Extent = new MetreBox(0, 0, width, height) };

        Assert.Equal(sheetWidth, SitePlanSheet.Of([drawing]).WidthMillimetres);
    }
}
