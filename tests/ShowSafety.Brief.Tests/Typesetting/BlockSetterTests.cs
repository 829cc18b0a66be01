using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Tests.Typesetting;

public sealed class BlockSetterTests
{
    private static readonly double Leading = TextStyles.Body.LeadingMillimetres;

    [Theory]
    [InlineData(2, "10")]
    [InlineData(3, "110")]
    [InlineData(5, "10010")]
    public void Set_Paragraph_HoldsItsFirstTwoAndLastTwoLines(int lines, string kept)
    {
        Paragraph paragraph = new(string.Join('\n', Enumerable.Repeat("line", lines)));

        Assert.Equal(kept, string.Concat(Slices(paragraph).Select(slice => slice.KeepWithNext ? '1' : '0')));
    }

    [Fact]
    public void LayOut_ParagraphAcrossAPage_LeavesTwoLinesOnEitherSide()
    {
        int linesOnAPage = (int)(Paper.BodyHeightMillimetres / Leading);
        Paragraph filler = new(string.Join('\n', Enumerable.Repeat("filler", linesOnAPage - 2)));
        Paragraph parted = new("p1\np2\np3\np4");

        IReadOnlyList<LaidOutPage> pages = SampleDocument.Of(filler, parted).LayOut();

        Assert.Equal(2, pages.Count);
        Assert.True(Body(pages[0]).Count(t => t.StartsWith('p')) is 0 or 2);
        Assert.True(Body(pages[1]).Count(t => t.StartsWith('p')) is 4 or 2);
    }

    [Fact]
    public void LayOut_HeadingNearTheFoot_GoesWithItsText()
    {
        for (int lines = 40; lines < 50; lines++)
        {
            Paragraph filler = new(string.Join('\n', Enumerable.Repeat("filler", lines)));

            IReadOnlyList<LaidOutPage> pages = SampleDocument
                .Of(filler, new SectionHeading(1, "Heading"), new Paragraph("t1\nt2\nt3"))
                .LayOut();

            LaidOutPage page = pages.Single(p => Body(p).Contains("Heading"));
            Assert.Contains("t2", Body(page));
        }
    }

    [Fact]
    public void Set_Heading_CarriesItsOutlineEntryAndTag()
    {
        Slice slice = Assert.Single(Slices(new SectionHeading(2, "Levels")));

        Assert.Equal(new OutlineEntry(2, "Levels"), slice.Items.OfType<OutlineEntry>().Single());
        Assert.Equal(Tag.Heading2, slice.Items.OfType<OpenTag>().Single().Tag);
        Assert.True(slice.KeepWithNext);
    }

    [Fact]
    public void Set_List_TagsEachItemWithLabelAndBody()
    {
        List<Slice> slices = Slices(new ListBlock(["one", "two"], ListMark.Number));

        Assert.Equal(
            [Tag.List, Tag.ListItem, Tag.ListLabel, Tag.ListBody, Tag.ListItem, Tag.ListLabel, Tag.ListBody],
            slices.SelectMany(s => s.Items).OfType<OpenTag>().Select(open => open.Tag)
        );
        Assert.Equal(
            ["1.", "one", "2.", "two"],
            slices.SelectMany(s => s.Items).OfType<TextItem>().Select(t => t.Text)
        );
    }

    [Fact]
    public void Set_KeepTogether_HoldsEverySliceButTheLast()
    {
        List<Slice> slices = Slices(new KeepTogether([new Paragraph("a"), new Paragraph("b\nc\nd\ne\nf")]));

        Assert.All(slices.SkipLast(1), slice => Assert.True(slice.KeepWithNext));
        Assert.False(slices[^1].KeepWithNext);
    }

    [Fact]
    public void Set_PageBreak_MarksTheNextSliceOnly()
    {
        List<Slice> slices = Slices(new Paragraph("a"), new PageBreak(), new Paragraph("b\nc\nd\ne"));

        Assert.Equal([false, true, false, false, false], slices.Select(slice => slice.StartsPage));
    }

    [Fact]
    public void Set_Callout_BarRunsWithoutGapFromTopToBottom()
    {
        List<Slice> slices = Slices(new Callout("Title", [SampleDocument.Words(60), "Second"]));

        Assert.All(
            slices,
            slice =>
            {
                BoxItem bar = slice.Items.OfType<BoxItem>().First();
                Assert.Equal((0, slice.HeightMillimetres), (bar.Y, bar.Height));
            }
        );
        Assert.All(slices.Skip(1), slice => Assert.Equal(0, slice.SpaceBefore));
    }

    [Fact]
    public void LayOut_HighCallout_BeginsWhereItStandsAndIsParted()
    {
        var callout = new Callout("Title", [.. Enumerable.Range(0, 80).Select(i => (RichText)$"Line {i}")]);

        IReadOnlyList<LaidOutPage> pages = SampleDocument.Of(new Paragraph("Before"), callout).LayOut();

        Assert.Contains("Line 1", Body(pages[0]));
        Assert.Contains("Line 79", Body(pages[^1]));
    }

    [Fact]
    public void LayOut_LowCallout_StaysWhole()
    {
        Paragraph filler = new(string.Join('\n', Enumerable.Repeat("filler", 44)));
        var callout = new Callout("Title", [.. Enumerable.Range(0, 8).Select(i => (RichText)$"Line {i}")]);

        IReadOnlyList<LaidOutPage> pages = SampleDocument.Of(filler, callout).LayOut();

        Assert.DoesNotContain("Title", Body(pages[0]));
        Assert.Contains("Line 7", Body(pages[1]));
    }

    [Fact]
    public void Set_SignatureLines_LeavesARuleForEveryFieldAndFillsNone()
    {
        List<Slice> slices = Slices(new SignatureLines(["Engineer", "Organiser"], ["Name", "Signature", "Date"]));

        Assert.Equal(2, slices.Count);
        Assert.All(
            slices,
            slice =>
            {
                RuleItem[] rules = [.. slice.Items.OfType<RuleItem>()];
                Assert.Equal(3, rules.Length);
                Assert.DoesNotContain(
                    slice.Items.OfType<TextItem>(),
                    text => rules.Any(rule => text.X >= rule.X1 && text.Baseline <= rule.Y1)
                );
            }
        );
    }

    [Fact]
    public void Set_EveryBlock_OpensAndClosesItsTags()
    {
        List<Slice> slices = Slices(SampleDocument.Full(SampleDocument.Picture));

        int depth = 0;
        foreach (PageItem item in slices.SelectMany(slice => slice.Items))
        {
            depth +=
                item is OpenTag ? 1
                : item is CloseTag ? -1
                : 0;
            Assert.True(depth >= 0);
        }

        Assert.Equal(0, depth);
    }

    private static List<Slice> Slices(params Block[] blocks) => [.. BlockSetter.ForBody.Set(blocks)];

    private static string[] Body(LaidOutPage page) =>
        [.. page.Items.OfType<TextItem>().Where(t => !t.Artifact).Select(t => t.Text)];
}
