using System.Collections.Concurrent;
using System.Xml.Linq;
using ShowSafety.Core;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace ShowSafety.Brief.Tests;

/// <summary>The whole way from each site template to its brief and site plan.</summary>
public sealed class BriefWriterTests
{
    private static readonly DateTimeOffset PreparedOn = new(2026, 4, 30, 12, 0, 0, TimeSpan.Zero);

    private static readonly ConcurrentDictionary<string, (Plan Plan, Assessment Assessment)> Known = new();

    public static TheoryData<string> Templates() =>
        [
            .. Directory
                .GetFiles(TemplateFolder(), "*.json")
                .Select(file => Path.GetFileName(file))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Templates))]
    public void Write_Template_PrintsVerdictExampleAndVersionOnEveryPage(string template)
    {
        (Plan plan, Assessment assessment) = Assessed(template);

        using PdfDocument pdf = PdfDocument.Open(Written(plan, assessment));

        Assert.True(assessment.IsExample);
        foreach (Page page in pdf.GetPages())
        {
            Assert.Contains("EXAMPLE", page.Text, StringComparison.Ordinal);
            Assert.Contains(assessment.PlanHash[..12], page.Text, StringComparison.Ordinal);
            Assert.Contains($"page {page.Number} of {pdf.NumberOfPages}", page.Text, StringComparison.Ordinal);
            Assert.Equal(
                assessment.NotToRun,
                page.Text.Contains("NOT TO RUN", StringComparison.Ordinal) && HasMark(page)
            );
        }
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Write_Template_KeepsEveryLetterOnThePage(string template)
    {
        (Plan plan, Assessment assessment) = Assessed(template);

        using PdfDocument pdf = PdfDocument.Open(Written(plan, assessment));

        Assert.All(
            pdf.GetPages(),
            page =>
                Assert.All(
                    page.Letters,
                    letter =>
                    {
                        Assert.InRange(letter.StartBaseLine.X, 0, page.Width);
                        Assert.InRange(letter.EndBaseLine.X, 0, page.Width);
                        Assert.InRange(letter.StartBaseLine.Y, 0, page.Height);
                    }
                )
        );
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Write_Template_PassesAnIndependentStructureCheck(string template)
    {
        (Plan plan, Assessment assessment) = Assessed(template);

        (int exit, string output) = ExternalTool.RunOnPdf("qpdf", Written(plan, assessment), "--check", "FILE");

        Assert.True(exit == 0, output);
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Write_Template_PrintsEveryFindingAndNoForbiddenWord(string template)
    {
        (Plan plan, Assessment assessment) = Assessed(template);
        var words = new Phrasebook(assessment.Names);

        using PdfDocument pdf = PdfDocument.Open(Written(plan, assessment));
        string text = Letters(string.Concat(pdf.GetPages().Select(page => page.Text)));

        Assert.All(
            assessment.Findings,
            finding => Assert.Contains(Letters(words.Sentence(finding))[..12], text, StringComparison.Ordinal)
        );
        Assert.All(
            assessment.FindOut,
            item => Assert.Contains(Letters(item.Meaning)[1..8], text, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Write_SamePlanTwice_GivesTheSameBytes()
    {
        (Plan plan, Assessment assessment) = Assessed(Templates().First().Data);

        Assert.Equal(Written(plan, assessment), Written(plan, Assessor.Assess(plan)));
    }

    [Fact]
    public void Write_AssessmentOfAnotherPlan_IsRefused()
    {
        (Plan plan, Assessment assessment) = Assessed(Templates().First().Data);

        Assert.Throws<ArgumentException>(() => Written(plan with { Title = "Another" }, assessment));
        Assert.Throws<ArgumentException>(() => SitePlanWriter.Svg(plan with { Title = "Another" }, assessment));
    }

    [Fact]
    public void Write_BarePlan_PrintsABriefThatSaysWhatIsMissing()
    {
        var plan = new Plan
        {
            Title = "Bare",
            Site = new() { Outline = [new(0, 0), new(10, 0), new(10, 8)] },
        };

        using PdfDocument pdf = PdfDocument.Open(Written(plan, Assessor.Assess(plan)));

        Assert.Contains("Event not named", pdf.GetPage(1).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("EXAMPLE", pdf.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Svg_Template_IsWellFormedToScaleAndMarked(string template)
    {
        (Plan plan, Assessment assessment) = Assessed(template);

        string svg = SitePlanWriter.Svg(plan, assessment);

        XElement root = XDocument.Parse(svg).Root!;
        string[] texts = [.. root.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];
        Assert.Contains(texts, text => text.StartsWith("Scale 1:", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Contains("EXAMPLE", StringComparison.Ordinal));
        Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
        Assert.Equal(svg, SitePlanWriter.Svg(plan, assessment));
    }

    // The mark is set white on black at the head of the page; the same words may stand in the text as well.
    private static bool HasMark(Page page) => page.Text.IndexOf("NOT TO RUN", StringComparison.Ordinal) < 200;

    private static string Letters(string text) => string.Concat(text.Where(char.IsLetter));

    private static byte[] Written(Plan plan, Assessment assessment)
    {
        using var stream = new MemoryStream();
        BriefWriter.Write(plan, assessment, stream, PreparedOn);
        return stream.ToArray();
    }

    private static (Plan Plan, Assessment Assessment) Assessed(string template) => Known.GetOrAdd(template, Assess);

    private static (Plan Plan, Assessment Assessment) Assess(string template)
    {
        PlanReading reading = PlanReader.Read(File.ReadAllBytes(Path.Combine(TemplateFolder(), template)));
        Assert.Empty(reading.Problems);
        return (reading.Plan!, Assessor.Assess(reading.Plan!));
    }

    private static string TemplateFolder()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string templates = Path.Combine(folder.FullName, "site-templates");
            if (Directory.Exists(templates))
            {
                return templates;
            }
        }

        throw new DirectoryNotFoundException("No site-templates above the tests.");
    }
}
