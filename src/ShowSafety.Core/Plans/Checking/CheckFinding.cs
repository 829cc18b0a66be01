using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>Short ways to make the findings of the check.</summary>
internal static class CheckFinding
{
    /// <summary>Something that makes part of the assessment wrong: to be put right before the run.</summary>
    public static Finding Act(string code, string? elementId, params IEnumerable<FindingArgument> arguments) =>
        new(code, Severity.Act) { ElementId = elementId, Arguments = arguments.ToValueList() };

    /// <summary>Something odd that changes no verdict.</summary>
    public static Finding Note(string code, string? elementId, params IEnumerable<FindingArgument> arguments) =>
        new(code, Severity.Note) { ElementId = elementId, Arguments = arguments.ToValueList() };

    /// <summary>A name or an id.</summary>
    public static FindingArgument Text(string name, string text) => FindingArgument.Of(name, text);

    /// <summary>A stated number in the unit of its member.</summary>
    public static FindingArgument Number(string name, Stated stated, Unit unit) =>
        FindingArgument.Of(name, Quantity.Plain(stated.Value, unit) with { Pedigree = stated.Pedigree });
}
