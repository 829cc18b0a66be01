using ShowSafety.Brief.Drawing;

namespace ShowSafety.Brief.Documents;

/// <summary>
/// The site plan for A4 sheets, upright or across, whichever shows it larger; details and legends stand below it.
/// </summary>
internal static class SitePlanSheet
{
    // A4 (ISO 216:2007) less a margin of 15 mm all round.
    private const double LongMillimetres = 267;
    private const double ShortMillimetres = 180;

    private const double GapMillimetres = 8;

    public static PaperPicture Of(IReadOnlyList<ScaleDrawing> drawings)
    {
        PaperPicture upright = DrawingSheet.Compose(drawings[0], ShortMillimetres, LongMillimetres);
        PaperPicture across = DrawingSheet.Compose(drawings[0], LongMillimetres, ShortMillimetres);
        PaperPicture whole = across.Frame.Scale.Denominator < upright.Frame.Scale.Denominator ? across : upright;
        return PictureStack.Of(
            [
                whole,
                .. drawings
                    .Skip(1)
                    .Select(d => DrawingSheet.Compose(d, whole.WidthMillimetres, whole.WidthMillimetres)),
            ],
            GapMillimetres
        );
    }
}
