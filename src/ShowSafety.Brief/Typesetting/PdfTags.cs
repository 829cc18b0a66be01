using PdfSharp.UniversalAccessibility;

namespace ShowSafety.Brief.Typesetting;

/// <summary>Our tags in the PDF library's terms.</summary>
internal static class PdfTags
{
    public static PdfBlockLevelElementTag Of(Tag tag) =>
        tag switch
        {
            Tag.Heading1 => PdfBlockLevelElementTag.Heading1,
            Tag.Heading2 => PdfBlockLevelElementTag.Heading2,
            Tag.Heading3 => PdfBlockLevelElementTag.Heading3,
            Tag.Paragraph => PdfBlockLevelElementTag.Paragraph,
            Tag.List => PdfBlockLevelElementTag.List,
            Tag.ListItem => PdfBlockLevelElementTag.ListItem,
            Tag.ListLabel => PdfBlockLevelElementTag.Label,
            Tag.ListBody => PdfBlockLevelElementTag.ListBody,
            Tag.Table => PdfBlockLevelElementTag.Table,
            Tag.TableRow => PdfBlockLevelElementTag.TableRow,
            Tag.TableHead => PdfBlockLevelElementTag.TableHeaderCell,
            Tag.TableCell => PdfBlockLevelElementTag.TableDataCell,
            _ => throw new ArgumentOutOfRangeException(nameof(tag), tag, "No structure type for this tag."),
        };
}
