using Microsoft.OpenApi;
using ShowSafety.Web.Scheduling;

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
            options.AddOperationTransformer(
                (operation, context, _) =>
                {
                    if (context.Description.ActionDescriptor.EndpointMetadata.OfType<TakesTabName>().Any())
                    {
                        AddTabName(operation);
                    }

                    return Task.CompletedTask;
                }
            );
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
                    AnswerComponents.Add(document);
                    return Task.CompletedTask;
                }
            );
        });

    private static void AddTabName(OpenApiOperation operation) =>
        (operation.Parameters ??= []).Add(
            new OpenApiParameter
            {
                Name = TabName.Header,
                In = ParameterLocation.Header,
                Description =
                    "The tab's own name for itself, up to 64 characters. A later request of the same name for the same "
                    + "ends an earlier one: 409 with code \"superseded\".",
                Schema = new OpenApiSchema { Type = JsonSchemaType.String },
            }
        );
}
