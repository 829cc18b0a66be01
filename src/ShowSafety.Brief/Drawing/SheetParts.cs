using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>A map on paper, and its legend, notes for labels without room included.</summary>
internal sealed record SheetParts(PaperPicture Map, ValueList<LegendEntry> Legend)
{
    /// <summary>The legend as pictures as wide as the map, none higher than so much.</summary>
    public IReadOnlyList<PaperPicture> LegendPictures(double tallestMillimetres)
    {
        var pictures = new List<PaperPicture>();
        var rest = new Queue<LegendEntry>(Legend);
        while (rest.Count > 0)
        {
            var entries = new List<LegendEntry> { rest.Dequeue() };
            while (rest.Count > 0 && Block([.. entries, rest.Peek()]).HeightMillimetres <= tallestMillimetres)
            {
                entries.Add(rest.Dequeue());
            }

            pictures.Add(Picture(Block(entries), entries));
        }

        return pictures;
    }

    private LegendBlock Block(IEnumerable<LegendEntry> entries) => new(entries, Map.WidthMillimetres);

    private PaperPicture Picture(LegendBlock block, List<LegendEntry> entries) =>
        new(
            "Legend",
            "Legend: " + string.Join("; ", entries.Select(entry => entry.Text)) + ".",
            Map.WidthMillimetres,
            block.HeightMillimetres,
            Map.Frame,
            [new PaperLayer("legend", block.Draw(new(0, 0)).ToValueList())]
        );
}
