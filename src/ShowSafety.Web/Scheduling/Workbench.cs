using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Scheduling;

/// <summary>
/// Runs computations one at a time in each of two lanes. One in the background starts when the page has been still for
/// a moment, and is ended and begun anew when a hand moves again: computations are pure, so nothing but time is lost.
/// Ends a computation when nobody waits any more, a later one of its tab stands for it, or its time is spent.
/// </summary>
/// <param name="time">The clock.</param>
internal sealed class Workbench(TimeProvider time) : IDisposable
{
    /// <summary>The longest any computation may take, its waiting in the lane included.</summary>
    public static readonly TimeSpan Budget = TimeSpan.FromSeconds(60);

    /// <summary>How long one in the background gives way; then it runs through, so that nobody waits in vain.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly SemaphoreSlim interactive = new(1);
    private readonly SemaphoreSlim background = new(1);
    private readonly Stillness stillness = new(time);
    private readonly TabTurns tabs = new();

    /// <summary>Runs a computation when its lane is free.</summary>
    /// <param name="lane">The lane.</param>
    /// <param name="asker">Who asks for what.</param>
    /// <param name="work">The computation; it must look at its token, and may be begun anew.</param>
    /// <param name="aborted">Set when the one who asked has gone.</param>
    public async Task<IResult> RunAsync(
        Lane lane,
        Asker asker,
        Func<CancellationToken, IResult> work,
        CancellationToken aborted
    )
    {
        using var spent = new CancellationTokenSource(Budget, time);
        using var turn = tabs.Take(asker);
        using var any = CancellationTokenSource.CreateLinkedTokenSource(aborted, spent.Token, turn.Token);
        try
        {
            return lane == Lane.Interactive
                ? await RunAtOnceAsync(work, any.Token)
                : await RunWhenStillAsync(work, any.Token);
        }
        catch (OperationCanceledException) when (!aborted.IsCancellationRequested)
        {
            return turn.Token.IsCancellationRequested ? Refusals.Superseded() : Refusals.OutOfTime(Budget);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        interactive.Dispose();
        background.Dispose();
    }

    private async Task<IResult> RunAtOnceAsync(Func<CancellationToken, IResult> work, CancellationToken cancel)
    {
        using var hand = stillness.Disturb();
        await interactive.WaitAsync(cancel);
        try
        {
            return await Task.Run(() => work(cancel), cancel);
        }
        finally
        {
            interactive.Release();
        }
    }

    private async Task<IResult> RunWhenStillAsync(Func<CancellationToken, IResult> work, CancellationToken cancel)
    {
        await background.WaitAsync(cancel);
        try
        {
            using var patience = new CancellationTokenSource(Patience, time);
            while (true)
            {
                await stillness.WaitAsync(patience.Token, cancel);
                using var attempt = CancellationTokenSource.CreateLinkedTokenSource(cancel);
                using var ending = patience.IsCancellationRequested ? null : stillness.EndWhenDisturbed(attempt);
                try
                {
                    return await Task.Run(() => work(attempt.Token), attempt.Token);
                }
                catch (OperationCanceledException) when (!cancel.IsCancellationRequested)
                {
                    // A hand moved: once more when it rests.
                }
            }
        }
        finally
        {
            background.Release();
        }
    }
}
