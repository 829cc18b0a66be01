using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Plans;

/// <summary>The name of a version.</summary>
internal sealed record VersionRequest
{
    /// <summary>The name.</summary>
    [Field("name of the version", Required = true, MaxLength = 120)]
    public string Name { get; init; } = "";
}

/// <summary>Versions of saved plans, kept for good.</summary>
internal static class VersionEndpoints
{
    /// <summary>Adds <c>/api/plans/{id}/versions</c> and what is below it.</summary>
    public static IEndpointRouteBuilder MapVersions(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/api/plans/{id}/versions").WithTags("Plans").AddEndpointFilter<RefusedBodies>();
        group
            .MapGet("", List)
            .WithName("ListVersions")
            .WithSummary("Named versions of a plan")
            .WithDescription("The latest first.")
            .Produces<IReadOnlyList<VersionSummary>>()
            .Refuses(404);
        group
            .MapPost("", Keep)
            .WithName("KeepVersion")
            .WithSummary("Keep the draft as it is now under a name")
            .WithDescription("The body is {\"name\": \"…\"}. A version is never changed or thrown away.")
            .Produces<VersionSummary>(StatusCodes.Status201Created)
            .Refuses(404)
            .TakesBody();
        group
            .MapGet("/{number:int}", Get)
            .WithName("GetVersion")
            .WithSummary("A named version of a plan")
            .WithDescription("The plan file as it was.")
            .Gives(MediaTypes.Json, StatusCodes.Status404NotFound);
        return routes;
    }

    // A plan taken out of the list keeps its versions.
    private static IResult List(string id, IPlanStore store) =>
        store.Versions(id) is var versions && (versions.Count > 0 || store.Find(id) is not null)
            ? TypedResults.Ok(versions)
            : PlanTag.Missing(id);

    private static IResult Keep(string id, FileBody<VersionRequest> body, IPlanStore store) =>
        store.Keep(id, body.Value.Name) is { } kept
            ? TypedResults.Created($"/api/plans/{id}/versions/{kept.Number}", kept)
            : PlanTag.Missing(id);

    private static IResult Get(string id, int number, IPlanStore store) =>
        store.FindVersion(id, number) is { } content
            ? TypedResults.Bytes(content, MediaTypes.Json)
            : Refusals.NotFound($"There is no version {number} of a plan \"{id}\".");
}
