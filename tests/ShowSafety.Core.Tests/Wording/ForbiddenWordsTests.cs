using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests.Wording;

public sealed class ForbiddenWordsTests
{
    [Theory]
    [InlineData("This distance is Safe.", "Safe")]
    [InlineData("an approved screen", "approved")]
    [InlineData("the risk is a low risk", "low risk")]
    public void In_ForbiddenWord_IsFound(string text, string word) => Assert.Equal([word], ForbiddenWords.In(text));

    [Theory]
    [InlineData("ShowSafety says cannot tell")]
    [InlineData("unsafe, safety, protector")]
    public void In_OtherWords_AreNot(string text) => Assert.Empty(ForbiddenWords.In(text));

    [Fact]
    public void AllPhrases_OfThePhrasebook_HoldNoForbiddenWord() =>
        Assert.DoesNotContain(Phrasebook.AllPhrases(), p => ForbiddenWords.In(p).Count > 0);
}
