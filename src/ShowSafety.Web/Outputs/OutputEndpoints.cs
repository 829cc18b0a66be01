using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;
using ShowSafety.Web.Scheduling;

namespace ShowSafety.Web.Outputs;

/// <summary>Documents of a plan, kept nowhere.</summary>
internal static class OutputEndpoints
{
    /// <summary>Name of the brief's file, behind the title.</summary>
    public const string BriefFile = "brief.pdf";

    /// <summary>Name of the site plan's file, behind the title.</summary>
    public const string SitePlanFile = "site-plan.svg";

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
            new("brief"),
            cancel =>
                TypedResults.Bytes(
                    Documents.Brief(plan.Value, time.GetLocalNow(), cancel),
                    MediaTypes.Pdf,
                    Documents.FileName(plan.Value.Title, BriefFile)
                ),
            aborted
        );

    private static Task<IResult> DrawSitePlan(FileBody<Plan> plan, Workbench bench, CancellationToken aborted) =>
        bench.RunAsync(
            Lane.Background,
            new("site-plan"),
            cancel =>
                TypedResults.Bytes(
                    Documents.SitePlan(plan.Value, cancel),
                    MediaTypes.Svg,
                    Documents.FileName(plan.Value.Title, SitePlanFile)
                ),
            aborted
        );
}
