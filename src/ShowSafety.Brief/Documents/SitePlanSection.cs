using ShowSafety.Brief.Drawing;
using ShowSafety.Brief.Typesetting;

namespace ShowSafety.Brief.Documents;

/// <summary>The site plan on a page of its own, to a stated scale.</summary>
internal static class SitePlanSection
{
    // A page less its heading and the caption.
    private const double HeightMillimetres = 218;

    public static IEnumerable<Block> Compose(BriefInput input)
    {
        PaperPicture picture = DrawingSheet.Compose(
            SitePlanDrawing.Of(input),
            Paper.BodyWidthMillimetres,
            HeightMillimetres
        );
        yield return new PageBreak();
        yield return Sections.Head(BriefLabels.SitePlanSection);
        yield return new Illustration(
            picture,
            picture.Description,
            $"Scale {picture.Frame.Scale} when printed at full size on A4: measure the scale bar before trusting it. "
                + "Zones are drawn uncut; what lies beyond the edge of the site is part of them."
        );
    }
}
