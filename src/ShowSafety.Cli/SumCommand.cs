using System.CommandLine;
using System.Globalization;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sums;
using ShowSafety.Core.Wording;

namespace ShowSafety.Cli;

/// <summary>sum NAME key=value …, sum --list: the worked sums.</summary>
internal static class SumCommand
{
    public static Command Create()
    {
        var name = new Argument<string?>("NAME") { Arity = ArgumentArity.ZeroOrOne, Description = "Name of the sum." };
        var inputs = new Argument<string[]>("key=value")
        {
            Arity = ArgumentArity.ZeroOrMore,
            Description = "Inputs; several numbers are separated by commas.",
        };
        var list = new Option<bool>("--list") { Description = "List the sums with their parameters and units." };
        var command = new Command("sum", "Solve a worked sum: inputs, steps, result with unit, source.")
        {
            name,
            inputs,
            list,
        };
        command.SetAction(parsed =>
            parsed.GetValue(list) ? List() : Solve(parsed.GetValue(name), parsed.GetValue(inputs) ?? [])
        );
        return command;
    }

    private static int List()
    {
        foreach (WorkedSum sum in SumRegistry.All)
        {
            Console.WriteLine($"{sum.Name}: {sum.Title}");
            foreach (SumParameter parameter in sum.Parameters)
            {
                Console.WriteLine($"    {parameter.Key}: {parameter.Meaning}{Taking(parameter)}");
            }
        }

        return Refusal.Done;
    }

    private static string Taking(SumParameter parameter)
    {
        if (parameter.Words.Count > 0)
        {
            return $" ({string.Join(" | ", parameter.Words)})";
        }

        string unit = parameter.Unit.Symbol() is { Length: > 0 } symbol ? $", {symbol}" : "";
        string standard = parameter.Default is { } value
            ? string.Create(CultureInfo.InvariantCulture, $", {value} when not given")
            : "";
        string many = parameter.ListLength switch
        {
            null => "",
            0 => ", several",
            { } n => string.Create(CultureInfo.InvariantCulture, $", {n} numbers"),
        };
        return unit + many + standard;
    }

    private static int Solve(string? name, IReadOnlyList<string> inputs)
    {
        if (name is null || SumRegistry.Find(name) is not { } sum)
        {
            return Refusal.Of(
                name is null
                    ? "sum: a name is needed; sum --list shows them."
                    : $"{name}: no such sum; sum --list shows them."
            );
        }

        string[] odd = [.. inputs.Where(i => i.IndexOf('=', StringComparison.Ordinal) < 1)];
        string[] twice = [.. inputs.GroupBy(Key).Where(g => g.Count() > 1).Select(g => g.Key)];
        if (odd.Length > 0 || twice.Length > 0)
        {
            return Refusal.Of([
                .. odd.Select(i => $"{i}: an input is written key=value."),
                .. twice.Select(k => $"{k}: given more than once."),
            ]);
        }

        SumOutcome outcome = SumSolver.Solve(sum, inputs.ToDictionary(Key, i => i[(Key(i).Length + 1)..]));
        return outcome.Answer is { } answer
            ? Print(sum, answer)
            : Refusal.Of(outcome.Problems.Select(p => $"{p.Parameter}: {p.Given ?? "missing"}; allowed: {p.Allowed}"));
    }

    private static string Key(string input) => input.Split('=')[0];

    private static int Print(WorkedSum sum, SumAnswer answer)
    {
        Console.WriteLine(sum.Title);
        foreach (string step in answer.Steps)
        {
            Console.WriteLine($"  {step}");
        }

        foreach (SumResult result in answer.Results)
        {
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{result.Key} = {result.Value:G6} {result.Unit.Symbol()}  ({result.Meaning})"
                )
            );
        }

        foreach (Citation source in sum.Citations.Select(CitationRegistry.Get))
        {
            string[] parts = [source.Title, EditionLabels.Of(source), source.Clause];
            string text = string.Join(", ", parts.Where(part => part.Length > 0));
            Console.WriteLine($"source: {text} ({BasisLabels.Of(source.Basis)})");
        }

        return Refusal.Done;
    }
}
