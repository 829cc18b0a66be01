using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;
using ShowSafety.Web.Plans;
using ShowSafety.Web.Scheduling;

namespace ShowSafety.Web.Outputs;

/// <summary>Documents of saved plans.</summary>
internal static class SavedOutputEndpoints
{
    /// <summary>Adds <c>GET /api/plans/{id}/brief.pdf</c> and <c>GET /api/plans/{id}/site-plan.svg</c>.</summary>
    public static IEndpointRouteBuilder MapSavedOutputs(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/api/plans/{id}").WithTags("Documents");
        group
            .MapGet("/" + OutputEndpoints.BriefFile, GetBrief)
            .WithName("GetBrief")
            .WithSummary("The brief of a saved plan as PDF")
            .WithDescription("Of the draft as it is now, with its ETag. Dated today by the service's clock.")
            .Gives(MediaTypes.Pdf, 404, 409, 503);
        group
            .MapGet("/" + OutputEndpoints.SitePlanFile, GetSitePlan)
            .WithName("GetSitePlan")
            .WithSummary("The site plan of a saved plan as SVG, to scale")
            .WithDescription("Of the draft as it is now, with its ETag.")
            .Gives(MediaTypes.Svg, 404, 409, 503);
        return routes;
    }

    private static Task<IResult> GetBrief(
        string id,
        IPlanStore store,
        Workbench bench,
        TimeProvider time,
        HttpContext context
    ) =>
        GetAsync(
            id,
            store,
            bench,
            context,
            MediaTypes.Pdf,
            OutputEndpoints.BriefFile,
            (plan, cancel) => Documents.Brief(plan, time.GetLocalNow(), cancel)
        );

    private static Task<IResult> GetSitePlan(string id, IPlanStore store, Workbench bench, HttpContext context) =>
        GetAsync(id, store, bench, context, MediaTypes.Svg, OutputEndpoints.SitePlanFile, Documents.SitePlan);

    private static async Task<IResult> GetAsync(
        string id,
        IPlanStore store,
        Workbench bench,
        HttpContext context,
        string mediaType,
        string file,
        Func<Plan, CancellationToken, byte[]> make
    )
    {
        if (store.Find(id) is not { } saved)
        {
            return PlanTag.Missing(id);
        }

        if (PlanReader.Read(saved.Content).Plan is not { } plan)
        {
            return Refusals.Unreadable();
        }

        return await bench.RunAsync(
            Lane.Background,
            new(file),
            cancel =>
            {
                var document = make(plan, cancel);
                context.Response.Tag(saved.Summary);
                // A brief carries today's date: nobody keeps yesterday's.
                context.Response.Headers.CacheControl = "no-store";
                return TypedResults.Bytes(document, mediaType, Documents.FileName(plan.Title, file));
            },
            context.RequestAborted
        );
    }
}
