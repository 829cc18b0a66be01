using ShowSafety.Core.Citations;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Exposure.Rules;

public sealed class RuleSetReaderTests
{
    private const string Clause = """
        {"id":"c","metric":"windowLevel","limit":100,"trigger":"above","atTheEar":false,"duty":"keepAudienceOut","clause":"1","basis":"read","windowMinutes":15,"window":"sliding"}
        """;

    private const string Good = """
        {"id":"x","title":"X","covers":{"kind":"audience","legalClasses":["visitor"],"comparisonFor":[],"children":true},"source":{"title":"S","edition":"1","citation":"who-venues-2022"},"confirm":"Ask.","clauses":[CLAUSE]}
        """;

    private static string With(string clause) => Good.Replace("CLAUSE", clause, StringComparison.Ordinal);

    [Fact]
    public void Read_CompleteSet_ReadsIt()
    {
        RuleSet set = RuleSetReader.Read(With(Clause));

        Assert.Equal(15, set.Clauses[0].WindowMinutes);
        Assert.Equal([LegalClass.Visitor], set.Covers.LegalClasses);
    }

    [Theory]
    [InlineData("\"id\":\"c\",", "", "id")]
    [InlineData("\"limit\":100", "\"limit\":100,\"limt\":3", "limt")]
    [InlineData("\"limit\":100", "\"limit\":100,\"limit\":101", "limit")]
    [InlineData("\"limit\":100,", "", "limit")]
    [InlineData("\"limit\":100", "\"limit\":1e999", "limit")]
    [InlineData("\"limit\":100", "\"limit\":\"100\"", "limit")]
    [InlineData("\"metric\":\"windowLevel\"", "\"metric\":\"loudness\"", "metric")]
    [InlineData("\"metric\":\"windowLevel\"", "\"metric\":2", "metric")]
    [InlineData("\"windowMinutes\":15,", "", "windowMinutes")]
    [InlineData("\"windowMinutes\":15", "\"windowMinutes\":0", "windowMinutes")]
    [InlineData("\"windowMinutes\":15", "\"windowMinutes\":15,\"criterionDbA\":90", "criterionDbA")]
    [InlineData("\"windowMinutes\":15", "\"windowMinutes\":15,\"thresholdDbA\":90", "thresholdDbA")]
    [InlineData("\"metric\":\"windowLevel\"", "\"metric\":\"dose\"", "windowMinutes")]
    [InlineData("\"limit\":100", "\"limit\":100,\"limitUnit\":\"metre\"", "limitUnit")]
    [InlineData("\"limit\":100", "\"limit\":100,\"scale\":{}", "scale")]
    public void Read_BadMember_IsRefusedByName(string good, string bad, string named)
    {
        string text = With(Clause.Replace(good, bad, StringComparison.Ordinal));

        FormatException refused = Assert.Throws<FormatException>(() => RuleSetReader.Read(text));
        Assert.Contains(named, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_NoClauses_IsRefused() => Assert.Throws<FormatException>(() => RuleSetReader.Read(With("")));

    [Fact]
    public void Read_SameClauseTwice_IsRefused() =>
        Assert.Throws<FormatException>(() => RuleSetReader.Read(With(Clause + "," + Clause)));

    [Theory]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("")]
    public void Read_NotARuleSet_IsRefused(string text) =>
        Assert.Throws<FormatException>(() => RuleSetReader.Read(text));

    [Fact]
    public void All_Library_HasTheFiveSetsWithKnownCitations()
    {
        Assert.Equal(
            ["eu-2003-10", "niosh-1998", "osha-1910-95", "uk-2005", "who-venues-2022"],
            RuleSetLibrary.All.Select(set => set.Id)
        );
        Assert.All(RuleSetLibrary.All, set => Assert.NotNull(CitationRegistry.Get(set.Source.Citation)));
        Assert.All(RuleSetLibrary.All, set => Assert.NotEmpty(set.Confirm));
    }

    // Directive 2003/10/EC Art. 3(1); the regulations of 2005 have the same numbers; 29 CFR 1910.95(b), (c) and table
    // G-16; NIOSH 98-126 (1998); WHO standard for venues and events (2022).
    [Theory]
    [InlineData("eu-2003-10", "exposure-limit", 87)]
    [InlineData("eu-2003-10", "upper-action-level", 85)]
    [InlineData("eu-2003-10", "lower-action-level", 80)]
    [InlineData("eu-2003-10", "peak-limit", 140)]
    [InlineData("eu-2003-10", "upper-action-peak", 137)]
    [InlineData("eu-2003-10", "lower-action-peak", 135)]
    [InlineData("uk-2005", "exposure-limit", 87)]
    [InlineData("uk-2005", "upper-action-level", 85)]
    [InlineData("uk-2005", "lower-action-level", 80)]
    [InlineData("osha-1910-95", "permissible-dose", 100)]
    [InlineData("osha-1910-95", "hearing-conservation-dose", 50)]
    [InlineData("osha-1910-95", "ceiling", 115)]
    [InlineData("osha-1910-95", "impulse-peak", 140)]
    [InlineData("niosh-1998", "recommended-limit", 100)]
    [InlineData("who-venues-2022", "audience-level", 100)]
    public void Find_PublishedLimit_StandsInTheFile(string set, string clause, double limit) =>
        Assert.Equal(limit, RuleSetLibrary.Find(set)!.Clauses.Single(c => c.Id == clause).Limit);

    [Fact]
    public void Find_UnknownId_IsNull() => Assert.Null(RuleSetLibrary.Find("no-such-rule"));
}
