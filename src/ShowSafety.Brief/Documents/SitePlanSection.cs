using ShowSafety.Brief.Drawing;
using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Documents;

/// <summary>The site plan on a page of its own, to a stated scale.</summary>
internal static class SitePlanSection
{
    // A page less its heading and the caption.
    private const double TallestMillimetres = 222;

    // Lower, so that the notes below it stay on its page.
    private const double TallestDetailMillimetres = 195;
    private const double TallestLegendMillimetres = 40;

    public static IEnumerable<Block> Compose(BriefInput input)
    {
        IReadOnlyList<ScaleDrawing> drawings = SitePlanDrawing.Of(input);
        IEnumerable<Block> whole = Blocks(drawings[0], BriefLabels.WholeSite, TallestMillimetres);
        IEnumerable<Block> details = drawings
            .Skip(1)
            .Select(detail => new KeepTogether([.. Blocks(detail, detail.Title, TallestDetailMillimetres)]));
        return [new PageBreak(), Sections.Head(BriefLabels.SitePlanSection), .. whole, .. details];
    }

    private static IEnumerable<Block> Blocks(ScaleDrawing drawing, string title, double tallestMillimetres)
    {
        SheetParts parts = DrawingSheet.Parts(drawing, Paper.BodyWidthMillimetres, tallestMillimetres);
        string scale = $"Scale {parts.Map.Frame.Scale} when printed at full size on A4; measure the scale bar first.";
        yield return new Illustration(parts.Map, parts.Map.Description, $"{title}. {scale} {BriefLabels.Uncut}");
        foreach (PaperPicture legend in parts.LegendPictures(TallestLegendMillimetres))
        {
            yield return new Illustration(legend, legend.Description);
        }
    }
}
