using System.Text;
using System.Text.RegularExpressions;
using ShowSafety.Brief.Drawing;
using ShowSafety.Brief.Tests.Drawing;
using ShowSafety.Brief.Typesetting;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Outline;

namespace ShowSafety.Brief.Tests.Typesetting;

public sealed class PdfDocumentWriterTests
{
    private static readonly byte[] Full = SampleDocument.Pdf(SampleDocument.Full(SampleDocument.Picture));

    [Fact]
    public void Write_Text_CanBeReadBackWithItsSigns()
    {
        using PdfDocument pdf = PdfDocument.Open(Full);
        string text = string.Concat(pdf.GetPages().Select(page => page.Text));

        Assert.Contains("Brief for a running demonstration", text, StringComparison.Ordinal);
        Assert.Contains("é – ° ² ³ · × ≥ ≤ ± µ → L₀₁₂₃₉", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_EveryLetter_LiesOnThePage()
    {
        using PdfDocument pdf = PdfDocument.Open(Full);

        foreach (Page page in pdf.GetPages())
        {
            Assert.Equal(595.276, page.Width, 0.01);
            Assert.Equal(841.89, page.Height, 0.01);
            Assert.All(
                page.Letters,
                letter =>
                {
                    Assert.InRange(letter.StartBaseLine.X, Paper.ToPoints(15), page.Width - Paper.ToPoints(15));
                    Assert.InRange(letter.StartBaseLine.Y, Paper.ToPoints(8), page.Height - Paper.ToPoints(8));
                }
            );
        }
    }

    [Fact]
    public void Write_LaidOutPlaces_AreThePlacesInTheFile()
    {
        PrintedDocument document = SampleDocument.Of(new Paragraph("Xylophone"));
        TextItem expected = document.LayOut()[0].Items.OfType<TextItem>().Single(t => t.Text == "Xylophone");

        using PdfDocument pdf = PdfDocument.Open(SampleDocument.Pdf(document));
        Letter first = pdf.GetPage(1).Letters.Single(letter => letter.Value == "X" && letter.FontSize > 10.4);

        Assert.Equal(expected.X, Paper.ToMillimetres(first.StartBaseLine.X), 0.01);
        Assert.Equal(expected.Baseline, Paper.HeightMillimetres - Paper.ToMillimetres(first.StartBaseLine.Y), 0.01);
    }

    [Fact]
    public void Write_PageNumbers_RunFromOneToTheLast()
    {
        using PdfDocument pdf = PdfDocument.Open(Full);
        int pages = pdf.NumberOfPages;

        Assert.All(
            pdf.GetPages(),
            page => Assert.Contains($"page {page.Number} of {pages}", page.Text, StringComparison.Ordinal)
        );
    }

    // Structure types of ISO 32000-1:2008, 14.8.4; the streams are not compressed, so the file can be read as text.
    [Theory]
    [InlineData("/H1", 4)]
    [InlineData("/H2", 2)]
    [InlineData("/L", 2)]
    [InlineData("/LI", 5)]
    [InlineData("/LBody", 5)]
    [InlineData("/Table", 1)]
    [InlineData("/TR", 41)]
    [InlineData("/TH", 43)]
    [InlineData("/TD", 80)]
    [InlineData("/Figure", 1)]
    public void Write_Structure_HasEveryElementOnce(string type, int count)
    {
        Assert.Equal(count, Regex.Count(Raw(Full), $@"/S ?{type}(?![A-Za-z0-9])"));
    }

    [Fact]
    public void Write_HeaderCells_SayWhatTheyHead()
    {
        string raw = Raw(Full);

        Assert.Equal(3, Regex.Count(raw, "/Scope ?/Column"));
        Assert.Equal(40, Regex.Count(raw, "/Scope ?/Row"));
    }

    [Fact]
    public void Write_Catalogue_IsMarkedWithLanguageTitleAndAltText()
    {
        string raw = Raw(Full);

        Assert.Matches("/Marked ?true", raw);
        Assert.Matches(@"/Lang ?\(en-GB\)", raw);
        Assert.Matches("/DisplayDocTitle ?true", raw);
        Assert.Matches("/Alt ?[(<]", raw);
        Assert.DoesNotContain("pdfuaid", raw, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_MarkedContent_IsBalancedOnEveryPage()
    {
        string raw = Raw(Full);

        Assert.Equal(Regex.Count(raw, @"\b(BDC|BMC)\b"), Regex.Count(raw, @"\bEMC\b"));
        Assert.Equal(Regex.Count(raw, @"(?m)^BT\b"), Regex.Count(raw, @"(?m)^ET\b"));
    }

    [Fact]
    public void Write_Fonts_AreAllEmbeddedSubsets()
    {
        string raw = Raw(Full);

        Assert.DoesNotContain("/BaseFont /Helvetica", raw, StringComparison.Ordinal);
        Assert.All(
            Regex.Matches(raw, @"/BaseFont ?/(\S+)").Select(match => match.Groups[1].Value),
            name => Assert.Matches(@"^[A-Z]{6}\+Source", name)
        );
        Assert.Equal(Regex.Count(raw, @"/Type ?/FontDescriptor"), Regex.Count(raw, "/FontFile2 "));
    }

    [Fact]
    public void Write_Outline_FollowsTheHeadings()
    {
        using PdfDocument pdf = PdfDocument.Open(Full);

        Assert.True(pdf.TryGetBookmarks(out Bookmarks? bookmarks));
        Assert.Equal(
            ["Brief for a running demonstration", "Levels and exposures", "Site plan", "Signatures"],
            bookmarks.Roots.Select(root => root.Title)
        );
        Assert.Equal(["By person", "To be found out"], bookmarks.Roots[1].Children.Select(child => child.Title));
    }

    [Fact]
    public void Write_Information_CarriesTitleAndTheGivenDate()
    {
        using PdfDocument pdf = PdfDocument.Open(Full);

        Assert.Equal("Sample brief", pdf.Information.Title);
        Assert.StartsWith("D:20260503093000", pdf.Information.CreationDate, StringComparison.Ordinal);
        Assert.StartsWith("D:20260503093000", pdf.Information.ModifiedDate, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_SameDocumentTwice_GivesTheSameFile()
    {
        Assert.Equal(Full, SampleDocument.Pdf(SampleDocument.Full(SampleDocument.Picture)));
    }

    [Fact]
    public void Write_OtherWords_GiveAnotherIdentifier()
    {
        string one = Identifier(SampleDocument.Pdf(new Paragraph("one")));
        string two = Identifier(SampleDocument.Pdf(new Paragraph("two")));

        Assert.NotEqual(one, two);
    }

    [Fact]
    public void Write_AnyDocument_PassesAnIndependentStructureCheck()
    {
        (int exit, string output) = ExternalTool.RunOnPdf("qpdf", Full, "--check", "FILE");

        Assert.True(exit == 0, output);
    }

    [Fact]
    public void Write_AllStreams_DecodeWithoutWarning()
    {
        (int exit, string output) = ExternalTool.RunOnPdf("qpdf", Full, "--qdf", "FILE", "-");

        Assert.True(exit == 0, output[^Math.Min(500, output.Length)..]);
    }

    [Fact]
    public void Write_Text_IsReadInOrderByAnotherReader()
    {
        (int exit, string output) = ExternalTool.RunOnPdf("pdftotext", Full, "-enc", "UTF-8", "FILE", "-");

        Assert.Equal(0, exit);
        int title = output.IndexOf("Brief for a running demonstration", StringComparison.Ordinal);
        int levels = output.IndexOf("Levels and exposures", StringComparison.Ordinal);
        int signatures = output.IndexOf("Signatures", StringComparison.Ordinal);
        Assert.True(title >= 0 && title < levels && levels < signatures);
    }

    [Fact]
    public void Write_EmptyDocument_IsOnePage()
    {
        using PdfDocument pdf = PdfDocument.Open(SampleDocument.Pdf());

        Assert.Equal(1, pdf.NumberOfPages);
    }

    [Fact]
    public void Write_DrawingAtOneToTwoHundred_DrawsTenMetresAsFiftyMillimetres()
    {
        var area = new Area([SampleDrawing.Box(0, 0, 10, 6)], Stroke.Medium);
        var drawing = new ScaleDrawing("S", "S", [new("a", [area])], []) { Extent = new MetreBox(0, 0, 30, 20) };
        PaperPicture picture = DrawingSheet.Compose(drawing, 170, 150);

        using PdfDocument pdf = PdfDocument.Open(SampleDocument.Pdf(new Illustration(picture, "S")));

        Assert.Equal(200, picture.Frame.Scale.Denominator);
        Assert.Contains(
            pdf.GetPage(1).Paths.Select(path => path.GetBoundingRectangle()),
            box =>
                box is { } b
                && Math.Abs(Paper.ToMillimetres(b.Width) - 50) < 0.02
                && Math.Abs(Paper.ToMillimetres(b.Height) - 30) < 0.02
        );
    }

    private static string Raw(byte[] pdf) => Encoding.Latin1.GetString(pdf);

    private static string Identifier(byte[] pdf) => Regex.Match(Raw(pdf), @"/ID ?\[<([0-9A-F]{32})>").Groups[1].Value;
}
