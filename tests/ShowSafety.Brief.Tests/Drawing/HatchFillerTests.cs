using CsCheck;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class HatchFillerTests
{
    private static readonly PaperBox Sheet = new(0, 0, 200, 200);

    private static readonly ValueList<PaperPoint> Square = [new(10, 10), new(50, 10), new(50, 50), new(10, 50)];
    private static readonly ValueList<PaperPoint> Hole = [new(20, 20), new(40, 20), new(40, 40), new(20, 40)];

    // A hatch of fine lines measures an area: total length times spacing.
    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(45)]
    [InlineData(90)]
    [InlineData(135)]
    public void Strokes_SquareWithHole_CoverTheAreaBetween(double angle)
    {
        var lines = new HatchLines(angle, 0.1, 0.05);

        double area = HatchFiller.Strokes([Square, Hole], lines, Sheet).Sum(Length) * 0.1;

        Assert.Equal((40 * 40) - (20 * 20), area, 12.0);
    }

    [Fact]
    public void Strokes_FortyFiveDegrees_RiseToTheRightOnPaper()
    {
        HatchStroke stroke = HatchFiller.Strokes([Square], new HatchLines(45, 2, 0.2), Sheet)[0];

        Assert.True((stroke.To.X - stroke.From.X) * (stroke.To.Y - stroke.From.Y) < 0, "y counts downwards");
    }

    [Fact]
    public void Strokes_AnyStar_LieInsideByTheEvenOddRule()
    {
        Gen<PaperPoint> points = from x in Gen.Double[5, 195] from y in Gen.Double[5, 195] select new PaperPoint(x, y);

        Gen.Select(points.Array[3, 12], Gen.Double[0, 179.9])
            .Sample(
                (ring, angle) =>
                {
                    foreach (HatchStroke stroke in HatchFiller.Strokes([ring], new HatchLines(angle, 7, 0.2), Sheet))
                    {
                        if (Length(stroke) > 0.01)
                        {
                            Assert.True(IsInside(ring, Middle(stroke)));
                        }
                    }
                }
            );
    }

    [Fact]
    public void Strokes_AreaFarBeyondTheWindow_AreLimitedToIt()
    {
        ValueList<PaperPoint> vast = [new(-1e5, -1e5), new(1e5, -1e5), new(1e5, 1e5), new(-1e5, 1e5)];

        Assert.Equal(100, HatchFiller.Strokes([vast], new HatchLines(0, 2, 0.2), Sheet).Count);
        Assert.Equal(10_000, HatchFiller.Dots([vast], new HatchDots(2, 0.4), Sheet).Count);
    }

    [Fact]
    public void Dots_SquareWithHole_StayOutOfTheHole()
    {
        IReadOnlyList<PaperPoint> dots = HatchFiller.Dots([Square, Hole], new HatchDots(2, 0.4), Sheet);

        Assert.Equal((20 * 20) - (10 * 10), dots.Count);
        Assert.DoesNotContain(dots, dot => dot.X is > 20 and < 40 && dot.Y is > 20 and < 40);
    }

    [Fact]
    public void Strokes_NoRings_IsEmpty()
    {
        Assert.Empty(HatchFiller.Strokes([], new HatchLines(45, 2, 0.2), Sheet));
    }

    private static double Length(HatchStroke stroke) =>
        double.Hypot(stroke.To.X - stroke.From.X, stroke.To.Y - stroke.From.Y);

    private static PaperPoint Middle(HatchStroke stroke) =>
        new((stroke.From.X + stroke.To.X) / 2, (stroke.From.Y + stroke.To.Y) / 2);

    // Independent of the filler: a ray to the right from the point, crossings counted.
    private static bool IsInside(PaperPoint[] ring, PaperPoint p)
    {
        bool inside = false;
        for (int i = 0, j = ring.Length - 1; i < ring.Length; j = i++)
        {
            bool spans = ring[i].Y > p.Y != ring[j].Y > p.Y;
            if (spans && p.X < ((ring[j].X - ring[i].X) * (p.Y - ring[i].Y) / (ring[j].Y - ring[i].Y)) + ring[i].X)
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
