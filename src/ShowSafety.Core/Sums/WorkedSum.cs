using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>
/// A public formula as a worked sum: anybody may put numbers in and see inputs, steps, result with unit, and source.
/// It calls the room's own function, never a second formula.
/// </summary>
/// <param name="Name">Name in lower case with hyphens, unique: "air-absorption".</param>
/// <param name="Title">What it answers, as a phrase.</param>
/// <param name="Parameters">What it needs.</param>
/// <param name="Citations">Ids of its sources.</param>
/// <param name="Solve">Calls the room.</param>
public sealed record WorkedSum(
    string Name,
    string Title,
    ValueList<SumParameter> Parameters,
    ValueList<string> Citations,
    Func<SumInput, SumAnswer> Solve
);

/// <summary>A parameter of a worked sum.</summary>
/// <param name="Key">Name in camel case with the unit in it: "distanceMetres".</param>
/// <param name="Meaning">What it means, as a phrase.</param>
/// <param name="Unit">Unit of the number or numbers.</param>
public sealed record SumParameter(string Key, string Meaning, Unit Unit)
{
    /// <summary>Smallest number accepted, inclusive.</summary>
    public double Min { get; init; } = -1e12;

    /// <summary>Largest number accepted, inclusive.</summary>
    public double Max { get; init; } = 1e12;

    /// <summary>Number taken when none is given; null where one must be given.</summary>
    public double? Default { get; init; }

    /// <summary>Whether it takes several numbers separated by commas, with how many (0: any number from one).</summary>
    public int? ListLength { get; init; }

    /// <summary>Words accepted where it takes a word; empty where it takes numbers. The first one is the default.</summary>
    public ValueList<string> Words { get; init; } = [];
}

/// <summary>One result of a worked sum.</summary>
/// <param name="Key">Name in camel case with the unit in it: "levelDbA".</param>
/// <param name="Value">The value, finite.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Meaning">What it means, as a phrase.</param>
public sealed record SumResult(string Key, double Value, Unit Unit, string Meaning);

/// <summary>What a worked sum answers.</summary>
/// <param name="Results">The results, the main one first.</param>
/// <param name="Steps">The calculation, a line a step.</param>
public sealed record SumAnswer(ValueList<SumResult> Results, ValueList<string> Steps);
