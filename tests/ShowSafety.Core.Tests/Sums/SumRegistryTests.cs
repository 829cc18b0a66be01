using System.Text.RegularExpressions;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Sums;

namespace ShowSafety.Core.Tests.Sums;

public sealed partial class SumRegistryTests
{
    [Fact]
    public void All_EverySum_HasAPlainNameAndParametersAndASource()
    {
        foreach (WorkedSum sum in SumRegistry.All)
        {
            Assert.Matches(PlainName(), sum.Name);
            Assert.NotEmpty(sum.Citations);
            Assert.All(sum.Citations, id => CitationRegistry.Get(id));
            Assert.Equal(sum.Parameters.Count, sum.Parameters.Select(p => p.Key).Distinct().Count());
            Assert.All(sum.Parameters, p => Assert.Matches(CamelCase(), p.Key));
            Assert.All(sum.Parameters, p => Assert.True(p.Min < p.Max || p.Words.Count > 0, $"{sum.Name} {p.Key}"));
        }
    }

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex PlainName();

    [GeneratedRegex("^[a-z][A-Za-z0-9]*$")]
    private static partial Regex CamelCase();
}
