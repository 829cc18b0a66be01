using System.Text.Json.Nodes;

namespace ShowSafety.Web.Contract;

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
