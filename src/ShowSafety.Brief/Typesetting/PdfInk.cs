using PdfSharp.Drawing;

namespace ShowSafety.Brief.Typesetting;

/// <summary>Millimetres and greys in the PDF library's own terms.</summary>
internal static class PdfInk
{
    public static XPoint Point(double xMillimetres, double yMillimetres) =>
        new(Paper.ToPoints(xMillimetres), Paper.ToPoints(yMillimetres));

    public static XRect Rect(double x, double y, double width, double height) =>
        new(Paper.ToPoints(x), Paper.ToPoints(y), Paper.ToPoints(width), Paper.ToPoints(height));

    public static XBrush Brush(double grey) => new XSolidBrush(Colour(grey));

    public static XPen Pen(double widthMillimetres, double grey) => new(Colour(grey), Paper.ToPoints(widthMillimetres));

    private static XColor Colour(double grey) => XColor.FromGrayScale(grey);
}
