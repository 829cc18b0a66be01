using ShowSafety.Core;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Web.Contract;
using ShowSafety.Web.Hosting;
using ShowSafety.Web.Scheduling;

namespace ShowSafety.Web.Levels;

/// <summary>A plan and the part of it a picture of levels is wanted of.</summary>
internal sealed record LevelsRequest
{
    /// <summary>The plan.</summary>
    [Field("the plan", Required = true)]
    public Plan Plan { get; init; } = null!;

    /// <summary>Which places.</summary>
    [Field("the places asked for", Required = true)]
    public LevelWindow Window { get; init; } = null!;
}

/// <summary>A grid of places.</summary>
internal sealed record LevelWindow
{
    /// <summary>Place of the first value.</summary>
    [Field("place of the first value", Required = true, Unit = Unit.Metre, Min = -5000, Max = 5000)]
    public PlanPoint LowerLeft { get; init; }

    /// <summary>Distance between neighbours.</summary>
    [Field("distance between neighbours", Required = true, Unit = Unit.Metre, Min = 0.05, Max = 100)]
    public double StepMetres { get; init; }

    /// <summary>Values in a row.</summary>
    [Field("values in a row", Required = true, Min = 1, Max = 600)]
    public int Columns { get; init; }

    /// <summary>Number of rows.</summary>
    [Field("number of rows", Required = true, Min = 1, Max = 600)]
    public int Rows { get; init; }

    /// <summary>Height of the ear.</summary>
    [Field("height of the ear above the ground", Unit = Unit.Metre, Min = 0, Max = 10)]
    public double? EarHeightMetres { get; init; }
}

/// <summary>Pictures of the level.</summary>
internal static class LevelEndpoints
{
    /// <summary>Adds <c>POST /api/levels</c>.</summary>
    public static IEndpointRouteBuilder MapLevels(this IEndpointRouteBuilder routes)
    {
        routes
            .MapPost("/api/levels", Draw)
            .WithName("DrawLevels")
            .WithTags("Levels")
            .WithSummary("The loudest level of the programme on a grid")
            .WithDescription(LevelPicture.Description)
            .AddEndpointFilter<RefusedBodies>()
            .Gives(MediaTypes.Binary)
            .TakesTurns()
            .TakesBody();
        return routes;
    }

    private static Task<IResult> Draw(
        FileBody<LevelsRequest> body,
        TabName tab,
        Workbench bench,
        CancellationToken aborted
    ) =>
        bench.RunAsync(
            Lane.Interactive,
            new("levels", tab.Value),
            cancel =>
            {
                var window = body.Value.Window;
                var ear = window.EarHeightMetres ?? Ears.StandingMetres;
                var grid = AssessedGrid.Of(
                    body.Value.Plan,
                    window.LowerLeft,
                    window.StepMetres,
                    window.Columns,
                    window.Rows,
                    ear,
                    cancel
                );
                return TypedResults.Bytes(LevelPicture.Write(window, ear, grid), MediaTypes.Binary);
            },
            aborted
        );
}
