using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;

namespace ShowSafety.Web.PlanFormat;

/// <summary>The format of plan files.</summary>
internal static class PlanSchemaEndpoints
{
    /// <summary>Adds <c>GET /api/plan-schema</c>.</summary>
    public static IEndpointRouteBuilder MapPlanSchema(this IEndpointRouteBuilder routes)
    {
        routes
            .MapGet("/api/plan-schema", Get)
            .WithName("GetPlanSchema")
            .WithTags("Plan format")
            .WithSummary("JSON Schema of plan files")
            .WithDescription("Draft 2020-12, with the meaning, unit and range of every member.")
            .Gives(MediaTypes.Json);
        return routes;
    }

    private static FileContentHttpResult Get() =>
        TypedResults.Bytes(Encoding.UTF8.GetBytes(PlanSchema.Write()), MediaTypes.Json);
}
