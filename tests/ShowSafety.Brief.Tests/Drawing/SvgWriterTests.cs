using System.Globalization;
using System.Xml.Linq;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Write_Hall_IsWellFormedWithTitleDescriptionAndSizeInMillimetres()
    {
        XElement root = Root(SampleDrawing.Hall());

        Assert.Equal(Svg + "svg", root.Name);
        Assert.Equal("Hall", root.Element(Svg + "title")!.Value);
        Assert.StartsWith("A hall of 32 m by 20 m", root.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
        Assert.Equal("174mm", root.Attribute("width")!.Value);
        Assert.StartsWith("-2 -2 174 ", root.Attribute("viewBox")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_Hall_HasTheLayersFromTheBottomUp()
    {
        string[] layers =
        [
            .. Root(SampleDrawing.Hall()).Elements(Svg + "g").Select(g => g.Attribute("data-layer")!.Value),
        ];

        Assert.Equal(
            [
                "background",
                "site",
                "zones",
                "lines",
                "things",
                "leaders",
                "labels",
                "frame",
                "scale",
                "north",
                "legend",
            ],
            layers
        );
    }

    [Fact]
    public void Write_TenMetresAtOneToTwoHundred_SpansFiftyMillimetres()
    {
        var line = new Polyline([new(0, 0), new(10, 0)], Stroke.Thin);
        var drawing = new ScaleDrawing("Line", "", [new("line", [line])], []) { Extent = new MetreBox(0, 0, 32, 20) };

        XElement path = Root(drawing)
            .Elements(Svg + "g")
            .Single(g => g.Attribute("data-layer")!.Value == "line")
            .Elements()
            .Single();

        double[] numbers =
        [
            .. path.Attribute("d")!
                .Value.Split(['M', 'L', ' '], StringSplitOptions.RemoveEmptyEntries)
                .Select(n => double.Parse(n, CultureInfo.InvariantCulture)),
        ];
        Assert.Equal(50, numbers[2] - numbers[0], 2e-3);
        Assert.Equal(numbers[1], numbers[3]);
    }

    [Fact]
    public void Write_EveryFill_PointsAtAPatternThatExists()
    {
        XElement root = Root(SampleDrawing.Hall());
        HashSet<string> ids = [.. root.Descendants(Svg + "pattern").Select(p => p.Attribute("id")!.Value)];

        string[] used =
        [
            .. root.Descendants()
                .Select(e => e.Attribute("fill")?.Value)
                .OfType<string>()
                .Where(fill => fill.StartsWith("url(#", StringComparison.Ordinal))
                .Select(fill => fill[5..^1]),
        ];

        Assert.Equal(ids.Order(), used.Distinct().Order());
        Assert.Equal(Hatches.All.Sum(h => h.Lines.Count + (h.Dots is null ? 0 : 1)), ids.Count);
    }

    [Fact]
    public void Write_TextThatLooksLikeMarkup_StaysText()
    {
        const string Injection = "<script>alert('x')</script> & \"quoted\" ]]> \u0001";
        var drawing = new ScaleDrawing(
            Injection,
            Injection,
            [new(Injection, [new Label(new PlanPoint(1, 1), Injection)])],
            []
        );

        XElement root = Root(drawing);

        Assert.DoesNotContain(root.Descendants(), e => e.Name.LocalName == "script");
        Assert.Contains("<script>alert('x')</script>", root.Element(Svg + "title")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_LoneSurrogate_BecomesTheReplacementCharacter()
    {
        Assert.Equal("a\uFFFDb \U0001F600", XmlText.Clean("a\ud800b \U0001F600"));
    }

    [Fact]
    public void Write_SameDrawingTwice_GivesTheSameCharactersWithPointsAsDecimalMarks()
    {
        string first = Text(SampleDrawing.Hall());

        Assert.Equal(first, Text(SampleDrawing.Hall()));
        Assert.DoesNotContain("NaN", first, StringComparison.Ordinal);
        Assert.DoesNotContain("-0 ", first, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_SmallDrawing_IsThisSvg()
    {
        var area = new Area([SampleDrawing.Box(0, 0, 4, 2)], Stroke.Thin, Hatches.Rising, 0.5);
        var drawing = new ScaleDrawing("T", "D", [new("area", [area])], []) { Extent = new MetreBox(0, 0, 4, 2) };

        XElement group = Root(drawing).Elements(Svg + "g").Single(g => g.Attribute("data-layer")!.Value == "area");

        // Four by two metres at 1:50 are 80 mm by 40 mm, in the middle of a window of 170 mm by 60 mm.
        const string Data = "M45 50L125 50L125 10L45 10Z";
        Assert.Equal("url(#window-1)", group.Attribute("clip-path")!.Value);
        Assert.Equal([Data, Data, Data], group.Elements().Select(e => e.Attribute("d")!.Value));
        Assert.Equal(
            ["#808080", "url(#hatch-rising-1)", "none"],
            group.Elements().Select(e => e.Attribute("fill")!.Value)
        );
    }

    private static string Text(ScaleDrawing drawing) => SvgWriter.Write(DrawingSheet.Compose(drawing, 170, 200));

    private static XElement Root(ScaleDrawing drawing) => XDocument.Parse(Text(drawing)).Root!;
}
