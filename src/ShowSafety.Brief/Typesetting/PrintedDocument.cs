namespace ShowSafety.Brief.Typesetting;

/// <summary>A whole document before it is laid out: what it is, what stands on every page, and its blocks.</summary>
internal sealed record PrintedDocument(
    string Title,
    string Subject,
    DateTimeOffset PreparedOn,
    PageFurniture Furniture,
    IReadOnlyList<Block> Blocks
)
{
    /// <summary>The language of the text, as in IETF BCP 47.</summary>
    public string Language { get; init; } = "en-GB";

    /// <summary>The pages with everything on them, header and footer first.</summary>
    public IReadOnlyList<LaidOutPage> LayOut()
    {
        IReadOnlyList<LaidOutPage> pages = Paginator.Paginate(BlockSetter.ForBody.Set(Blocks));
        return
        [
            .. pages.Select(
                (page, index) => new LaidOutPage([.. Furniture.Items(index + 1, pages.Count), .. page.Items])
            ),
        ];
    }
}
