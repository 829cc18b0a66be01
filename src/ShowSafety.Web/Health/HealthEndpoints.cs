using System.Reflection;
using Microsoft.AspNetCore.Http.HttpResults;

namespace ShowSafety.Web.Health;

/// <summary>Tells the page and a monitor that the service runs, and which version.</summary>
internal static class HealthEndpoints
{
    private static readonly HealthReport Report = new("healthy", ProgramVersion());

    /// <summary>Adds <c>GET /health</c>.</summary>
    public static IEndpointRouteBuilder MapHealth(this IEndpointRouteBuilder routes)
    {
        routes
            .MapGet("/health", GetHealth)
            .WithName("GetHealth")
            .WithTags("Health")
            .WithSummary("State of the service")
            .WithDescription("Says that the service runs, and which version.");
        return routes;
    }

    private static Ok<HealthReport> GetHealth(HttpResponse response)
    {
        response.Headers.CacheControl = "no-store";
        return TypedResults.Ok(Report);
    }

    private static string ProgramVersion()
    {
        var version = typeof(HealthEndpoints)
            .Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!
            .InformationalVersion;
        return version.Split('+')[0];
    }
}
