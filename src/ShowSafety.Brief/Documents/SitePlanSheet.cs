using ShowSafety.Brief.Drawing;

namespace ShowSafety.Brief.Documents;

/// <summary>The site plan on one A4 sheet of its own, upright or across, whichever shows it larger.</summary>
internal static class SitePlanSheet
{
    // A4 (ISO 216:2007) less a margin of 15 mm all round.
    private const double LongMillimetres = 267;
    private const double ShortMillimetres = 180;

    public static PaperPicture Of(ScaleDrawing drawing)
    {
        PaperPicture upright = DrawingSheet.Compose(drawing, ShortMillimetres, LongMillimetres);
        PaperPicture across = DrawingSheet.Compose(drawing, LongMillimetres, ShortMillimetres);
        return across.Frame.Scale.Denominator < upright.Frame.Scale.Denominator ? across : upright;
    }
}
