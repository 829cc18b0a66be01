using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core;
using ShowSafety.Core.Files;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;
using ShowSafety.Web.Scheduling;

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
                    + "detail=full, the default, gives all of it and prices what is not known in metres of crowd "
                    + "line. detail=drag, for a plan that is being moved about, gives the same without findOut, "
                    + "assumptions and sources, of the rooms the layout only, and findings without arguments and "
                    + "citations."
            )
            .AddEndpointFilter<RefusedBodies>()
            .Gives(MediaTypes.Json)
            .TakesTurns()
            .TakesBody();
        return routes;
    }

    private static async Task<IResult> Assess(
        FileBody<Plan> plan,
        TabName tab,
        Workbench bench,
        CancellationToken aborted,
        string detail = Full
    ) =>
        detail switch
        {
            Full => await bench.RunAsync(
                Lane.Background,
                new("assessment", tab.Value),
                c => Answer(AssessmentJson.Write(plan.Value, Assessor.Assess(plan.Value, c), indented: false)),
                aborted
            ),
            Drag => await bench.RunAsync(
                Lane.Interactive,
                new("drag", tab.Value),
                c => Answer(AssessmentJson.WriteForDrag(plan.Value, Assessor.AssessWithoutCosts(plan.Value, c))),
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

    private static FileContentHttpResult Answer(byte[] json) => TypedResults.Bytes(json, MediaTypes.Json);
}
