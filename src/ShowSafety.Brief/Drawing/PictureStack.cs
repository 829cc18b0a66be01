using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>Pictures one below the other as one picture, named and described after the first.</summary>
internal static class PictureStack
{
    public static PaperPicture Of(IReadOnlyList<PaperPicture> pictures, double gapMillimetres)
    {
        var layers = new List<PaperLayer>();
        double top = 0;
        foreach (PaperPicture picture in pictures)
        {
            double by = top;
            layers.AddRange(picture.Layers.Select(layer => Lowered(layer, by)));
            top += picture.HeightMillimetres + gapMillimetres;
        }

        return pictures[0] with
        {
            WidthMillimetres = pictures.Max(picture => picture.WidthMillimetres),
            HeightMillimetres = top - gapMillimetres,
            Layers = layers.ToValueList(),
        };
    }

    private static PaperLayer Lowered(PaperLayer layer, double by) =>
        layer with
        {
            Items = layer.Items.Select(item => Lowered(item, by)).ToValueList(),
            Clip = layer.Clip is { } clip ? clip with { Top = clip.Top + by } : null,
        };

    private static PaperItem Lowered(PaperItem item, double by) =>
        item switch
        {
            PaperPath path => path with
            {
                Rings = path.Rings.Select(ring => ring.Select(p => Lowered(p, by)).ToValueList()).ToValueList(),
            },
            PaperDisc disc => disc with { Centre = Lowered(disc.Centre, by) },
            PaperText text => text with { Start = Lowered(text.Start, by) },
            _ => throw new ArgumentOutOfRangeException(nameof(item), item, "Nothing moves this item."),
        };

    private static PaperPoint Lowered(PaperPoint point, double by) => point with { Y = point.Y + by };
}
