using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Plans;

/// <summary>Saved plans.</summary>
internal static class PlanEndpoints
{
    /// <summary>Adds the store, opened when the service starts.</summary>
    public static IServiceCollection AddPlanStore(this IServiceCollection services) =>
        services
            .AddSingleton(s => DataFolder.Take(DataFolder.PathOf(s.GetRequiredService<IConfiguration>())))
            .AddSingleton<IPlanStore, SqlitePlanStore>()
            .AddHostedService<PlanStoreOpening>();

    /// <summary>Adds <c>/api/plans</c> and what is below it.</summary>
    public static IEndpointRouteBuilder MapPlans(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/api/plans").WithTags("Plans").AddEndpointFilter<RefusedBodies>();
        group
            .MapGet("", (IPlanStore store) => TypedResults.Ok(store.List()))
            .WithName("ListPlans")
            .WithSummary("Saved plans")
            .WithDescription("The last saved first.");
        group
            .MapPost("", Add)
            .WithName("AddPlan")
            .WithSummary("Keep a new plan")
            .WithDescription("The body is a plan file. The answer's Location and ETag are those of the saved plan.")
            .Produces<PlanSummary>(StatusCodes.Status201Created)
            .TakesBody();
        group
            .MapGet("/{id}", Get)
            .WithName("GetPlan")
            .WithSummary("The draft of a plan")
            .WithDescription("The plan file in its canonical form, with its ETag.")
            .Gives(MediaTypes.Json, StatusCodes.Status404NotFound);
        group
            .MapPut("/{id}", Save)
            .WithName("SavePlan")
            .WithSummary("Save the draft of a plan")
            .WithDescription(
                "If-Match must name the state it follows. Saved elsewhere in the meantime: 412, nothing lost."
            )
            .Produces<PlanSummary>()
            .Refuses(404, 412, 428)
            .TakesBody();
        group
            .MapDelete("/{id}", Remove)
            .WithName("RemovePlan")
            .WithSummary("Take a plan out of the list")
            .WithDescription("If-Match must name its state. Versions kept under a name stay at their addresses.")
            .Produces(StatusCodes.Status204NoContent)
            .Refuses(404, 412, 428);
        return routes;
    }

    private static Created<PlanSummary> Add(FileBody<Plan> plan, IPlanStore store, HttpResponse response)
    {
        var saved = store.Add(plan.Value);
        response.Tag(saved);
        return TypedResults.Created($"/api/plans/{saved.Id}", saved);
    }

    private static IResult Get(string id, IPlanStore store, HttpResponse response)
    {
        if (store.Find(id) is not { } saved)
        {
            return PlanTag.Missing(id);
        }

        response.Tag(saved.Summary);
        return TypedResults.Bytes(saved.Content, MediaTypes.Json);
    }

    private static IResult Save(string id, FileBody<Plan> plan, IPlanStore store, HttpContext context)
    {
        var (revision, refusal) = PlanTag.Followed(context.Request);
        if (revision is not { } followed)
        {
            return refusal!;
        }

        var (outcome, saved) = store.Save(id, followed, plan.Value);
        if (saved is null)
        {
            return Refusal(outcome, id);
        }

        context.Response.Tag(saved);
        return TypedResults.Ok(saved);
    }

    private static IResult Remove(string id, IPlanStore store, HttpRequest request)
    {
        var (revision, refusal) = PlanTag.Followed(request);
        if (revision is not { } followed)
        {
            return refusal!;
        }

        var outcome = store.Remove(id, followed);
        return outcome == ChangeOutcome.Done ? TypedResults.NoContent() : Refusal(outcome, id);
    }

    private static IResult Refusal(ChangeOutcome outcome, string id) =>
        outcome == ChangeOutcome.NotFound ? PlanTag.Missing(id) : PlanTag.ChangedMeanwhile();
}

/// <summary>Opens the store before the first request, so that a folder that can't be used is said at the start.</summary>
/// <param name="services">Where the store comes from.</param>
internal sealed class PlanStoreOpening(IServiceProvider services) : IHostedService
{
    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        services.GetRequiredService<IPlanStore>();
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
