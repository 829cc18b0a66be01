using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests.Wording;

public sealed class LabelsTests
{
    [Fact]
    public void Of_EveryChoice_HasAWordOfItsOwn()
    {
        AssertDistinct(Enum.GetValues<Pedigree>().Select(PedigreeLabels.Of));
        AssertDistinct(Enum.GetValues<Basis>().Select(BasisLabels.Of));
        AssertDistinct(Enum.GetValues<Severity>().Select(SeverityLabels.Of));
        AssertDistinct(Enum.GetValues<ZoneRow>().Select(RowLabels.Of));
        AssertDistinct(Enum.GetValues<Unit>().Where(u => u != Unit.One).Select(u => u.Symbol()));
    }

    private static void AssertDistinct(IEnumerable<string> labels)
    {
        string[] all = [.. labels];
        Assert.DoesNotContain(all, string.IsNullOrWhiteSpace);
        Assert.Equal(all.Length, all.Distinct().Count());
    }
}
