using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core.Plans;

namespace ShowSafety.Web.Hosting;

/// <summary>The one way to refuse a request: problem details (RFC 9457), with an <c>errors</c> list for bad input.</summary>
internal static class Refusals
{
    /// <summary>Leaves out the number of the request, which nobody could look up anywhere.</summary>
    public static void WithoutTrace(ProblemDetailsOptions options) =>
        options.CustomizeProblemDetails = context => context.ProblemDetails.Extensions.Remove("traceId");

    /// <summary>Input that can't be used, with every problem in it.</summary>
    public static ProblemHttpResult BadInput(IReadOnlyList<PlanProblem> problems) =>
        TypedResults.Problem(
            statusCode: StatusCodes.Status400BadRequest,
            title: "The input can't be used",
            detail: problems.Count == 1 ? problems[0].Text : $"{problems.Count} problems stand in \"errors\".",
            extensions: new Dictionary<string, object?> { ["errors"] = problems }
        );

    /// <summary>One problem with the input as a whole or with one of its members.</summary>
    public static ProblemHttpResult BadInput(
        string pointer,
        string code,
        string? value,
        string? allowed,
        string text
    ) => BadInput([new(pointer, code, value, allowed, text)]);

    /// <summary>A body larger than accepted.</summary>
    public static ProblemHttpResult TooLarge() =>
        TypedResults.Problem(
            statusCode: StatusCodes.Status413PayloadTooLarge,
            detail: $"At most {RequestBody.MostBytes / 1_000_000} MB are accepted.",
            extensions: new Dictionary<string, object?>
            {
                ["errors"] = new PlanProblem[]
                {
                    new("", PlanProblemCodes.TooLarge, null, null, "The body is too large."),
                },
            }
        );

    /// <summary>A body that does not say it is JSON.</summary>
    public static ProblemHttpResult NotJson(string? contentType) =>
        TypedResults.Problem(
            statusCode: StatusCodes.Status415UnsupportedMediaType,
            detail: $"Send application/json, not {contentType ?? "a body without a content type"}."
        );

    /// <summary>A later request of the same tab stands for this one.</summary>
    public static ProblemHttpResult Superseded() =>
        TypedResults.Problem(
            statusCode: StatusCodes.Status409Conflict,
            detail: "A later request of the same tab stands for this one.",
            extensions: new Dictionary<string, object?> { ["code"] = "superseded" }
        );

    /// <summary>A computation took too long.</summary>
    public static ProblemHttpResult OutOfTime(TimeSpan budget) =>
        TypedResults.Problem(
            statusCode: StatusCodes.Status503ServiceUnavailable,
            detail: $"It took longer than {budget.TotalSeconds} seconds and was ended."
        );

    /// <summary>A plan an older or newer version of the program saved, which this one can't read.</summary>
    public static ProblemHttpResult Unreadable() =>
        TypedResults.Problem(
            statusCode: StatusCodes.Status409Conflict,
            detail: "This version of the program can't read the saved plan. Get the plan itself to see its file.",
            extensions: new Dictionary<string, object?> { ["code"] = "unreadable" }
        );

    /// <summary>Nothing there by that name.</summary>
    public static ProblemHttpResult NotFound(string detail) =>
        TypedResults.Problem(statusCode: StatusCodes.Status404NotFound, detail: detail);
}
