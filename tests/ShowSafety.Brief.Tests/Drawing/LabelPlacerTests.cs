using CsCheck;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class LabelPlacerTests
{
    private static readonly PaperBox Window = new(0, 0, 120, 90);

    [Fact]
    public void Place_FirstLabel_StandsRightOfItsPointWithoutLeader()
    {
        PlacedLabel placed = Placed(new LabelPlacer(Window, []), "Engine", new PaperPoint(50, 40));

        Assert.Equal(51.6, placed.Box.Left, 1e-9);
        Assert.Equal(40, placed.Box.Top + (placed.Box.Height / 2), 1e-9);
        Assert.Null(placed.LeaderFrom);
    }

    [Fact]
    public void Place_CentredLabel_StandsOnItsPoint()
    {
        var label = new Label(new PlanPoint(0, 0), "Zone", Centred: true);

        PlacedLabel? placed = new LabelPlacer(Window, []).Place(label, new PaperPoint(50, 40));

        Assert.Equal(50, placed!.Box.Left + (placed.Box.Width / 2), 1e-9);
    }

    [Fact]
    public void Place_PointAtRightEdge_StandsOnTheOtherSide()
    {
        PlacedLabel placed = Placed(new LabelPlacer(Window, []), "Engine", new PaperPoint(119, 40));

        Assert.True(placed.Box.Right < 119);
    }

    [Fact]
    public void Place_ObstacleAllRound_GoesFurtherAndGetsALeader()
    {
        var placer = new LabelPlacer(Window, [new PaperBox(45, 35, 10, 10)]);

        PlacedLabel placed = Placed(placer, "Engine", new PaperPoint(50, 40));

        Assert.Equal(new PaperPoint(50, 40), placed.LeaderFrom);
    }

    [Fact]
    public void Place_NoRoom_IsNull()
    {
        var placer = new LabelPlacer(Window, [Window]);

        Assert.Null(placer.Place(new Label(new PlanPoint(0, 0), "Engine"), new PaperPoint(50, 40)));
    }

    [Fact]
    public void Force_NoRoom_StillStandsInTheWindow()
    {
        var placer = new LabelPlacer(Window, [Window]);

        PlacedLabel placed = placer.Force(new Label(new PlanPoint(0, 0), "(1)"), new PaperPoint(120, 90));

        Assert.True(Window.Holds(placed.Box));
    }

    [Fact]
    public void Place_LongText_WrapsToTheWidestLabel()
    {
        PlacedLabel placed = Placed(
            new LabelPlacer(Window, []),
            "A long name for a neighbour with a very quiet garden behind the hall",
            new PaperPoint(50, 40)
        );

        Assert.True(placed.Lines.Count > 1);
        Assert.True(placed.Box.Width <= LabelPlacer.WidestMillimetres + 1.01);
    }

    [Fact]
    public void Place_AnyPoints_NeverOverlapAndStayInTheWindow()
    {
        Gen<(double X, double Y)> points = Gen.Select(Gen.Double[0, 120], Gen.Double[0, 90]);

        points
            .Array[1, 30]
            .Sample(
                anchors =>
                {
                    var placer = new LabelPlacer(Window, []);
                    PlacedLabel[] placed =
                    [
                        .. anchors
                            .Select(
                                (p, i) =>
                                    placer.Place(new Label(new PlanPoint(0, 0), $"Label {i}"), new PaperPoint(p.X, p.Y))
                            )
                            .OfType<PlacedLabel>(),
                    ];
                    Assert.NotEmpty(placed);
                    Assert.All(placed, label => Assert.True(Window.Holds(label.Box)));
                    for (int i = 0; i < placed.Length; i++)
                    {
                        Assert.DoesNotContain(placed.Skip(i + 1), other => other.Box.Overlaps(placed[i].Box));
                    }
                },
                iter: 50
            );
    }

    private static PlacedLabel Placed(LabelPlacer placer, string text, PaperPoint anchor)
    {
        PlacedLabel? placed = placer.Place(new Label(new PlanPoint(0, 0), text), anchor);
        Assert.NotNull(placed);
        return placed;
    }
}
