using CsCheck;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class DrawingFrameTests
{
    private static readonly PaperBox Window = new(10, 20, 170, 200);

    [Fact]
    public void ToPaper_CentreOfExtent_IsMiddleOfWindow()
    {
        DrawingFrame frame = DrawingFrame.Fit(new MetreBox(-10, 0, 20, 30), Window);

        PaperPoint middle = frame.ToPaper(new PlanPoint(5, 15));

        Assert.Equal(95, middle.X, 1e-9);
        Assert.Equal(120, middle.Y, 1e-9);
    }

    [Fact]
    public void ToPaper_PointFurtherUpTheSite_IsHigherOnPaper()
    {
        var frame = new DrawingFrame(new DrawingScale(200), Window, new PlanPoint(0, 0));

        PaperPoint low = frame.ToPaper(new PlanPoint(0, 0));
        PaperPoint high = frame.ToPaper(new PlanPoint(10, 10));

        Assert.Equal(50, high.X - low.X, 1e-9);
        Assert.Equal(-50, high.Y - low.Y, 1e-9);
    }

    [Fact]
    public void Fit_AnyExtent_HoldsAllCornersAndNoLargerRoundScaleWould()
    {
        Gen<MetreBox> boxes =
            from left in Gen.Double[-500, 500]
            from bottom in Gen.Double[-500, 500]
            from width in Gen.Double[0.5, 900]
            from height in Gen.Double[0.5, 900]
            select new MetreBox(left, bottom, left + width, bottom + height);

        boxes.Sample(box =>
        {
            DrawingFrame frame = DrawingFrame.Fit(box, Window);
            PaperBox slack = Window.Grown(1e-6);
            Assert.True(slack.Holds(frame.ToPaper(new PlanPoint(box.LeftMetres, box.BottomMetres))));
            Assert.True(slack.Holds(frame.ToPaper(new PlanPoint(box.RightMetres, box.TopMetres))));
            double half = frame.Scale.Denominator / 2.6;
            bool fitsMuchLarger =
                box.WidthMetres * 1000 / half <= Window.Width && box.HeightMetres * 1000 / half <= Window.Height;
            Assert.False(fitsMuchLarger && frame.Scale.Denominator > 20);
        });
    }

    [Theory]
    [InlineData(0, 0, 10, 10, true)]
    [InlineData(0, 8, 10, 8, false)]
    [InlineData(0, 5, 2.9, 5, false)]
    [InlineData(0, 5, 3.1, 5, true)]
    [InlineData(5, 0, 5, 10, true)]
    [InlineData(2, 0, 2, 10, false)]
    [InlineData(4, 4, 5, 5, true)]
    public void IsCrossedBy_Line_TellsWhetherItEnters(double x1, double y1, double x2, double y2, bool crossed)
    {
        var box = new PaperBox(3, 3, 4, 4);

        Assert.Equal(crossed, box.IsCrossedBy(new PaperPoint(x1, y1), new PaperPoint(x2, y2)));
    }
}
