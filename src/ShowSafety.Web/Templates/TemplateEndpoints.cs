using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Templates;

/// <summary>Invented plans to look at and to start from.</summary>
internal static class TemplateEndpoints
{
    /// <summary>Adds <c>GET /api/templates</c>, <c>/api/templates/{name}</c> and <c>/api/templates/{name}/start</c>.</summary>
    public static IEndpointRouteBuilder MapTemplates(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/api/templates").WithTags("Templates");
        group
            .MapGet("", List)
            .WithName("ListTemplates")
            .WithSummary("Templates")
            .WithDescription("The invented plans that come with the program, by name.");
        group
            .MapGet("/{name}", Get)
            .WithName("GetTemplate")
            .WithSummary("A template as it is")
            .WithDescription("The plan file. Everything in it is an example, and every output of it says so.")
            .Gives(MediaTypes.Json, StatusCodes.Status404NotFound);
        group
            .MapGet("/{name}/start", Start)
            .WithName("StartFromTemplate")
            .WithSummary("A plan of one's own, started from a template")
            .WithDescription(
                "The drawing stays; everything somebody measured, proved, permitted or answered for is taken out, so "
                    + "that the plan opens NOT TO RUN with its list of what to find out."
            )
            .Gives(MediaTypes.Json, StatusCodes.Status404NotFound);
        return routes;
    }

    private static Ok<IReadOnlyList<TemplateSummary>> List(TemplateLibrary templates) => TypedResults.Ok(templates.All);

    private static IResult Get(string name, TemplateLibrary templates) =>
        templates.Find(name) is { } plan ? PlanFile(plan) : Missing(name);

    private static IResult Start(string name, TemplateLibrary templates) =>
        templates.Find(name) is { } plan ? PlanFile(PlanExamples.StartFrom(plan)) : Missing(name);

    private static FileContentHttpResult PlanFile(Plan plan) =>
        TypedResults.Bytes(PlanWriter.Write(plan), MediaTypes.Json);

    private static ProblemHttpResult Missing(string name) => Refusals.NotFound($"There is no template \"{name}\".");
}
