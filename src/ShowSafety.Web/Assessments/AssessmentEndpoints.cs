using System.Globalization;
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
        AssessorMemory memory,
        HttpResponse response,
        TimeProvider time,
        CancellationToken aborted,
        string detail = Full
    )
    {
        return detail switch
        {
            Full => await bench.RunAsync(Lane.Background, new("assessment", tab.Value), Whole, aborted),
            Drag => await bench.RunAsync(Lane.Interactive, new("drag", tab.Value), Quick, aborted),
            _ => Refusals.BadInput(
                "",
                PlanProblemCodes.UnknownWord,
                detail,
                $"{Full}, {Drag}",
                "The query's detail is full or drag."
            ),
        };

        IResult Whole(CancellationToken cancel) =>
            Answer(AssessmentJson.Write(plan.Value, Assessor.Assess(plan.Value, memory, cancel), indented: false));

        IResult Quick(CancellationToken cancel)
        {
            long start = time.GetTimestamp();
            Assessment assessment = Assessor.AssessWithoutCosts(plan.Value, memory, cancel);
            var assessed = time.GetElapsedTime(start);
            byte[] json = AssessmentJson.WriteForDrag(plan.Value, assessment);
            var written = time.GetElapsedTime(start) - assessed;
            // Of use to whoever asks where the time of a drag goes (tests/page-speed.sh).
            response.Headers["Server-Timing"] = string.Create(
                CultureInfo.InvariantCulture,
                $"assess;dur={assessed.TotalMilliseconds:0.0}, write;dur={written.TotalMilliseconds:0.0}"
            );
            return Answer(json);
        }
    }

    private static FileContentHttpResult Answer(byte[] json) => TypedResults.Bytes(json, MediaTypes.Json);
}
