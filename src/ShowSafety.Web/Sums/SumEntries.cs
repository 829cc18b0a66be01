using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sums;

namespace ShowSafety.Web.Sums;

/// <summary>A worked sum anybody may put numbers in.</summary>
/// <param name="Name">Name in the address.</param>
/// <param name="Title">What it answers.</param>
/// <param name="Parameters">What it takes.</param>
/// <param name="Sources">Where the formula is published.</param>
internal sealed record SumEntry(
    string Name,
    string Title,
    IReadOnlyList<SumParameterEntry> Parameters,
    IReadOnlyList<Citation> Sources
)
{
    /// <summary>Describes a sum.</summary>
    public static SumEntry Of(WorkedSum sum) =>
        new(
            sum.Name,
            sum.Title,
            [.. sum.Parameters.Select(SumParameterEntry.Of)],
            [.. sum.Citations.Select(CitationRegistry.Get)]
        );
}

/// <summary>A parameter of a worked sum.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Meaning">What it means.</param>
/// <param name="Unit">Symbol of its unit; empty for pure numbers and words.</param>
/// <param name="Min">Smallest number accepted.</param>
/// <param name="Max">Largest number accepted.</param>
/// <param name="Default">Number taken when none is given, or null where one must be given.</param>
/// <param name="ListLength">How many numbers it takes, 0 for any number of them, or null for one.</param>
/// <param name="Words">The words it takes, the first by default; empty where it takes numbers.</param>
internal sealed record SumParameterEntry(
    string Key,
    string Meaning,
    string Unit,
    double Min,
    double Max,
    double? Default,
    int? ListLength,
    IReadOnlyList<string> Words
)
{
    /// <summary>Describes a parameter.</summary>
    public static SumParameterEntry Of(SumParameter p) =>
        new(p.Key, p.Meaning, p.Unit.Symbol(), p.Min, p.Max, p.Default, p.ListLength, p.Words);
}

/// <summary>The answer of a worked sum.</summary>
/// <param name="Name">Name of the sum.</param>
/// <param name="Title">What it answers.</param>
/// <param name="Results">The results, the main one first.</param>
/// <param name="Steps">The calculation, a line a step.</param>
/// <param name="Sources">Where the formula is published.</param>
internal sealed record SolvedSum(
    string Name,
    string Title,
    IReadOnlyList<SumResultEntry> Results,
    IReadOnlyList<string> Steps,
    IReadOnlyList<Citation> Sources
)
{
    /// <summary>The answer of a sum.</summary>
    public static SolvedSum Of(WorkedSum sum, SumAnswer answer) =>
        new(
            sum.Name,
            sum.Title,
            [.. answer.Results.Select(r => new SumResultEntry(r.Key, r.Value, r.Unit.Symbol(), r.Meaning))],
            answer.Steps,
            SumEntry.Of(sum).Sources
        );
}

/// <summary>One result of a worked sum.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Value">The value.</param>
/// <param name="Unit">Symbol of its unit.</param>
/// <param name="Meaning">What it means.</param>
internal sealed record SumResultEntry(string Key, double Value, string Unit, string Meaning);
