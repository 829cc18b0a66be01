using CsCheck;
using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Tests.Typesetting;

public sealed class LineBreakerTests
{
    private static readonly TextStyle Style = TextStyles.Body;

    [Fact]
    public void Break_EmptyText_IsOneEmptyLine()
    {
        SetLine line = Assert.Single(LineBreaker.Break("", Style, 50));

        Assert.Empty(line.Pieces);
    }

    [Fact]
    public void Break_TextThatJustFits_IsOneLine()
    {
        const string Text = "measured level";

        Assert.Single(LineBreaker.Break(Text, Style, TextMeasure.WidthMillimetres(Text, Style)));
        Assert.Equal(2, LineBreaker.Break(Text, Style, TextMeasure.WidthMillimetres(Text, Style) - 0.01).Count);
    }

    [Fact]
    public void Break_LineFeed_StartsALine()
    {
        Assert.Equal(["one", "", "two"], LineBreaker.Break("one\r\n\ntwo", Style, 100).Select(line => line.Text));
    }

    [Fact]
    public void Break_WordWiderThanTheMeasure_IsCutBetweenCharactersAndLosesNone()
    {
        string word = new('m', 200);

        IReadOnlyList<SetLine> lines = LineBreaker.Break("a " + word + " z", Style, 60);

        Assert.Equal("a " + word + " z", string.Concat(lines.Select(line => line.Text)));
        Assert.All(lines, line => Assert.True(line.WidthMillimetres <= 60 + 1e-6));
    }

    [Theory]
    [InlineData("on 2026-05-09")]
    [InlineData("from 10–20")]
    [InlineData("at 3/4")]
    public void Break_DatesRangesAndFractions_StayWhole(string text)
    {
        string last = text.Split(' ')[1];
        double measure = TextMeasure.WidthMillimetres(last, Style) + 0.5;

        Assert.Equal(
            [text.Split(' ')[0] + " ", last],
            LineBreaker.Break(text, Style, measure).Select(line => line.Text)
        );
    }

    [Fact]
    public void Break_Hyphen_MayEndALine()
    {
        double measure = TextMeasure.WidthMillimetres("hearing-", Style) + 0.5;

        Assert.Equal(["hearing-", "zone"], LineBreaker.Break("hearing-zone", Style, measure).Select(line => line.Text));
    }

    [Fact]
    public void Break_FaceChangesInsideAWord_KeepsTheWordTogether()
    {
        var text = new RichText([new TextRun("level "), new TextRun("high", Face.Bold), new TextRun("er")]);
        double measure = TextMeasure.WidthMillimetres("level high", Style) + 1;

        IReadOnlyList<SetLine> lines = LineBreaker.Break(text, Style, measure);

        Assert.Equal(["level ", "higher"], lines.Select(line => line.Text));
        Assert.Equal([Face.Bold, Face.Regular], lines[1].Pieces.Select(piece => piece.Face));
        Assert.Equal(
            TextMeasure.WidthMillimetres("high", Face.Bold, Style.SizePoints),
            lines[1].Pieces[1].XMillimetres,
            1e-9
        );
    }

    [Fact]
    public void Break_ControlCharacters_BecomeSpaces()
    {
        Assert.Equal("a b", LineBreaker.Break("a\tb", Style, 100).Single().Text);
    }

    [Fact]
    public void Break_AnyWords_FitTheMeasureAndKeepTheirOrder()
    {
        Gen<string[]> words = Gen.String[Gen.Char["abcdefghijklmnoMW0123456789"], 1, 30].Array[1, 60];

        Gen.Select(words, Gen.Double[8, 120])
            .Sample(
                (some, measure) =>
                {
                    string text = string.Join(' ', some);
                    IReadOnlyList<SetLine> lines = LineBreaker.Break(text, Style, measure);
                    Assert.All(lines, line => Assert.True(line.WidthMillimetres <= measure + 1e-5));
                    string read = string.Concat(lines.Select(line => line.Text));
                    Assert.Equal(
                        text.Replace(" ", "", StringComparison.Ordinal),
                        read.Replace(" ", "", StringComparison.Ordinal)
                    );
                },
                iter: 200
            );
    }
}
