using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Tests.Typesetting;

/// <summary>Pages of 100 mm, from 10 mm to 110 mm; slices that say their name at their top.</summary>
public sealed class PaginatorTests
{
    [Fact]
    public void Run_SlicesThatFit_StandBelowEachOtherWithTheirWhite()
    {
        Assert.Equal(
            [
                ["a@10", "b@35"],
            ],
            Places(Slice("a", 20), Slice("b", 10) with { SpaceBefore = 5 })
        );
    }

    [Fact]
    public void Run_WhiteAtTheHeadOfAPage_IsLeftOut()
    {
        Assert.Equal(
            [
                ["a@10"],
                ["b@10"],
            ],
            Places(Slice("a", 95), Slice("b", 10) with { SpaceBefore = 5 })
        );
    }

    [Fact]
    public void Run_SliceThatJustFits_StaysOnThePage()
    {
        Assert.Equal(
            [
                ["a@10", "b@70"],
            ],
            Places(Slice("a", 60), Slice("b", 40))
        );
        Assert.Equal(
            [
                ["a@10"],
                ["b@10"],
            ],
            Places(Slice("a", 60), Slice("b", 40.01))
        );
    }

    [Fact]
    public void Run_KeptWithNext_GoesAlongToTheNextPage()
    {
        Assert.Equal(
            [
                ["a@10"],
                ["head@10", "b@20"],
            ],
            Places(Slice("a", 80), Slice("head", 10) with { KeepWithNext = true }, Slice("b", 20))
        );
    }

    [Fact]
    public void Run_GroupHigherThanAPage_IsBrokenWhereItMust()
    {
        Slice[] group = [.. Enumerable.Range(0, 6).Select(i => Slice($"g{i}", 30) with { KeepWithNext = true })];

        Assert.Equal(
            [
                ["a@10"],
                ["g0@10", "g1@40", "g2@70"],
                ["g3@10", "g4@40", "g5@70"],
            ],
            Places([Slice("a", 10), .. group])
        );
    }

    [Fact]
    public void Run_SliceHigherThanAPage_HasAPageOfItsOwnAndIsNotLost()
    {
        Assert.Equal(
            [
                ["a@10"],
                ["vast@10"],
                ["b@10"],
            ],
            Places(Slice("a", 10), Slice("vast", 150), Slice("b", 10))
        );
    }

    [Fact]
    public void Run_RepeatedHead_StandsOnlyWhereAPageBeginsWithARow()
    {
        Slice head = Slice("HEAD", 10);
        Slice[] rows = [.. Enumerable.Range(0, 4).Select(i => Slice($"r{i}", 40) with { Repeated = head })];

        Assert.Equal(
            [
                ["head@10", "r0@20", "r1@60"],
                ["HEAD@10", "r2@20", "r3@60"],
            ],
            Places([Slice("head", 10) with { KeepWithNext = true }, .. rows])
        );
    }

    [Fact]
    public void Run_StartsPage_BeginsAPageButNeverAnEmptyOne()
    {
        Assert.Equal(
            [
                ["a@10"],
                ["b@10"],
            ],
            Places(Slice("a", 10) with { StartsPage = true }, Slice("b", 10) with { StartsPage = true })
        );
    }

    [Fact]
    public void Run_NoSlices_IsOneEmptyPage()
    {
        Assert.Empty(Assert.Single(Places()));
    }

    private static Slice Slice(string name, double height) => new(height, [new TextItem(0, 0, name, TextStyles.Body)]);

    private static string[][] Places(params Slice[] slices) =>
        [
            .. new Paginator(10, 110)
                .Run(slices)
                .Select(page => page.Items.OfType<TextItem>().Select(t => $"{t.Text}@{t.Baseline:0.##}").ToArray()),
        ];
}
