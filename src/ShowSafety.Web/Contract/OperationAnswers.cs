using System.Text.Json.Nodes;

namespace ShowSafety.Web.Contract;

/// <summary>Marks an operation that looks at the name a tab gives itself.</summary>
internal sealed record TakesTabName;

/// <summary>Says in the description of the service what an operation answers.</summary>
internal static class OperationAnswers
{
    private static readonly int[] OfABody =
    [
        StatusCodes.Status400BadRequest,
        StatusCodes.Status413PayloadTooLarge,
        StatusCodes.Status415UnsupportedMediaType,
    ];

    /// <summary>200 with a media type, and the refusals with problem details.</summary>
    public static RouteHandlerBuilder Gives(this RouteHandlerBuilder route, string mediaType, params int[] refusals)
    {
        route.Produces(
            StatusCodes.Status200OK,
            mediaType == MediaTypes.Json ? typeof(JsonObject) : typeof(Stream),
            mediaType
        );
        return route.Refuses(refusals);
    }

    /// <summary>The refusals every operation with a body has.</summary>
    public static RouteHandlerBuilder TakesBody(this RouteHandlerBuilder route) => route.Refuses(OfABody);

    /// <summary>A computation of which a tab's later request stands for the earlier, and whose time is limited.</summary>
    public static RouteHandlerBuilder TakesTurns(this RouteHandlerBuilder route) =>
        route
            .WithMetadata(new TakesTabName())
            .Refuses(StatusCodes.Status409Conflict, StatusCodes.Status503ServiceUnavailable);

    /// <summary>Refusals with problem details.</summary>
    public static RouteHandlerBuilder Refuses(this RouteHandlerBuilder route, params int[] refusals)
    {
        foreach (var status in refusals)
        {
            route.ProducesProblem(status);
        }

        return route;
    }
}
