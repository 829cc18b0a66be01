using System.Text.Json;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// The problems met so far, with their sentences. A file made to annoy can hold a million of them: after
/// <see cref="Most"/> the rest is only counted.
/// </summary>
internal sealed class ProblemList
{
    /// <summary>Most problems listed.</summary>
    public const int Most = 500;

    private readonly List<PlanProblem> _problems = [];
    private int _more;

    /// <summary>Whether nothing is wrong so far.</summary>
    public bool IsEmpty => _problems.Count == 0;

    /// <summary>The problems, and how many more there are.</summary>
    public ValueList<PlanProblem> ToValueList() =>
        _more == 0
            ? _problems.ToValueList()
            : _problems
                .Append(
                    new("", PlanProblemCodes.MoreProblems, null, null, $"{_more} more problems are not listed here.")
                )
                .ToValueList();

    /// <summary>Adds a problem with a value of the file.</summary>
    public void Add(JsonPointer at, string code, JsonElement value, string? allowed, string text) =>
        Add(at, code, Shortened(value), allowed, text);

    /// <summary>Adds a problem.</summary>
    public void Add(JsonPointer at, string code, string? value, string? allowed, string text)
    {
        if (_problems.Count >= Most)
        {
            _more++;
            return;
        }

        _problems.Add(new(at.ToString(), code, value, allowed, text));
    }

    /// <summary>A value of another kind than the member holds, null included.</summary>
    public void WrongKind(JsonPointer at, JsonElement value, string allowed)
    {
        if (value.ValueKind == JsonValueKind.Null)
        {
            Add(
                at,
                PlanProblemCodes.Null,
                value,
                allowed,
                "Null is no value: leave the member out, or state " + allowed + "."
            );
            return;
        }

        string found = NameOf(value.ValueKind);
        Add(at, PlanProblemCodes.WrongType, value, allowed, $"Here stands {found}; expected is {allowed}.");
    }

    /// <summary>The value as it stands in the file, cut after eighty characters.</summary>
    private static string Shortened(JsonElement value)
    {
        string raw = value.GetRawText();
        return raw.Length <= 80 ? raw : raw[..77] + "...";
    }

    private static string NameOf(JsonValueKind kind) =>
        kind switch
        {
            JsonValueKind.Object => "an object",
            JsonValueKind.Array => "a list",
            JsonValueKind.String => "a text in quotation marks",
            JsonValueKind.Number => "a number",
            _ => "true or false",
        };
}
