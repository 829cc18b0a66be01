using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Tests.Typesetting;

public sealed class TableSetterTests
{
    [Fact]
    public void Set_Columns_ShareTheWidthAndCellsStandAtTheirLeft()
    {
        var table = new Table(
            [new("A", 1), new("B", 3)],
            [
                ["a", "b"],
            ],
            "None."
        );

        TextItem[] cells = Texts(new TableSetter(table, 20, 160).Set()[1]);

        Assert.Equal(20 + 1.8, cells[0].X, 1e-9);
        Assert.Equal(20 + 40 + 1.8, cells[1].X, 1e-9);
    }

    [Fact]
    public void Set_RightAlignedCells_EndAtOneEdge()
    {
        var table = new Table(
            [new("Level", 1, ColumnAlignment.Right)],
            [
                ["9.5"],
                ["100.25"],
            ],
            "None.",
            false
        );

        List<Slice> slices = new TableSetter(table, 20, 60).Set();

        Assert.All(slices, slice => Assert.Equal(80 - 1.8, Texts(slice)[0].X + Texts(slice)[0].Width, 1e-6));
    }

    [Fact]
    public void Set_WrappedCell_MakesTheRowAsHighAsItsHighestCell()
    {
        var table = new Table(
            [new("A", 1), new("B", 1)],
            [
                ["one\ntwo\nthree", "b"],
            ],
            "None."
        );

        Slice row = new TableSetter(table, 20, 160).Set()[1];

        Assert.Equal((3 * TextStyles.Cell.LeadingMillimetres) + 2.2, row.HeightMillimetres, 1e-9);
    }

    [Fact]
    public void Set_NoRows_SaysSoInWords()
    {
        Slice slice = Assert.Single(new TableSetter(SampleDocument.Rows(0), 20, 160).Set());

        Assert.Equal("Nothing listed.", Texts(slice).Single().Text);
    }

    [Fact]
    public void Set_RowWithTooFewCells_LeavesTheRestEmpty()
    {
        var table = new Table(
            [new("A", 1), new("B", 1), new("C", 1)],
            [
                ["one", "two"],
            ],
            "None."
        );

        Slice row = new TableSetter(table, 20, 160).Set()[1];

        Assert.Equal(3, row.Items.OfType<OpenTag>().Count(open => open.Tag is Tag.TableHead or Tag.TableCell));
    }

    [Fact]
    public void LayOut_ThreeHundredRows_KeepsEachRowWholeAndRepeatsTheHead()
    {
        IReadOnlyList<LaidOutPage> pages = SampleDocument.Of(SampleDocument.Rows(300)).LayOut();

        Assert.True(pages.Count > 6);
        Assert.All(pages, page => Assert.Single(page.Items.OfType<TextItem>(), text => text.Text == "What is there"));
        Assert.All(pages.Skip(1), page => Assert.True(Head(page).Artifact, "a repeated head is not read out again"));
        Assert.False(Head(pages[0]).Artifact);
        Assert.Equal(
            Enumerable.Range(1, 300).Select(i => $"P{i}"),
            pages.SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text).Where(IsRowName)
        );
        Assert.All(pages, AssertRowsAreWhole);
    }

    [Fact]
    public void LayOut_GroupHead_IsRepeatedWithTheHeadOfTheTable()
    {
        ValueList<RichText>[] rows =
        [
            ["First group"],
            ["a", "b"],
            ["Second group"],
            .. Enumerable.Range(0, 80).Select(i => (ValueList<RichText>)[$"r{i}", "b"]),
        ];
        var table = new Table([new("A", 1), new("B", 1)], [.. rows], "None.");

        IReadOnlyList<LaidOutPage> pages = SampleDocument.Of(table).LayOut();

        Assert.True(pages.Count > 1);
        Assert.All(pages, page => Assert.Single(page.Items.OfType<TextItem>(), t => t.Text == "Second group"));
        TextItem again = pages[1].Items.OfType<TextItem>().Single(t => t.Text == "Second group");
        Assert.True(again.Artifact);
        Assert.DoesNotContain(pages[1].Items.OfType<TextItem>(), t => t.Text == "First group");
        OpenTag head = pages[0].Items.OfType<OpenTag>().First(tag => tag.Columns > 1);
        Assert.Equal(new OpenTag(Tag.TableHead, 2), head);
    }

    [Fact]
    public void LayOut_RowHigherThanAPage_IsPartedAndLosesNothing()
    {
        string text = string.Join('\n', Enumerable.Range(1, 200).Select(i => $"line{i}"));
        var table = new Table(
            [new("A", 1), new("B", 1)],
            [
                ["a", text],
                ["b", "last"],
            ],
            "None."
        );

        IReadOnlyList<LaidOutPage> pages = SampleDocument.Of(table).LayOut();

        string[] lines = [.. pages.SelectMany(p => p.Items).OfType<TextItem>().Select(t => t.Text)];
        Assert.All(Enumerable.Range(1, 200), i => Assert.Contains($"line{i}", lines));
        Assert.All(
            pages.SelectMany(p => p.Items).OfType<TextItem>().Where(t => !t.Artifact),
            t => Assert.InRange(t.Baseline, Paper.BodyTopMillimetres, Paper.BodyBottomMillimetres)
        );
    }

    private static bool IsRowName(string text) => text.Length > 1 && text[0] == 'P' && text.Skip(1).All(char.IsDigit);

    // The name of a row and the first line of its second cell share a baseline; the level stands there too.
    private static void AssertRowsAreWhole(LaidOutPage page)
    {
        TextItem[] texts = [.. page.Items.OfType<TextItem>()];
        foreach (TextItem name in texts.Where(t => IsRowName(t.Text)))
        {
            Assert.Equal(3, texts.Count(t => Math.Abs(t.Baseline - name.Baseline) < 1e-6));
        }
    }

    private static TextItem Head(LaidOutPage page) =>
        page.Items.OfType<TextItem>().Single(t => t.Text == "What is there");

    private static TextItem[] Texts(Slice slice) => [.. slice.Items.OfType<TextItem>()];
}
