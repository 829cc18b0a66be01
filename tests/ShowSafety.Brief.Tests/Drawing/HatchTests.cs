using ShowSafety.Brief.Drawing;

namespace ShowSafety.Brief.Tests.Drawing;

public sealed class HatchTests
{
    public static TheoryData<string, string> Pairs()
    {
        var pairs = new TheoryData<string, string>();
        for (int i = 0; i < Hatches.All.Count; i++)
        {
            for (int j = i + 1; j < Hatches.All.Count; j++)
            {
                pairs.Add(Hatches.All[i].Name, Hatches.All[j].Name);
            }
        }

        return pairs;
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void All_AnyTwo_DifferInDirectionKindOrClearlyInWeight(string first, string second)
    {
        Hatch one = Named(first);
        Hatch other = Named(second);

        bool sameDirections = one
            .Lines.Select(l => l.AngleDegrees)
            .Order()
            .SequenceEqual(other.Lines.Select(l => l.AngleDegrees).Order());
        bool sameKind = one.Dots is null == other.Dots is null;
        double weights = Math.Max(one.InkShare, other.InkShare) / Math.Min(one.InkShare, other.InkShare);

        Assert.True(!sameDirections || !sameKind || weights > 2, $"{first} and {second} look alike in grey");
    }

    [Fact]
    public void All_EveryHatch_LeavesMostOfThePaperWhite()
    {
        Assert.All(Hatches.All, hatch => Assert.InRange(hatch.InkShare, 0.03, 0.3));
    }

    [Fact]
    public void All_Names_AreDifferent()
    {
        Assert.Equal(Hatches.All.Count, Hatches.All.Select(hatch => hatch.Name).Distinct().Count());
    }

    [Fact]
    public void InkShare_LinesEveryTwoMillimetres_IsWidthOverSpacing()
    {
        Assert.Equal(0.1, new Hatch("test", [new HatchLines(0, 2, 0.2)]).InkShare, 1e-12);
    }

    [Fact]
    public void InkShare_Dots_IsAreaOfDotOverAreaOfSquare()
    {
        var hatch = new Hatch("test", [], new HatchDots(2, 1));

        Assert.Equal(Math.PI / 16, hatch.InkShare, 1e-12);
    }

    private static Hatch Named(string name) => Hatches.All.Single(hatch => hatch.Name == name);
}
