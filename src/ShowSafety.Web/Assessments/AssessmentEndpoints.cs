using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core;
using ShowSafety.Core.Files;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Assessments;

/// <summary>The assessment of a plan, kept nowhere.</summary>
internal static class AssessmentEndpoints
{
    private const string Full = "full";
    private const string Drag = "drag";

    /// <summary>Adds <c>POST /api/assessments</c>.</summary>
    public static IEndpointRouteBuilder MapAssessments(this IEndpointRouteBuilder routes)
    {
        routes
            .MapPost("/api/assessments", Assess)
            .WithName("AssessPlan")
            .WithTags("Assessments")
            .WithSummary("Assess a plan")
            .WithDescription(
                "The body is a plan file (/api/plan-schema). The answer is described in docs/assessment-file.md. "
                    + "detail=full, the default, prices what is not known in metres of crowd line; detail=drag leaves "
                    + "those prices out, for a plan that is being moved about."
            )
            .AddEndpointFilter<RefusedBodies>()
            .Gives(MediaTypes.Json, StatusCodes.Status503ServiceUnavailable)
            .TakesBody();
        return routes;
    }

    private static async Task<IResult> Assess(
        FileBody<Plan> plan,
        Workbench bench,
        CancellationToken aborted,
        string detail = Full
    ) =>
        detail switch
        {
            Full => await bench.RunAsync(
                Lane.Background,
                c => Answer(plan.Value, Assessor.Assess(plan.Value, c)),
                aborted
            ),
            Drag => await bench.RunAsync(
                Lane.Interactive,
                c => Answer(plan.Value, Assessor.AssessWithoutCosts(plan.Value, c)),
                aborted
            ),
            _ => Refusals.BadInput(
                "",
                PlanProblemCodes.UnknownWord,
                detail,
                $"{Full}, {Drag}",
                "The query's detail is full or drag."
            ),
        };

    private static FileContentHttpResult Answer(Plan plan, Assessment assessment) =>
        TypedResults.Bytes(AssessmentJson.Write(plan, assessment, indented: false), MediaTypes.Json);
}
