using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core.Exposure.Rules;

namespace ShowSafety.Web.RuleSets;

/// <summary>The rule sets a plan may choose.</summary>
internal static class RuleSetEndpoints
{
    /// <summary>Adds <c>GET /api/rule-sets</c>.</summary>
    public static IEndpointRouteBuilder MapRuleSets(this IEndpointRouteBuilder routes)
    {
        routes
            .MapGet("/api/rule-sets", List)
            .WithName("ListRuleSets")
            .WithTags("Rule sets")
            .WithSummary("Noise rules a plan may choose")
            .WithDescription("Whom each covers, its clauses, limits and duties, its source with edition.");
        return routes;
    }

    private static Ok<IReadOnlyList<RuleSet>> List() => TypedResults.Ok<IReadOnlyList<RuleSet>>(RuleSetLibrary.All);
}
