using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Data.Sqlite;

namespace ShowSafety.Web.Hosting;

/// <summary>Answers failures nobody caught with problem details that say what can be done, and nothing of the inside.</summary>
internal static class Failures
{
    // Result codes of SQLite: https://www.sqlite.org/rescode.html
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int NoDatabase = 26;

    /// <summary>Catches what nobody caught.</summary>
    public static IApplicationBuilder UseProblemForFailures(this IApplicationBuilder app) =>
        app.UseExceptionHandler(
            new ExceptionHandlerOptions
            {
                ExceptionHandler = context =>
                    Problem(context.Features.Get<IExceptionHandlerFeature>()?.Error).ExecuteAsync(context),
            }
        );

    private static ProblemHttpResult Problem(Exception? failure) =>
        failure switch
        {
            BadHttpRequestException { StatusCode: StatusCodes.Status413PayloadTooLarge } => Refusals.TooLarge(),
            BadHttpRequestException bad => TypedResults.Problem(statusCode: bad.StatusCode, detail: bad.Message),
            SqliteException { SqliteErrorCode: Full } => NotSaved(
                StatusCodes.Status507InsufficientStorage,
                "The disk is full. Nothing was saved and what was saved before is unchanged: make room and save again."
            ),
            SqliteException { SqliteErrorCode: ReadOnly or InputOutput } => NotSaved(
                StatusCodes.Status500InternalServerError,
                "The data folder can't be written to. Nothing was saved; what was saved before is unchanged."
            ),
            SqliteException { SqliteErrorCode: Corrupt or NoDatabase } => NotSaved(
                StatusCodes.Status500InternalServerError,
                "The file of saved plans is damaged. Nothing was changed: stop the service and keep a copy of the data folder."
            ),
            _ => TypedResults.Problem(
                statusCode: StatusCodes.Status500InternalServerError,
                detail: "The service failed on this request. Nothing was saved. The same request will fail again."
            ),
        };

    private static ProblemHttpResult NotSaved(int status, string detail) =>
        TypedResults.Problem(statusCode: status, title: "Not saved", detail: detail);
}
