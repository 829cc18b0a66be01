using System.Text.RegularExpressions;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sums;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests.Citations;

public sealed partial class CitationRegistryTests
{
    [Fact]
    public void All_Ids_AreUniqueAndPlain()
    {
        Assert.Equal(CitationRegistry.All.Count, CitationRegistry.All.Select(c => c.Id).Distinct().Count());
        Assert.All(CitationRegistry.All, c => Assert.Matches(PlainId(), c.Id));
    }

    [Fact]
    public void All_SourcesOfOthers_StateTheirUseAndTheirEditionOrThatItIsNotRecorded() =>
        Assert.All(
            CitationRegistry.All.Where(c => c.Basis is Basis.Read or Basis.Secondary or Basis.Memory),
            c => Assert.True(c.Title.Length > 0 && c.Use.Length > 0 && EditionLabels.Of(c).Length > 0, c.Id)
        );

    [Fact]
    public void Get_EveryIdUsedInTheTemplatesAndSums_Exists()
    {
        IEnumerable<string> used = Directory
            .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "site-templates"), "*.json")
            .Select(file => Assessor.Assess(PlanReader.Read(File.ReadAllBytes(file)).Plan!))
            .SelectMany(IdsOf)
            .Concat(SumRegistry.All.SelectMany(s => s.Citations))
            .Distinct();

        Assert.All(used, id => Assert.Equal(id, CitationRegistry.Get(id).Id));
    }

    [Fact]
    public void Get_UnknownId_IsRefusedByName() =>
        Assert.Contains(
            "nobody-2099",
            Assert.Throws<KeyNotFoundException>(() => CitationRegistry.Get("nobody-2099")).Message,
            StringComparison.Ordinal
        );

    private static IEnumerable<string> IdsOf(Assessment assessment) =>
        [
            .. assessment.Figures.SelectMany(f => f.Value.Citations),
            .. assessment.Zones.SelectMany(z => z.Citations),
            .. assessment.Zones.SelectMany(z => z.Boundary?.Citations ?? []),
            .. assessment.Zones.SelectMany(z => z.Reach?.Citations ?? []),
            .. assessment.Findings.SelectMany(f => f.Citations),
            .. assessment.Findings.SelectMany(f => f.Arguments).SelectMany(a => a.Quantity?.Citations ?? []),
        ];

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex PlainId();
}
