using System.Globalization;
using ShowSafety.Brief.Documents;
using ShowSafety.Brief.Tests.Typesetting;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Tests.Documents;

public sealed class BriefDocumentTests
{
    private static readonly IReadOnlyList<LaidOutPage> Pages = BriefDocument.Compose(SampleBrief.Input).LayOut();

    [Fact]
    public void Compose_EveryPage_CarriesEventDateVersionVerdictAndNumber()
    {
        Assert.True(Pages.Count > 3);
        for (int i = 0; i < Pages.Count; i++)
        {
            string[] furniture = [.. Pages[i].Items.OfType<TextItem>().Where(t => t.Artifact).Select(t => t.Text)];
            Assert.Contains("Alderwick spring fair", furniture);
            Assert.Contains("Saturday 9 May 2026 and 1 more", furniture);
            Assert.Contains("Plan version aaaaaabbbbbb", furniture);
            Assert.Contains("NOT TO RUN", furniture);
            Assert.Contains("EXAMPLE", furniture);
            Assert.Contains($"page {i + 1} of {Pages.Count}", furniture);
        }
    }

    [Fact]
    public void Compose_WithoutStopOrExample_HasNoMarks()
    {
        BriefInput input = SampleBrief.Make() with { IsExample = false };

        IReadOnlyList<LaidOutPage> pages = BriefDocument.Compose(input).LayOut();

        Assert.All(
            pages,
            page => Assert.DoesNotContain(page.Items.OfType<TextItem>(), t => t.Text is "NOT TO RUN" or "EXAMPLE")
        );
    }

