using System.Globalization;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Plans;

/// <summary>Entity tags of saved plans: the revision in quotation marks.</summary>
internal static class PlanTag
{
    /// <summary>Puts the tag of a plan on an answer.</summary>
    public static void Tag(this HttpResponse response, PlanSummary plan)
    {
        response.Headers.ETag = $"\"{plan.Revision.ToString(CultureInfo.InvariantCulture)}\"";
        response.Headers.CacheControl = "no-cache";
    }

    /// <summary>The revision a request follows, or why it can't be told: exactly one of the two.</summary>
    public static (int? Revision, IResult? Refusal) Followed(HttpRequest request)
    {
        var given = request.Headers.IfMatch.ToString();
        var tags = request.GetTypedHeaders().IfMatch;
        if (tags.Count == 0 && given.Length > 0)
        {
            return (null, Malformed(given));
        }

        if (tags.Count == 0)
        {
            return (
                null,
                TypedResults.Problem(
                    statusCode: StatusCodes.Status428PreconditionRequired,
                    detail: "Say with If-Match which state of the plan you saw."
                )
            );
        }

        return tags.Count == 1 && Revision(tags[0]) is { } revision ? (revision, null) : (null, ChangedMeanwhile());
    }

    /// <summary>Somebody else saved the plan in the meantime.</summary>
    public static IResult ChangedMeanwhile() =>
        TypedResults.Problem(
            statusCode: StatusCodes.Status412PreconditionFailed,
            detail: "The plan was saved elsewhere in the meantime. Nothing was overwritten: get it anew, or keep yours as a new plan."
        );

    /// <summary>No such plan.</summary>
    public static IResult Missing(string id) => Refusals.NotFound($"There is no saved plan \"{id}\".");

    private static ProblemHttpResult Malformed(string given) =>
        Refusals.BadInput(
            "",
            PlanProblemCodes.WrongText,
            given.Length <= 80 ? given : given[..77] + "...",
            "the ETag of the plan, in quotation marks",
            "If-Match takes the ETag of the plan as it was sent, in quotation marks."
        );

    private static int? Revision(EntityTagHeaderValue tag) =>
        !tag.IsWeak
        && int.TryParse(tag.Tag.AsSpan().Trim('"'), NumberStyles.None, CultureInfo.InvariantCulture, out var revision)
            ? revision
            : null;
}
