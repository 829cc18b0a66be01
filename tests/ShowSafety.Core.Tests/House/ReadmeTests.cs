using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests.House;

/// <summary>What the tool must always say stands where a newcomer reads first.</summary>
public sealed class ReadmeTests
{
    private static readonly string Text = string.Join(
        ' ',
        File.ReadAllText(Path.Combine(Repository.Root, "README.md"))
            .Split((char[])['\n', '>', ' '], StringSplitOptions.RemoveEmptyEntries)
    );

    [Theory]
    [InlineData("It is a planning aid")]
    [InlineData("one date, one weather band, one engine and one version of the plan")]
    [InlineData("does not replace a competent person")]
    [InlineData("Results depend on measured data")]
    [InlineData("can't be made harmless by distance alone")]
    [InlineData("Never run where the plan says NOT TO RUN")]
    [InlineData("dotnet run --project src/ShowSafety.Web")]
    [InlineData("bash tests/run.sh")]
    public void Readme_MustSay_Says(string words) => Assert.Contains(words, Text, StringComparison.Ordinal);

    [Fact]
    public void Readme_ForbiddenWords_AreAbsent() => Assert.Empty(ForbiddenWords.In(Text));
}