    [Fact]
    public void Compose_FirstPage_SaysTheSentenceTheStopsAndTheCautions()
    {
        string first = Text(Pages[0]);

        Assert.Contains("NOT TO RUN: 1 stop stands.", first, StringComparison.Ordinal);
        Assert.Contains("Spectators: inside a zone that keeps them out", first, StringComparison.Ordinal);
        Assert.Contains("does not take the place of a competent person", first, StringComparison.Ordinal);
        Assert.Contains("No distance alone makes a bursting rotor harmless.", first, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_ManyStops_FillNotTheFirstPageAndAllStandAmongTheFindings()
    {
        ValueList<Finding> stops =
        [
            .. Enumerable
                .Range(1, 40)
                .Select(i => new Finding("layout.group-without-place", Severity.Stop)
                {
                    Arguments = [FindingArgument.Of("who", $"group-{i}-end")],
                }),
        ];

        IReadOnlyList<LaidOutPage> pages = BriefDocument.Compose(SampleBrief.Make(stops)).LayOut();

        Assert.Contains(
            $"And 28 more: all of them are listed under {BriefLabels.FindingsSection}.",
            Text(pages[0]),
            StringComparison.Ordinal
        );
        string text = string.Join(' ', pages.Select(Text)).Replace("- ", "-", StringComparison.Ordinal);
        Assert.All(Enumerable.Range(1, 40), i => Assert.Contains($"group-{i}-end", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Compose_Sections_StandInOrder()
    {
        string[] heads =
        [
            .. Pages.SelectMany(page => page.Items).OfType<OutlineEntry>().Where(e => e.Level == 1).Select(e => e.Text),
        ];

        Assert.Equal(
            [
                BriefLabels.DocumentTitle,
                BriefLabels.EventSection,
                BriefLabels.FindingsSection,
                BriefLabels.SitePlanSection,
                BriefLabels.PeopleSection,
                BriefLabels.ZonesSection,
                BriefLabels.AirSection,
                BriefLabels.FindOutSection,
                BriefLabels.PapersSection,
                BriefLabels.SignaturesSection,
                BriefLabels.NotesAnnex,
                BriefLabels.PeopleAnnex,
                BriefLabels.RulesSection,
                BriefLabels.ValuesSection,
                BriefLabels.AssumptionsSection,
                BriefLabels.SourcesSection,
            ],
            heads
        );
    }

    [Fact]
    public void Compose_Findings_PrintSentenceAndRemedy()
    {
        string text = string.Join(' ', Pages.Select(Text));

        Assert.Contains("Move them, or turn or move the bench", text, StringComparison.Ordinal);
        Assert.Contains("The plan does not say where House at the corner are", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_AcceptedFinding_PrintsWhoAndOthersStayBlank()
    {
        BriefInput input = SampleBrief.Input;
        Acceptance acceptance = new()
        {
            Finding = "layout.group-without-place",
            By = "B. Invented",
            Note = "Asked.",
        };
        BriefInput accepted = input with
        {
            Plan = input.Plan with { Decisions = new() { Acceptances = [acceptance] } },
        };

        Assert.DoesNotContain("In the plan:", string.Join(' ', Pages.Select(Text)), StringComparison.Ordinal);
        Assert.Contains(
            "In the plan: B. Invented",
            string.Join(' ', BriefDocument.Compose(accepted).LayOut().Select(Text)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Compose_Signatures_AreNeverFilledIn()
    {
        BriefInput input = SampleBrief.Input with
        {
            Plan = SampleBrief.Plan with
            {
                Prepared = new() { By = "C. Invented", On = new(2026, 4, 1) },
            },
        };
        SignatureLines lines = SignaturesSection
            .Compose(input)
            .OfType<KeepTogether>()
            .Single()
            .Blocks.OfType<SignatureLines>()
            .Single();

        Assert.Equal(BriefLabels.SignatureRoles, lines.Roles);
        Assert.Equal(BriefLabels.SignatureFields, lines.Fields);
    }

    [Fact]
    public void Compose_Assumptions_NameElementValueUnitAndOrigin()
    {
        Table table = AssumptionsSection.Compose(SampleBrief.Input).OfType<Table>().Single();
        string[] rows = [.. table.Rows.Select(row => string.Join('|', row.Select(cell => cell.Plain)))];

        Assert.True(
            Array.IndexOf(rows, "Bench north")
                < Array.IndexOf(rows, "Length along the shaft|1.40\u00A0m|EXAMPLE, invented")
        );
        Assert.Contains(rows, row => row.EndsWith("|assumed on the cautious side", StringComparison.Ordinal));
        Assert.Equal(
            SampleBrief.Input.Assumptions.Count,
            rows.Count(row => row.Contains('|', StringComparison.Ordinal))
        );
    }

    [Fact]
    public void Compose_PlanningAndBestValues_ArePrintedWithUnits()
    {
        string text = string.Join(' ', Pages.Select(Text));

        Assert.Contains("12.0\u00A0m", text, StringComparison.Ordinal);
        Assert.Contains("12.4\u00A0m", text, StringComparison.Ordinal);
        Assert.Contains("85.0\u00A0dB(A)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_BarePlan_SaysWhatCannotBeTold()
    {
        BriefInput input = new()
        {
            Plan = new()
            {
                Title = "Bare",
                Site = new() { Outline = [new(0, 0), new(10, 0), new(10, 8)] },
            },
            PlanHash = "0123456789abcdef",
            PreparedOn = SampleDocument.PreparedOn,
            IsExample = false,
            Headline = Headline.Of([], new Phrasebook(ElementNames.Of(new Plan())), null, null),
        };

        string text = string.Join(' ', BriefDocument.Compose(input).LayOut().Select(Text));

        Assert.Contains("The plan names nobody", text, StringComparison.Ordinal);
        Assert.Contains("No rules were chosen, so nothing was compared.", text, StringComparison.Ordinal);
        Assert.Contains("No zone could be worked out", text, StringComparison.Ordinal);
        Assert.Contains("The plan records no permission.", text, StringComparison.Ordinal);
        Assert.Contains("Event not named", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Compose_OwnWords_HoldNoForbiddenOnes()
    {
        // Sentences of findings and titles of sources are tested where they are made.
        Assert.All(Pages, page => Assert.Empty(ForbiddenWords.In(Text(page))));
        Assert.Empty(ForbiddenWords.In(SitePlanDrawing.Of(SampleBrief.Input)[0].Description));
    }

    [Fact]
    public void Labels_EveryChoice_HasAWordOfItsOwn()
    {
        AssertDistinct(Enum.GetValues<Severity>().Select(BriefLabels.Of));
        AssertDistinct(Enum.GetValues<ZoneEffect>().Select(BriefLabels.Of));
        AssertDistinct(Enum.GetValues<PersonRole>().Select(BriefLabels.Of));
        AssertDistinct(Enum.GetValues<LegalClass>().Select(BriefLabels.Of));
        AssertDistinct(Enum.GetValues<PermissionGiver>().Select(BriefLabels.Of));
        AssertDistinct(Enum.GetValues<Audience>().Select(BriefLabels.Of));
        AssertDistinct(Enum.GetValues<Phases>().Select(BriefLabels.Of));
    }

    [Theory]
    [InlineData(45, "45 s")]
    [InlineData(60, "1 min")]
    [InlineData(90, "1 min 30 s")]
    [InlineData(3700, "61 min 40 s")]
    public void Compose_ThrottleSteps_PrintMinutesAndSeconds(double seconds, string expected)
    {
        Run run = SampleBrief.Plan.Programme!.Runs[0] with { Steps = [new() { StateId = "full", Seconds = seconds }] };
        BriefInput input = SampleBrief.Input with
        {
            Plan = SampleBrief.Plan with { Programme = new() { Runs = [run] } },
        };

        Table table = ProgrammeSection.Compose(input).OfType<Table>().Single();

        Assert.Equal($"Full throttle for {expected}", table.Rows[0][3].Plain);
    }

    [Fact]
    public void Quoted_Citations_AreNumberedOnceInTheOrderOfTheRegistry()
    {
        Citation[] some = [.. CitationRegistry.All.Take(3)];
        Assert.SkipWhen(some.Length < 3, "the registry has no sources yet");
        Finding finding = new("layout.no-line-drawn", Severity.Note) { Citations = [some[2].Id, some[0].Id] };

        SourceNumbers sources = SampleBrief.Make(finding).Sources;

        Assert.Equal([some[0], some[2]], sources.Sources);
        Assert.Equal("[1, 2]", sources.Quoted([some[2].Id, some[0].Id, some[2].Id]));
        Assert.Equal("", sources.Quoted([]));
    }

    [Fact]
    public void Write_Brief_PassesAnIndependentStructureCheck()
    {
        (int exit, string output) = ExternalTool.RunOnPdf(
            "qpdf",
            SampleDocument.Pdf(BriefDocument.Compose(SampleBrief.Input)),
            "--check",
            "FILE"
        );

        Assert.True(exit == 0, output);
    }

    private static void AssertDistinct(IEnumerable<string> words)
    {
        string[] all = [.. words];
        Assert.All(all, word => Assert.False(string.IsNullOrWhiteSpace(word)));
        Assert.Equal(all.Length, all.Distinct(StringComparer.Create(CultureInfo.InvariantCulture, true)).Count());
    }

    private static string Text(LaidOutPage page) =>
        string.Join(' ', page.Items.OfType<TextItem>().Select(item => item.Text.Trim()));
}
