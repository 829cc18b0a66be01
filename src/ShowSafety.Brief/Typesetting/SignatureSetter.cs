using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Typesetting;

/// <summary>Sets lines to sign on: a role, and beside it a ruled space for each field with its name below.</summary>
internal static class SignatureSetter
{
    private const double RoleShare = 0.28;
    private const double LineAt = 11;
    private const double Between = 4;
    private const double UnderLine = 0.7;

    public static List<Slice> Set(SignatureLines lines, double left, double width) =>
        [.. lines.Roles.Select((role, index) => Row(role, lines.Fields, left, width, index))];

    private static Slice Row(string role, ValueList<string> fields, double left, double width, int index)
    {
        double roleWidth = width * RoleShare;
        double fieldWidth = (width - roleWidth - (Between * fields.Count)) / fields.Count;
        IReadOnlyList<SetLine> roleLines = LineBreaker.Break(role, TextStyles.CellHead, roleWidth);
        double bottom = Math.Max(LineAt, roleLines.Count * TextStyles.CellHead.LeadingMillimetres);
        var items = new List<PageItem>();
        for (int i = 0; i < fields.Count; i++)
        {
            double x = FieldLeft(i);
            items.Add(new RuleItem(x, bottom, x + fieldWidth, bottom, 0.25));
        }

        items.Add(new OpenTag(Tag.Paragraph));
        for (int i = 0; i < roleLines.Count; i++)
        {
            double top = bottom - ((roleLines.Count - i) * TextStyles.CellHead.LeadingMillimetres);
            items.AddRange(TextSetter.Items(roleLines[i], TextStyles.CellHead, left, top));
        }

        for (int i = 0; i < fields.Count; i++)
        {
            string field = TextMeasure.Fitted(fields[i], TextStyles.Furniture, fieldWidth);
            items.Add(
                new TextItem(
                    FieldLeft(i),
                    bottom + UnderLine + TextStyles.Furniture.BaselineMillimetres,
                    field,
                    TextStyles.Furniture
                )
            );
        }

        items.Add(new CloseTag());
        return new Slice(bottom + UnderLine + TextStyles.Furniture.LeadingMillimetres, items)
        {
            SpaceBefore = index == 0 ? 3 : 4,
        };

        double FieldLeft(int i) => left + roleWidth + Between + (i * (fieldWidth + Between));
    }
}
