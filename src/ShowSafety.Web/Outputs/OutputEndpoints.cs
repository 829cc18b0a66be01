using System.Text;
using ShowSafety.Brief;
using ShowSafety.Core;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Outputs;

/// <summary>Documents of a plan, kept nowhere.</summary>
internal static class OutputEndpoints
{
    /// <summary>Adds <c>POST /api/briefs</c> and <c>POST /api/site-plans</c>.</summary>
    public static IEndpointRouteBuilder MapOutputs(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/api").WithTags("Documents").AddEndpointFilter<RefusedBodies>();
        group
            .MapPost("/briefs", WriteBrief)
            .WithName("WriteBrief")
            .WithSummary("The brief of a plan as PDF")
            .WithDescription("The body is a plan file. Dated today by the service's clock.")
            .Gives(MediaTypes.Pdf, StatusCodes.Status503ServiceUnavailable)
            .TakesBody();
        group
            .MapPost("/site-plans", DrawSitePlan)
            .WithName("DrawSitePlan")
            .WithSummary("The site plan as SVG, to scale")
            .WithDescription("The body is a plan file.")
            .Gives(MediaTypes.Svg, StatusCodes.Status503ServiceUnavailable)
            .TakesBody();
        return routes;
    }

    private static Task<IResult> WriteBrief(
        FileBody<Plan> plan,
        Workbench bench,
        TimeProvider time,
        CancellationToken aborted
    ) =>
        bench.RunAsync(
            Lane.Background,
            cancel =>
            {
                using var pdf = new MemoryStream();
                BriefWriter.Write(plan.Value, Assessor.Assess(plan.Value, cancel), pdf, time.GetLocalNow());
                return TypedResults.Bytes(pdf.ToArray(), MediaTypes.Pdf, "brief.pdf");
            },
            aborted
        );

    private static Task<IResult> DrawSitePlan(FileBody<Plan> plan, Workbench bench, CancellationToken aborted) =>
        bench.RunAsync(
            Lane.Background,
            cancel =>
            {
                var svg = SitePlanWriter.Svg(plan.Value, Assessor.AssessWithoutCosts(plan.Value, cancel));
                return TypedResults.Bytes(Encoding.UTF8.GetBytes(svg), MediaTypes.Svg, "site-plan.svg");
            },
            aborted
        );
}
