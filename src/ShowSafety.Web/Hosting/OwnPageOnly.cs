using System.Net;
using Microsoft.AspNetCore.Http.HttpResults;

namespace ShowSafety.Web.Hosting;

/// <summary>
/// Keeps other web pages out. A page elsewhere may point a name of its own at this machine, and its requests carry that
/// name as host; or it may send a form here, and the browser says so.
/// </summary>
internal static class OwnPageOnly
{
    /// <summary>Names the service answers to, separated by semicolons; an option and a setting.</summary>
    public const string Option = "hosts";

    private const string LocalNames = "127.0.0.1;localhost;[::1]";

    /// <summary>Refuses requests by other names, and changes other pages ask for.</summary>
    public static IApplicationBuilder UseOwnPageOnly(this WebApplication app)
    {
        string[] names = [.. NamesFor(app.Configuration).Split(';', StringSplitOptions.RemoveEmptyEntries)];
        return app.Use(
            (context, next) =>
                Refusal(context.Request, names) is { } refusal ? refusal.ExecuteAsync(context) : next(context)
        );
    }

    /// <summary>
    /// The names as set, those of this machine while it listens on this machine only, or empty for any name.
    /// </summary>
    public static string NamesFor(IConfiguration settings)
    {
        if (settings[Option] is { Length: > 0 } named)
        {
            return named;
        }

        var addresses = settings[WebHostDefaults.ServerUrlsKey] ?? LocalHost.DefaultAddress;
        return addresses.Split(';', StringSplitOptions.RemoveEmptyEntries).All(IsLocal) ? LocalNames : "";
    }

    private static bool IsLocal(string address) =>
        BindingAddress.Parse(address).Host is var host
        && (
            host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
            || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip))
        );

    private static ProblemHttpResult? Refusal(HttpRequest request, string[] names)
    {
        if (names.Length > 0 && !names.Contains(request.Host.Host, StringComparer.OrdinalIgnoreCase))
        {
            return TypedResults.Problem(
                statusCode: StatusCodes.Status421MisdirectedRequest,
                title: "Misdirected Request",
                detail: $"The service does not answer to that name. Names it answers to: {string.Join(", ", names)}."
            );
        }

        return Changes(request.Method) && IsFromElsewhere(request)
            ? TypedResults.Problem(
                statusCode: StatusCodes.Status403Forbidden,
                detail: "Another web page asked for this. Only the service's own page may."
            )
            : null;
    }

    private static bool Changes(string method) =>
        !HttpMethods.IsGet(method) && !HttpMethods.IsHead(method) && !HttpMethods.IsOptions(method);

    // Browsers too old to say where a request comes from still name the origin of one that changes something.
    private static bool IsFromElsewhere(HttpRequest request) =>
        request.Headers["Sec-Fetch-Site"].ToString() switch
        {
            "same-origin" or "none" => false,
            "" => request.Headers.Origin.ToString() is { Length: > 0 } origin
                && origin != $"{request.Scheme}://{request.Host}",
            _ => true,
        };
}
