using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class DrawingSheetTests
{
    [Fact]
    public void Equals_WholeDrawings_ComparesTheirContents()
    {
        Assert.Equal(SampleDrawing.Hall(), SampleDrawing.Hall());
        Assert.NotEqual(SampleDrawing.Hall(), SampleDrawing.Hall() with { NorthDegrees = 31 });
    }

    [Fact]
    public void Compose_Hall_FitsItsPaperAtARoundScale()
    {
        PaperPicture picture = DrawingSheet.Compose(SampleDrawing.Hall(), 170, 200);

        Assert.Equal(200, picture.Frame.Scale.Denominator);
        Assert.Equal(170, picture.WidthMillimetres);
        Assert.InRange(picture.HeightMillimetres, 100, 201);
        Assert.Contains("Scale 1:200", Texts(picture));
    }

    [Fact]
    public void Compose_CrowdOfLabelsAtOnePoint_ExplainsInTheLegendWhatFindsNoRoom()
    {
        ValueList<DrawingElement> labels = Enumerable
            .Range(1, 150)
            .Select(i => (DrawingElement)new Label(new PlanPoint(5, 5), $"Thing number {i}"))
            .ToValueList();
        var drawing = new ScaleDrawing("Crowd", "Many labels", [new("labels", labels)], [])
        {
            Extent = new MetreBox(0, 0, 10, 10),
        };

        string[] texts = [.. Texts(DrawingSheet.Compose(drawing, 170, 120))];

        Assert.All(
            Enumerable.Range(1, 150),
            i => Assert.Contains(texts, t => t.EndsWith($"Thing number {i}", StringComparison.Ordinal))
        );
        int notes = texts.Count(t => t.StartsWith('(') && t.Contains("Thing", StringComparison.Ordinal));
        Assert.NotEqual(0, notes);
        Assert.Contains($"({notes})", texts);
    }

    [Fact]
    public void Compose_LabelOutsideTheExtent_PointsFromTheEdge()
    {
        var drawing = new ScaleDrawing("Edge", "", [new("labels", [new Label(new PlanPoint(500, 5), "Far off")])], [])
        {
            Extent = new MetreBox(0, 0, 10, 10),
        };

        PaperPicture picture = DrawingSheet.Compose(drawing, 170, 120);

        PaperText text = picture.Layers.SelectMany(l => l.Items).OfType<PaperText>().Single(t => t.Text == "Far off");
        Assert.InRange(text.Start.X, 0, 170);
    }

    [Fact]
    public void Compose_NothingDrawn_StillGivesAPicture()
    {
        PaperPicture picture = DrawingSheet.Compose(new ScaleDrawing("Empty", "", [], []), 170, 120);

        Assert.Contains("North not given", Texts(picture));
    }

    [Fact]
    public void Compose_NotFinitePoints_AreLeftOut()
    {
        var line = new Polyline(
            [new(0, 0), new(double.NaN, 1), new(10, double.PositiveInfinity), new(10, 10)],
            Stroke.Thin
        );
        var drawing = new ScaleDrawing("Odd", "", [new("line", [line])], []);

        PaperPicture picture = DrawingSheet.Compose(drawing, 170, 120);

        Assert.All(
            picture.Layers.SelectMany(l => l.Items).OfType<PaperPath>().SelectMany(p => p.Rings).SelectMany(r => r),
            p => Assert.True(double.IsFinite(p.X) && double.IsFinite(p.Y))
        );
    }

    [Fact]
    public void Compose_ElementKeptClear_HasNoLabelOnIt()
    {
        var arrow = new Polyline([new(2, 5), new(8, 5)], Stroke.Medium, true) { KeepClear = true };
        ValueList<DrawingElement> labels = Enumerable
            .Range(0, 12)
            .Select(i => (DrawingElement)new Label(new PlanPoint(2 + (i * 0.5), 5), $"Label {i}"))
            .ToValueList();
        var drawing = new ScaleDrawing("Arrow", "", [new("a", [arrow]), new("b", labels)], [])
        {
            Extent = new MetreBox(0, 0, 10, 10),
        };

        PaperPicture picture = DrawingSheet.Compose(drawing, 170, 200);

        PaperPoint from = picture.Frame.ToPaper(new PlanPoint(2, 5));
        PaperPoint to = picture.Frame.ToPaper(new PlanPoint(8, 5));
        PaperText[] texts = [.. picture.Layers.Single(l => l.Name == "labels").Items.OfType<PaperText>()];
        Assert.Equal(12, texts.Length);
        Assert.All(
            texts,
            text =>
            {
                double height = text.Style.CapitalMillimetres;
                var box = new PaperBox(text.Start.X, text.Start.Y - height, text.WidthMillimetres, height);
                Assert.False(box.IsCrossedBy(from, to), text.Text);
            }
        );
    }

    [Fact]
    public void Compose_Banner_IsOnTheDrawing()
    {
        Assert.Contains("NOT TO RUN", Texts(DrawingSheet.Compose(SampleDrawing.Hall(), 170, 200)));
        Assert.DoesNotContain(
            "NOT TO RUN",
            Texts(DrawingSheet.Compose(SampleDrawing.Hall() with { Banner = null }, 170, 200))
        );
    }

    [Theory]
    [InlineData(20, 1)]
    [InlineData(50, 2)]
    [InlineData(200, 10)]
    [InlineData(250, 10)]
    [InlineData(1000, 50)]
    public void LengthMetres_Scale_IsRoundAndFitsTheBar(int denominator, double expected)
    {
        Assert.Equal(expected, ScaleBar.LengthMetres(new DrawingScale(denominator)), 1e-9);
    }

    [Fact]
    public void Draw_ScaleBar_IsAsLongAsItSays()
    {
        PaperPath[] parts = [.. ScaleBar.Draw(new DrawingScale(200), new PaperPoint(7, 3)).OfType<PaperPath>()];

        Assert.Equal(4, parts.Length);
        Assert.Equal(50, parts[^1].Rings[0].Max(p => p.X) - parts[0].Rings[0].Min(p => p.X), 1e-9);
    }

    [Theory]
    [InlineData(0, 0, -5)]
    [InlineData(90, 5, 0)]
    [InlineData(180, 0, 5)]
    public void Draw_North_PointsClockwiseFromTheTop(double north, double x, double y)
    {
        PaperPath shaft = NorthArrow.Draw(north, new PaperPoint(50, 50), "").OfType<PaperPath>().First();

        Assert.Equal(50 + x, shaft.Rings[0][1].X, 1e-9);
        Assert.Equal(50 + y, shaft.Rings[0][1].Y, 1e-9);
    }

    [Fact]
    public void LegendPictures_ManyEntries_ArePartedByHeightAndKeepEveryEntry()
    {
        SheetParts parts = DrawingSheet.Parts(SampleDrawing.Hall(), 170, 200);

        IReadOnlyList<PaperPicture> pictures = parts.LegendPictures(20);

        Assert.True(pictures.Count > 1);
        Assert.All(pictures, picture => Assert.True(picture.HeightMillimetres <= 20));
        Assert.All(
            parts.Legend,
            entry => Assert.Single(pictures, p => p.Description.Contains(entry.Text, StringComparison.Ordinal))
        );
    }

    [Fact]
    public void Of_Stack_LowersEachPictureByThoseAboveIt()
    {
        PaperPicture one = DrawingSheet.Parts(SampleDrawing.Hall(), 170, 200).Map;

        PaperPicture stack = PictureStack.Of([one, one], 5);

        Assert.Equal((2 * one.HeightMillimetres) + 5, stack.HeightMillimetres, 1e-9);
        PaperText first = stack.Layers.SelectMany(l => l.Items).OfType<PaperText>().First();
        PaperText again = stack.Layers.Skip(one.Layers.Count).SelectMany(l => l.Items).OfType<PaperText>().First();
        Assert.Equal(first.Text, again.Text);
        Assert.Equal(one.HeightMillimetres + 5, again.Start.Y - first.Start.Y, 1e-9);
    }

    [Fact]
    public void Compose_LegendEntries_AllStandBelowTheWindow()
    {
        PaperPicture picture = DrawingSheet.Compose(SampleDrawing.Hall(), 170, 200);

        PaperLayer legend = picture.Layers.Single(layer => layer.Name == "legend");
        Assert.All(
            legend.Items.OfType<PaperText>(),
            text => Assert.InRange(text.Start.Y, picture.Frame.Window.Bottom, picture.HeightMillimetres)
        );
        Assert.All(legend.Items.OfType<PaperText>(), text => Assert.True(text.Start.X + text.WidthMillimetres <= 170));
    }

    private static IEnumerable<string> Texts(PaperPicture picture) =>
        picture.Layers.SelectMany(layer => layer.Items).OfType<PaperText>().Select(text => text.Text);
}
