namespace ShowSafety.Web.Scheduling;

/// <summary>Who asks for what: of one tab's requests for the same only the latest matters.</summary>
/// <param name="Operation">What is asked for.</param>
/// <param name="Tab">The tab's own name for itself, or null: then nothing stands for anything else.</param>
internal readonly record struct Asker(string Operation, string? Tab = null);

/// <summary>Ends the older of two requests of one tab for the same.</summary>
internal sealed class TabTurns
{
    private readonly Lock guard = new();
    private readonly Dictionary<Asker, Turn> latest = [];

    /// <summary>Takes the turn of a tab; its earlier one is ended.</summary>
    public Turn Take(Asker asker)
    {
        var turn = new Turn(this, asker);
        Turn? earlier = null;
        if (asker.Tab is not null)
        {
            lock (guard)
            {
                latest.TryGetValue(asker, out earlier);
                latest[asker] = turn;
            }
        }

        earlier?.End();
        return turn;
    }

    private void GiveBack(Turn turn)
    {
        lock (guard)
        {
            if (latest.TryGetValue(turn.Asker, out var current) && ReferenceEquals(current, turn))
            {
                latest.Remove(turn.Asker);
            }
        }
    }

    /// <summary>One request's turn.</summary>
    internal sealed class Turn(TabTurns owner, Asker asker) : IDisposable
    {
        private readonly CancellationTokenSource ended = new();
        private readonly Lock guard = new();
        private bool isOver;

        /// <summary>Who has it.</summary>
        public Asker Asker => asker;

        /// <summary>Set when a later request stands for this one.</summary>
        public CancellationToken Token => ended.Token;

        /// <summary>Ends it.</summary>
        public void End()
        {
            lock (guard)
            {
                if (!isOver)
                {
                    ended.Cancel();
                }
            }
        }

        /// <inheritdoc/>
        public void Dispose()
        {
            owner.GiveBack(this);
            lock (guard)
            {
                isOver = true;
                ended.Dispose();
            }
        }
    }
}
