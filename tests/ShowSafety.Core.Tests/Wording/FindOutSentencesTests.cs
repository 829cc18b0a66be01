using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests.Wording;

public sealed class FindOutSentencesTests
{
    [Theory]
    [InlineData(null, 0.0, "would not come closer")]
    [InlineData(null, 1.8, "costs about 1.80\u00A0m of crowd line")]
    [InlineData(null, null, "could not be told")]
    [InlineData(Severity.Stop, null, "NOT TO RUN")]
    [InlineData(Severity.Note, null, "noted only")]
    public void Cost_OfAnItem_ClaimsOnlyWhatWasWorkedOut(Severity? cost, double? metres, string words)
    {
        Quantity? line = metres is { } m ? Quantity.Plain(m, Unit.Metre) : null;
        var item = new FindOutItem("Bench.Friction", "e1", "friction", FindOut.Scale, cost, line);

        Assert.Contains(words, FindOutSentences.Cost(item), StringComparison.Ordinal);
    }
}
