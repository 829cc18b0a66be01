namespace ShowSafety.Brief.Typesetting;

/// <summary>
/// The smallest thing the paginator moves: one line of a paragraph, one row of a table, one figure. Its items are
/// placed from the left edge of the page and from the top of the slice, in reading order.
/// </summary>
internal sealed record Slice(double HeightMillimetres, IReadOnlyList<PageItem> Items)
{
    /// <summary>White above it, left out at the head of a page.</summary>
    public double SpaceBefore { get; init; }

    /// <summary>No page may end after this slice, as long as what is held together fits on one page.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>What is set again at the head of a page that begins with this slice: the head of a table.</summary>
    public Slice? Repeated { get; init; }

    /// <summary>The slice begins a page whatever room there is.</summary>
    public bool StartsPage { get; init; }
}
