using Microsoft.AspNetCore.Diagnostics;

namespace ShowSafety.Web.Hosting;

/// <summary>Gives an error without a body one: problem details as in RFC 9457.</summary>
internal static class EmptyErrors
{
    /// <summary>Answers such errors with problem details whatever the client says it accepts.</summary>
    public static IApplicationBuilder UseProblemForEmptyErrors(this IApplicationBuilder app) =>
        app.UseStatusCodePages(Explain);

    private static Task Explain(StatusCodeContext context)
    {
        var http = context.HttpContext;
        var status = http.Response.StatusCode;
        var detail = status switch
        {
            StatusCodes.Status404NotFound => $"There is nothing at {http.Request.Path}.",
            StatusCodes.Status405MethodNotAllowed => $"{http.Request.Path} does not answer {http.Request.Method}.",
            _ => null,
        };
        return TypedResults.Problem(statusCode: status, detail: detail).ExecuteAsync(http);
    }
}
