using ShowSafety.Core.Measures;
using ShowSafety.Core.Sums;

namespace ShowSafety.Core.Tests.Sums;

public sealed class SumSolverTests
{
    private static readonly WorkedSum Ratio = new(
        "ratio",
        "one number over another",
        [
            new("topMetres", "the one on top", Unit.Metre) { Min = 0, Max = 10 },
            new("bottomMetres", "the one below", Unit.Metre)
            {
                Min = -5,
                Max = 5,
                Default = 2,
            },
            new("sign", "which way", Unit.One) { Words = ["plus", "minus"] },
            new("extras", "more", Unit.One)
            {
                ListLength = 2,
                Default = null,
                Min = 0,
                Max = 1,
            },
        ],
        [],
        input =>
        {
            double bottom = input.Number("bottomMetres");
            ArgumentOutOfRangeException.ThrowIfZero(bottom, "bottomMetres");
            double sign = input.Word("sign") == "minus" ? -1 : 1;
            double ratio = sign * input.Number("topMetres") / bottom;
            return new([new("ratio", ratio, Unit.One, "the ratio")], ["ratio = top / bottom"]);
        }
    );

    [Fact]
    public void Solve_GoodInputs_GivesTheAnswer()
    {
        SumOutcome outcome = Solve(("topMetres", "3"), ("sign", "minus"), ("extras", "0,1"));

        Assert.Empty(outcome.Problems);
        Assert.Equal(-1.5, outcome.Answer!.Results[0].Value);
    }

    [Fact]
    public void Solve_SeveralBadInputs_NamesThemAll()
    {
        SumOutcome outcome = Solve(
            ("topMetres", "11"),
            ("bottomMetres", "NaN"),
            ("sign", "times"),
            ("extras", "0"),
            ("bogus", "1")
        );

        Assert.Null(outcome.Answer);
        Assert.Equal(
            ["bogus", "bottomMetres", "extras", "sign", "topMetres"],
            outcome.Problems.Select(p => p.Parameter).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Solve_InputMissing_SaysWhatIsAllowed()
    {
        SumProblem problem = Assert.Single(Solve(("extras", "0,1")).Problems);

        Assert.Equal(new SumProblem("topMetres", null, "a number from 0 to 10 m"), problem);
    }

    [Fact]
    public void Solve_CombinationTheFormulaRefuses_IsAProblemNotACrash()
    {
        SumOutcome outcome = Solve(("topMetres", "1"), ("bottomMetres", "0"), ("extras", "0,0"));

        Assert.Equal("bottomMetres", Assert.Single(outcome.Problems).Parameter);
    }

    private static SumOutcome Solve(params (string Key, string Text)[] inputs) =>
        SumSolver.Solve(Ratio, inputs.ToDictionary(i => i.Key, i => i.Text));
}
