using System.Globalization;

namespace ShowSafety.Brief.Typesetting;

/// <summary>
/// What stands on every page: at the head what and when, and the marks (white on black) that hold for the whole
/// document; at the foot which version, and "page N of M".
/// </summary>
internal sealed record PageFurniture(string HeadLeft, string HeadRight, string FootLeft, IReadOnlyList<string> Marks)
{
    private const double HeadBaseline = 14;
    private const double HeadRule = 17;
    private const double MarkTop = 18.4;
    private const double FootRule = 282;
    private const double FootBaseline = 286.5;

    public IReadOnlyList<PageItem> Items(int page, int pages)
    {
        var items = new List<PageItem>();
        double left = Paper.SideMillimetres;
        double right = Paper.WidthMillimetres - Paper.SideMillimetres;
        string count = string.Create(CultureInfo.InvariantCulture, $"page {page} of {pages}");
        Pair(items, HeadLeft, HeadRight, HeadBaseline, TextStyles.Furniture.With(Face.Semibold));
        items.Add(new RuleItem(left, HeadRule, right, HeadRule, 0.25));
        AddMarks(items, left);
        items.Add(new RuleItem(left, FootRule, right, FootRule, 0.25));
        Pair(items, FootLeft, count, FootBaseline, TextStyles.Furniture);
        return items;
    }

    private static void Pair(List<PageItem> items, string leftText, string rightText, double baseline, TextStyle style)
    {
        double half = Paper.BodyWidthMillimetres * 0.4;
        string atRight = TextMeasure.Fitted(rightText, style, half);
        double rightWidth = TextMeasure.WidthMillimetres(atRight, style);
        double room = Paper.BodyWidthMillimetres - rightWidth - 6;
        double x = Paper.WidthMillimetres - Paper.SideMillimetres - rightWidth;
        items.Add(
            new TextItem(Paper.SideMillimetres, baseline, TextMeasure.Fitted(leftText, style, room), style, true)
        );
        items.Add(new TextItem(x, baseline, atRight, style, true));
    }

    private void AddMarks(List<PageItem> items, double left)
    {
        TextStyle style = TextStyles.FurnitureMark with { Grey = 1 };
        double x = left;
        foreach (string mark in Marks)
        {
            double width = TextMeasure.WidthMillimetres(mark, style);
            items.Add(new BoxItem(x, MarkTop, width + 4, 5.4, 0, null));
            items.Add(new TextItem(x + 2, MarkTop + 2.7 + (style.CapitalMillimetres / 2), mark, style, true));
            x += width + 4 + 3;
        }
    }
}
