using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using ShowSafety.Brief.Drawing;

namespace ShowSafety.Brief.Typesetting;

/// <summary>Paints laid-out pages into a tagged PDF document. It decides nothing about places.</summary>
internal sealed class PdfPainter(PdfDocument document)
{
    private readonly StructureBuilder structure = UAManager.ForDocument(document).StructureBuilder;
    private readonly List<PdfOutline> outlines = [];

    public void Paint(IReadOnlyList<LaidOutPage> pages)
    {
        foreach (LaidOutPage laidOut in pages)
        {
            PdfPage page = document.AddPage();
            page.Width = XUnit.FromMillimeter(Paper.WidthMillimetres);
            page.Height = XUnit.FromMillimeter(Paper.HeightMillimetres);
            // Forms and links are walked through in the order of the structure.
            page.Elements.SetName("/Tabs", "/S");
            using XGraphics graphics = XGraphics.FromPdfPage(page);
            foreach (PageItem item in laidOut.Items)
            {
                Paint(graphics, page, item);
            }
        }
    }

    private void Paint(XGraphics graphics, PdfPage page, PageItem item)
    {
        switch (item)
        {
            case OpenTag open:
                structure.BeginElement(PdfTags.Of(open.Tag));
                if (open.Columns > 1)
                {
                    structure.SetColSpan(open.Columns);
                }

                break;
            case CloseTag:
                structure.End();
                break;
            case OutlineEntry entry:
                AddOutline(page, entry);
                break;
            case TextItem { Artifact: true } text:
                Artifact(() => Paint(graphics, text));
                break;
            case TextItem text:
                Paint(graphics, text);
                break;
            case RuleItem rule:
                Artifact(() =>
                    graphics.DrawLine(
                        PdfInk.Pen(rule.WidthMillimetres, rule.Grey),
                        PdfInk.Point(rule.X1, rule.Y1),
                        PdfInk.Point(rule.X2, rule.Y2)
                    )
                );
                break;
            case BoxItem box:
                Artifact(() => Paint(graphics, box));
                break;
            case FigureItem figure:
                PaintFigure(graphics, figure);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(item), item, "Nothing paints this item.");
        }
    }

    private static void Paint(XGraphics graphics, TextItem text) =>
        graphics.DrawString(
            text.Text,
            Typeface.Font(text.Style),
            PdfInk.Brush(text.Style.Grey),
            PdfInk.Point(text.X, text.Baseline)
        );

    private static void Paint(XGraphics graphics, BoxItem box)
    {
        XRect rect = PdfInk.Rect(box.X, box.Y, box.Width, box.Height);
        if (box.FillGrey is { } grey)
        {
            graphics.DrawRectangle(PdfInk.Brush(grey), rect);
        }

        if (box.Outline is { } width)
        {
            graphics.DrawRectangle(PdfInk.Pen(width, 0), rect);
        }
    }

    private void PaintFigure(XGraphics graphics, FigureItem figure)
    {
        XRect place = PdfInk.Rect(
            figure.X,
            figure.Y,
            figure.Picture.WidthMillimetres,
            figure.Picture.HeightMillimetres
        );
        structure.BeginElement(PdfIllustrationElementTag.Figure, figure.AltText, place);
        PdfDrawingRenderer.Render(figure.Picture, graphics, figure.X, figure.Y);
        structure.End();
    }

    private void Artifact(Action paint)
    {
        structure.BeginArtifact();
        paint();
        structure.End();
    }

    private void AddOutline(PdfPage page, OutlineEntry entry)
    {
        // The outline nests by heading level; a level that skips one hangs below the last that exists.
        int depth = Math.Min(entry.Level - 1, outlines.Count);
        PdfOutlineCollection siblings = depth == 0 ? document.Outlines : outlines[depth - 1].Outlines;
        PdfOutline outline = siblings.Add(entry.Text, page, entry.Level == 1);
        outlines.RemoveRange(depth, outlines.Count - depth);
        outlines.Add(outline);
    }
}
