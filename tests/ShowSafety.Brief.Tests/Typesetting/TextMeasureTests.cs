using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Tests.Typesetting;

public sealed class TextMeasureTests
{
    // Advance widths in thousandths of the size, read from the hmtx tables of Source Sans 3 (release 3.052).
    [Theory]
    [InlineData("A", 0, 544)]
    [InlineData("W", 0, 786)]
    [InlineData("i", 0, 246)]
    [InlineData(" ", 0, 200)]
    [InlineData("°", 0, 331)]
    [InlineData("≥", 0, 497)]
    [InlineData("A", 1, 558)]
    [InlineData("A", 2, 573)]
    [InlineData("0", 2, 528)]
    [InlineData("A", 3, 510)]
    [InlineData("AAW", 0, 544 + 544 + 786)]
    public void WidthMillimetres_Text_IsSumOfAdvanceWidths(string text, int face, int thousandths)
    {
        double expected = thousandths / 1000.0 * 10 * 25.4 / 72;

        Assert.Equal(expected, TextMeasure.WidthMillimetres(text, (Face)face, 10), 0.002 * text.Length);
    }

    [Fact]
    public void Fitted_TextThatFits_IsUnchanged()
    {
        Assert.Equal("Hall", TextMeasure.Fitted("Hall", TextStyles.Body, 50));
    }

    [Fact]
    public void Fitted_TooLong_EndsInAnEllipsisAndFits()
    {
        string fitted = TextMeasure.Fitted("A very long name for a small show in a hall", TextStyles.Body, 30);

        Assert.EndsWith("…", fitted, StringComparison.Ordinal);
        Assert.InRange(TextMeasure.WidthMillimetres(fitted, TextStyles.Body), 20, 30);
    }

    // Every sign the briefs need has a glyph of its own; a missing one would be as wide as .notdef (0.65 em here).
    [Fact]
    public void Typeface_SignsOfTheTrade_AreInTheFace()
    {
        double notdef = TextMeasure.WidthMillimetres("⌀", Face.Regular, 100);

        Assert.All(
            "é–°²³·×≥≤±µ→₀₁₂₃₄₅₆₇₈₉☐•…",
            sign => Assert.NotEqual(notdef, TextMeasure.WidthMillimetres(sign.ToString(), Face.Regular, 100), 0.001)
        );
    }

    [Fact]
    public void Typeface_Licence_TravelsWithTheFonts()
    {
        using Stream? licence = typeof(Typeface).Assembly.GetManifestResourceStream("Typefaces/SourceSans3-OFL.txt");
        Assert.NotNull(licence);
        using var reader = new StreamReader(licence);

        Assert.Contains("SIL OPEN FONT LICENSE Version 1.1", reader.ReadToEnd(), StringComparison.Ordinal);
    }
}
