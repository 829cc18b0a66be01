using ShowSafety.Core;
using ShowSafety.Core.Files;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;
using ShowSafety.Web.Scheduling;

namespace ShowSafety.Web.Points;

/// <summary>A plan and places on it.</summary>
internal sealed record PointsRequest
{
    /// <summary>The plan.</summary>
    [Field("the plan", Required = true)]
    public Plan Plan { get; init; } = null!;

    /// <summary>The places.</summary>
    [Field("the places asked for", Required = true, MinCount = 1, MaxCount = 50)]
    public ValueList<TappedPlace> Places { get; init; } = [];
}

/// <summary>A place on the plan.</summary>
internal sealed record TappedPlace
{
    /// <summary>Where.</summary>
    [Field("where", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint Place { get; init; }

    /// <summary>Height of the ear; every height people have when it is not given.</summary>
    [Field("height of the ear above the ground", Unit = Unit.Metre, Min = 0.3, Max = 10)]
    public double? EarHeightMetres { get; init; }
}

/// <summary>What holds at single places of a plan.</summary>
internal static class PointEndpoints
{
    /// <summary>Adds <c>POST /api/points</c>.</summary>
    public static IEndpointRouteBuilder MapPoints(this IEndpointRouteBuilder routes)
    {
        routes
            .MapPost("/api/points", Ask)
            .WithName("AskPlaces")
            .WithTags("Points")
            .WithSummary("How loud, how long, what to wear, and why, at places of a plan")
            .WithDescription(
                "The body is {\"plan\": plan file, \"places\": [{\"place\": [x, y], \"earHeightMetres\": 1.5}]}, up to "
                    + "50 places. For each: the loudest moment with every engine's share, exposure and time to stay "
                    + "for a visitor, a child and crew, the plan's hearing protectors, and the zones it lies in. A "
                    + "level that can't be told is left out and the hearing says cannotTell."
            )
            .AddEndpointFilter<RefusedBodies>()
            .Gives(MediaTypes.Json)
            .TakesTurns()
            .TakesBody();
        return routes;
    }

    private static Task<IResult> Ask(
        FileBody<PointsRequest> body,
        TabName tab,
        Workbench bench,
        AssessorMemory memory,
        CancellationToken aborted
    ) =>
        bench.RunAsync(
            Lane.Interactive,
            new("points", tab.Value),
            cancel =>
                TypedResults.Bytes(
                    PlacesJson.Write(
                        AssessedPlaces.Of(
                            body.Value.Plan,
                            [.. body.Value.Places.Select(p => (p.Place, p.EarHeightMetres))],
                            memory,
                            cancel
                        )
                    ),
                    MediaTypes.Json
                ),
            aborted
        );
}
