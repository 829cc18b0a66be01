using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sums;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Sums;

/// <summary>Worked sums: every formula with inputs, steps, result and source.</summary>
internal static class SumEndpoints
{
    private static readonly IReadOnlyList<SumEntry> Entries = [.. SumRegistry.All.Select(SumEntry.Of)];

    /// <summary>Adds <c>GET /api/sums</c> and <c>POST /api/sums/{name}</c>.</summary>
    public static IEndpointRouteBuilder MapSums(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/api/sums").WithTags("Sums");
        group
            .MapGet("", List)
            .WithName("ListSums")
            .WithSummary("Worked sums")
            .WithDescription("Every public formula with what it takes, its units and its sources.");
        group
            .MapPost("/{name}", Solve)
            .WithName("SolveSum")
            .WithSummary("Solve a worked sum")
            .WithDescription("The body is an object of key to number, list of numbers or word.")
            .AddEndpointFilter<RefusedBodies>()
            .Produces<SolvedSum>()
            .Refuses(StatusCodes.Status404NotFound)
            .TakesBody();
        return routes;
    }

    private static Ok<IReadOnlyList<SumEntry>> List() => TypedResults.Ok(Entries);

    private static IResult Solve(string name, SumBody body)
    {
        if (SumRegistry.Find(name) is not { } sum)
        {
            return Refusals.NotFound($"There is no sum \"{name}\".");
        }

        var (inputs, wrong) = body.For(sum);
        var outcome = SumSolver.Solve(sum, inputs);
        return wrong.Count == 0 && outcome.Answer is { } answer
            ? TypedResults.Ok(SolvedSum.Of(sum, answer))
            : Refusals.BadInput([
                .. wrong,
                .. outcome.Problems.Select(p => Problem(sum, p)).Where(p => IsNew(p, wrong)),
            ]);
    }

    private static bool IsNew(PlanProblem problem, IReadOnlyList<PlanProblem> known) =>
        known.All(k => k.Pointer != problem.Pointer);

    private static PlanProblem Problem(WorkedSum sum, SumProblem problem)
    {
        var parameter = sum.Parameters.FirstOrDefault(p => p.Key == problem.Parameter);
        var code = (parameter, problem.Given) switch
        {
            (null, null) => PlanProblemCodes.OutOfRange,
            (null, _) => PlanProblemCodes.UnknownMember,
            (_, null) => PlanProblemCodes.Missing,
            ({ Words.Count: > 0 }, _) => PlanProblemCodes.UnknownWord,
            _ => PlanProblemCodes.OutOfRange,
        };
        var pointer = (parameter, problem.Given) is (null, null) ? "" : "/" + Escaped(problem.Parameter);
        var given = problem.Given is null ? "is missing" : "can't be taken";
        return new(
            pointer,
            code,
            problem.Given,
            problem.Allowed,
            $"{problem.Parameter} {given}. Allowed: {problem.Allowed}."
        );
    }

    private static string Escaped(string key) =>
        key.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
}
