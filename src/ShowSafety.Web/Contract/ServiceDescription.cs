using Microsoft.OpenApi;

namespace ShowSafety.Web.Contract;

/// <summary>The description of the service as OpenAPI 3.1, checked in as docs/openapi.json.</summary>
internal static class ServiceDescription
{
    private const string About =
        "Assesses the plan of a public demonstration of a small gas turbine. A planning aid: it does not replace a "
        + "competent person, the venue's rules, the fire authority, insurers or local law. Errors are problem details "
        + "(RFC 9457); bad input lists every problem in \"errors\" with pointer (RFC 6901), code, value, allowed, text.";

    /// <summary>Prepares the description.</summary>
    public static IServiceCollection AddServiceDescription(this IServiceCollection services) =>
        services.AddOpenApi(options =>
        {
            options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
            options.AddDocumentTransformer(
                (document, _, _) =>
                {
                    document.Info = new OpenApiInfo
                    {
                        Title = "ShowSafety",
                        Version = "1",
                        Description = About,
                    };
                    // Where it listens is the business of the one who starts it.
                    document.Servers = [];
                    return Task.CompletedTask;
                }
            );
        });
}
