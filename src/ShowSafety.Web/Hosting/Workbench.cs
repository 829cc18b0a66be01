namespace ShowSafety.Web.Hosting;

/// <summary>Who waits for a computation.</summary>
internal enum Lane
{
    /// <summary>A hand on the page: drags, taps, pictures of levels.</summary>
    Interactive,

    /// <summary>Whole assessments and documents.</summary>
    Background,
}

/// <summary>
/// Runs computations one at a time in each of two lanes, so that a document being written never holds up a drag. Ends
/// them when nobody waits any more or their time is spent.
/// </summary>
/// <param name="time">The clock.</param>
internal sealed class Workbench(TimeProvider time) : IDisposable
{
    /// <summary>The longest any computation may take, its waiting in the lane included.</summary>
    public static readonly TimeSpan Budget = TimeSpan.FromSeconds(60);

    private readonly SemaphoreSlim interactive = new(1);
    private readonly SemaphoreSlim background = new(1);

    /// <summary>Runs a computation when its lane is free.</summary>
    /// <param name="lane">The lane.</param>
    /// <param name="work">The computation; it must look at its token.</param>
    /// <param name="aborted">Set when the one who asked has gone.</param>
    public async Task<IResult> RunAsync(Lane lane, Func<CancellationToken, IResult> work, CancellationToken aborted)
    {
        using var spent = new CancellationTokenSource(Budget, time);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(aborted, spent.Token);
        var gate = lane == Lane.Interactive ? interactive : background;
        try
        {
            await gate.WaitAsync(either.Token);
            try
            {
                return await Task.Run(() => work(either.Token), either.Token);
            }
            finally
            {
                gate.Release();
            }
        }
        catch (OperationCanceledException) when (!aborted.IsCancellationRequested)
        {
            return TypedResults.Problem(
                statusCode: StatusCodes.Status503ServiceUnavailable,
                detail: $"It took longer than {Budget.TotalSeconds} seconds and was ended."
            );
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        interactive.Dispose();
        background.Dispose();
    }
}
