namespace ShowSafety.Web.Scheduling;

/// <summary>Knows whether a hand is on the page: whether anything interactive runs or has just run.</summary>
/// <param name="time">The clock.</param>
internal sealed class Stillness(TimeProvider time)
{
    /// <summary>How long after the last interactive request the page counts as still; a drag sends several a second.</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(300);

    private readonly Lock guard = new();
    private readonly HashSet<CancellationTokenSource> yielding = [];
    private TaskCompletionSource changed = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private int hands;
    private long? lastMoved;

    /// <summary>Something interactive begins; it ends when the answer is disposed of.</summary>
    public IDisposable Disturb()
    {
        CancellationTokenSource[] ended;
        lock (guard)
        {
            hands++;
            ended = [.. yielding];
            yielding.Clear();
        }

        foreach (var attempt in ended)
        {
            attempt.Cancel();
        }

        return new Ending(Rest);
    }

    /// <summary>Waits until the page is still or patience is over.</summary>
    /// <param name="patience">Set when waiting is enough.</param>
    /// <param name="cancel">Set when nobody wants to wait any more.</param>
    public async Task WaitAsync(CancellationToken patience, CancellationToken cancel)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(patience, cancel);
        try
        {
            while (NextLook() is { } look)
            {
                await look.WaitAsync(either.Token);
            }
        }
        catch (OperationCanceledException) when (!cancel.IsCancellationRequested)
        {
            // Patience is over.
        }
    }

    /// <summary>Ends an attempt when something interactive begins, until the answer is disposed of.</summary>
    public IDisposable EndWhenDisturbed(CancellationTokenSource attempt)
    {
        bool isLate;
        lock (guard)
        {
            isLate = hands > 0;
            if (!isLate)
            {
                yielding.Add(attempt);
            }
        }

        if (isLate)
        {
            attempt.Cancel();
        }

        return new Ending(() =>
        {
            lock (guard)
            {
                yielding.Remove(attempt);
            }
        });
    }

    private void Rest()
    {
        TaskCompletionSource before;
        lock (guard)
        {
            hands--;
            lastMoved = time.GetTimestamp();
            (before, changed) = (changed, new(TaskCreationOptions.RunContinuationsAsynchronously));
        }

        before.SetResult();
    }

    // Null when the page is still.
    private Task? NextLook()
    {
        lock (guard)
        {
            if (hands > 0)
            {
                return changed.Task;
            }

            var left = lastMoved is { } moved ? Pause - time.GetElapsedTime(moved) : TimeSpan.Zero;
            return left <= TimeSpan.Zero ? null : Task.Delay(left, time);
        }
    }

    private sealed class Ending(Action end) : IDisposable
    {
        private Action? once = end;

        public void Dispose() => Interlocked.Exchange(ref once, null)?.Invoke();
    }
}
