using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;
using PdfSharp.UniversalAccessibility;

namespace ShowSafety.Brief.Typesetting;

/// <summary>
/// Writes a document as tagged PDF. Dates come from the document and identifiers from the contents, so that the same
/// document gives the same file. No PDF/UA identifier is written: no checker has confirmed that it would be true.
/// </summary>
internal static class PdfDocumentWriter
{
    public static void Write(PrintedDocument document, Stream stream)
    {
        IReadOnlyList<LaidOutPage> pages = document.LayOut();
        using var pdf = new PdfDocument();
        // Compressed streams, of pages and of fonts, come out cut short, which strict readers report as damage.
        pdf.Options.CompressContentStreams = false;
        pdf.Options.NoCompression = true;
        pdf.ViewerPreferences.DisplayDocTitle = true;
        pdf.Info.Title = document.Title;
        pdf.Info.Subject = document.Subject;
        pdf.Info.Creator = "ShowSafety";
        pdf.Info.CreationDate = document.PreparedOn.DateTime;
        pdf.Info.ModificationDate = document.PreparedOn.DateTime;
        UAManager.ForDocument(pdf).SetDocumentLanguage(document.Language);
        new PdfPainter(pdf).Paint(pages);
        AddHeadScopes(pdf);
        using var written = new MemoryStream();
        pdf.Save(written, false);
        stream.Write(PdfPinning.Pin(written.ToArray()));
    }

    /// <summary>A header cell says whether it heads its column or its row (ISO 32000-1:2008, table 349).</summary>
    private static void AddHeadScopes(PdfDocument pdf)
    {
        foreach (PdfDictionary row in Structure(pdf, "/TR"))
        {
            List<PdfDictionary> cells = [.. Kids(row)];
            bool heads = cells.TrueForAll(cell => cell.Elements.GetName("/S") == "/TH");
            foreach (PdfDictionary cell in cells.Where(cell => cell.Elements.GetName("/S") == "/TH"))
            {
                // A cell over several columns has its attributes already.
                PdfDictionary attributes = Resolved(cell.Elements["/A"]) as PdfDictionary ?? new PdfDictionary(pdf);
                attributes.Elements.SetName("/O", "/Table");
                attributes.Elements.SetName("/Scope", heads ? "/Column" : "/Row");
                cell.Elements["/A"] = attributes;
            }
        }
    }

    private static List<PdfDictionary> Structure(PdfDocument pdf, string type) =>
        [
            .. pdf
                .Internals.GetAllObjects()
                .OfType<PdfDictionary>()
                .Where(o => o.Elements.GetName("/S") == type && o.Elements.ContainsKey("/P")),
        ];

    private static IEnumerable<PdfDictionary> Kids(PdfDictionary element) =>
        element.Elements["/K"] switch
        {
            PdfArray array => array.Elements.Select(Resolved).OfType<PdfDictionary>(),
            PdfItem item when Resolved(item) is PdfDictionary one => [one],
            _ => [],
        };

    private static PdfItem? Resolved(PdfItem? item) => item is PdfReference reference ? reference.Value : item;
}
