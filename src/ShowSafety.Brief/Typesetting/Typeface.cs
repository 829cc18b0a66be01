using System.Collections.Concurrent;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace ShowSafety.Brief.Typesetting;

/// <summary>
/// The one typeface, Source Sans 3 (SIL Open Font License 1.1, the licence lies beside the fonts), handed to the PDF
/// library from the program itself: no machine needs it installed, and no machine's own fonts are ever used.
/// </summary>
internal sealed class Typeface : IFontResolver
{
    private const string Family = "Source Sans 3";

    private static readonly ConcurrentDictionary<(Face Face, double SizePoints), XFont> Fonts = new();

    private static readonly Lock Gate = new();

    private Typeface() { }

    /// <summary>The font for a style, ready to draw and to measure.</summary>
    public static XFont Font(TextStyle style) => Font(style.Face, style.SizePoints);

    public static XFont Font(Face face, double sizePoints)
    {
        Register();
        return Fonts.GetOrAdd(
            (face, sizePoints),
            key => new XFont(FamilyOf(key.Face), key.SizePoints, StyleOf(key.Face))
        );
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        (familyName, isBold, isItalic) switch
        {
            (Family + " Semibold", _, _) => new("SourceSans3-Semibold"),
            (Family, true, _) => new("SourceSans3-Bold"),
            (Family, _, true) => new("SourceSans3-It"),
            (Family, _, _) => new("SourceSans3-Regular"),
            _ => null,
        };

    public byte[]? GetFont(string faceName)
    {
        using Stream? stream = typeof(Typeface).Assembly.GetManifestResourceStream($"Typefaces/{faceName}.ttf");
        if (stream is null)
        {
            return null;
        }

        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static string FamilyOf(Face face) => face == Face.Semibold ? Family + " Semibold" : Family;

    private static XFontStyleEx StyleOf(Face face) =>
        face switch
        {
            Face.Bold => XFontStyleEx.Bold,
            Face.Italic => XFontStyleEx.Italic,
            _ => XFontStyleEx.Regular,
        };

    private static void Register()
    {
        if (GlobalFontSettings.FontResolver is not null)
        {
            return;
        }

        lock (Gate)
        {
            GlobalFontSettings.FontResolver ??= new Typeface();
        }
    }
}
