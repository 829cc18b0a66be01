namespace ShowSafety.Brief.Typesetting;

/// <summary>A page as laid out: its items in reading order, placed from the top left of the sheet in millimetres.</summary>
internal sealed record LaidOutPage(IReadOnlyList<PageItem> Items);

/// <summary>
/// Puts slices on pages from the top. Slices that are kept with their next form a group; a group that does not fit in
/// the room left goes to a new page, and only one higher than a whole page is broken, at the last slice that fits.
/// </summary>
internal sealed class Paginator
{
    private const double SlackMillimetres = 1e-6;

    private readonly List<LaidOutPage> pages = [];
    private List<PageItem> items = [];
    private readonly double topMillimetres;
    private readonly double bottomMillimetres;
    private double y;
    private bool pageIsEmpty = true;

    public Paginator(double topMillimetres, double bottomMillimetres)
    {
        this.topMillimetres = topMillimetres;
        this.bottomMillimetres = bottomMillimetres;
        y = topMillimetres;
    }

    public static IReadOnlyList<LaidOutPage> Paginate(IEnumerable<Slice> slices) =>
        new Paginator(Paper.BodyTopMillimetres, Paper.BodyBottomMillimetres).Run(slices);

    public IReadOnlyList<LaidOutPage> Run(IEnumerable<Slice> slices)
    {
        var group = new List<Slice>();
        foreach (Slice slice in slices)
        {
            if (slice.StartsPage)
            {
                Place(group);
                EndPage();
            }

            group.Add(slice);
            if (!slice.KeepWithNext)
            {
                Place(group);
            }
        }

        Place(group);
        if (items.Count > 0 || pages.Count == 0)
        {
            EndPage(true);
        }

        return pages;
    }

    private void Place(List<Slice> group)
    {
        if (group.Count > 0 && !pageIsEmpty && !Fits(group))
        {
            EndPage();
        }

        foreach (Slice slice in group)
        {
            if (!pageIsEmpty && y + slice.SpaceBefore + slice.HeightMillimetres > bottomMillimetres + SlackMillimetres)
            {
                EndPage();
            }

            Put(slice);
        }

        group.Clear();
    }

    private bool Fits(List<Slice> group) =>
        y + group.Sum(s => s.SpaceBefore + s.HeightMillimetres) <= bottomMillimetres + SlackMillimetres;

    private void Put(Slice slice)
    {
        if (pageIsEmpty && slice.Repeated is { } head)
        {
            Add(head.Items, head.HeightMillimetres);
        }
        else if (!pageIsEmpty)
        {
            y += slice.SpaceBefore;
        }

        Add(slice.Items, slice.HeightMillimetres);
        pageIsEmpty = pageIsEmpty && slice.HeightMillimetres == 0;
    }

    private void Add(IReadOnlyList<PageItem> more, double height)
    {
        items.AddRange(more.Select(item => item.Lowered(y)));
        y += height;
    }

    private void EndPage(bool evenEmpty = false)
    {
        if (pageIsEmpty && !evenEmpty)
        {
            return;
        }

        pages.Add(new LaidOutPage(items));
        items = [];
        y = topMillimetres;
        pageIsEmpty = true;
    }
}
