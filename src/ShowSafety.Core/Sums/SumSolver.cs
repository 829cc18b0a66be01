using System.Globalization;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Something wrong with an input of a worked sum.</summary>
/// <param name="Parameter">Key of the parameter.</param>
/// <param name="Given">What was given, or null when nothing was.</param>
/// <param name="Allowed">What is allowed.</param>
public sealed record SumProblem(string Parameter, string? Given, string Allowed);

/// <summary>What came of a worked sum: an answer, or every problem with its inputs.</summary>
/// <param name="Answer">The answer, or null.</param>
/// <param name="Problems">The problems; empty when there is an answer.</param>
public sealed record SumOutcome(SumAnswer? Answer, ValueList<SumProblem> Problems);

/// <summary>Checks the inputs of a worked sum, all of them at once, and solves it.</summary>
public static class SumSolver
{
    /// <summary>Solves <paramref name="sum"/> for inputs as text, as typed on a command line or sent by a page.</summary>
    public static SumOutcome Solve(WorkedSum sum, IReadOnlyDictionary<string, string> inputs)
    {
        var problems = new List<SumProblem>();
        var numbers = new Dictionary<string, ValueList<double>>();
        var words = new Dictionary<string, string>();
        problems.AddRange(
            inputs
                .Keys.Where(key => sum.Parameters.All(p => p.Key != key))
                .Select(key => new SumProblem(key, inputs[key], AllowedKeys(sum)))
        );
        foreach (SumParameter parameter in sum.Parameters)
        {
            Take(parameter, inputs.GetValueOrDefault(parameter.Key), numbers, words, problems);
        }

        return problems.Count > 0 ? new(null, [.. problems]) : SolveChecked(sum, new SumInput(numbers, words));
    }

    private static SumOutcome SolveChecked(WorkedSum sum, SumInput input)
    {
        try
        {
            return new(sum.Solve(input), []);
        }
        catch (ArgumentException outside)
        {
            // A formula may refuse a combination of inputs that are each in range; it says why in physical words.
            return new(null, [new SumProblem(outside.ParamName ?? sum.Name, null, outside.Message)]);
        }
    }

    private static void Take(
        SumParameter parameter,
        string? given,
        Dictionary<string, ValueList<double>> numbers,
        Dictionary<string, string> words,
        List<SumProblem> problems
    )
    {
        if (parameter.Words.Count > 0)
        {
            string word = given ?? parameter.Words[0];
            words[parameter.Key] = word;
            if (!parameter.Words.Contains(word))
            {
                problems.Add(new(parameter.Key, given, string.Join(", ", parameter.Words)));
            }
        }
        else if (given is null && parameter.Default is { } standard)
        {
            numbers[parameter.Key] = [standard];
        }
        else if (Parse(parameter, given) is { } parsed)
        {
            numbers[parameter.Key] = parsed;
        }
        else
        {
            problems.Add(new(parameter.Key, given, Allowed(parameter)));
        }
    }

    private static ValueList<double>? Parse(SumParameter parameter, string? given)
    {
        string[] parts = given?.Split(',') ?? [];
        var values = new List<double>();
        foreach (string part in parts)
        {
            if (
                !double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
                || !(value >= parameter.Min && value <= parameter.Max)
            )
            {
                return null;
            }

            values.Add(value);
        }

        int wanted = parameter.ListLength ?? 1;
        bool fits = wanted == 0 ? values.Count > 0 : values.Count == wanted;
        return fits ? [.. values] : null;
    }

    private static string Allowed(SumParameter parameter)
    {
        string count = parameter.ListLength switch
        {
            null => "a number",
            0 => "numbers separated by commas",
            { } n => string.Create(CultureInfo.InvariantCulture, $"{n} numbers separated by commas"),
        };
        return string.Create(
                CultureInfo.InvariantCulture,
                $"{count} from {parameter.Min} to {parameter.Max} {parameter.Unit.Symbol()}"
            )
            .TrimEnd();
    }

    private static string AllowedKeys(WorkedSum sum) => string.Join(", ", sum.Parameters.Select(p => p.Key));
}
