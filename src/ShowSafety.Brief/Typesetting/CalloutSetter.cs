namespace ShowSafety.Brief.Typesetting;

/// <summary>
/// Sets a callout: a frame with a heavy bar on its left. Reversed, its title is white on black: kept for the one
/// thing on a page that outranks everything else.
/// </summary>
internal static class CalloutSetter
{
    private const double Pad = 4;
    private const double Bar = 1.6;
    private const double Gap = 4;
    private static readonly double TallestWhole = Paper.BodyHeightMillimetres / 2;

    public static List<Slice> Set(Callout callout, double left, double width)
    {
        List<Slice> slices = [Title(callout, left, width)];
        foreach (RichText paragraph in callout.Paragraphs)
        {
            List<Slice> lines = TextSetter.Lines(
                paragraph,
                TextStyles.Body,
                Tag.Paragraph,
                left + Bar + Pad,
                width - Bar - (2 * Pad),
                0
            );
            // White inside a frame must be part of a slice, or a page would cut the frame open.
            lines[0] = Deepened(lines[0], 1.2);
            slices.AddRange(lines);
        }

        slices.Add(new Slice(2.4, []));
        return Framed(slices, left, width);
    }

    private static Slice Title(Callout callout, double left, double width)
    {
        TextStyle style = callout.Reversed ? new TextStyle(Face.Bold, 14, 18, 1) : TextStyles.Heading2;
        IReadOnlyList<SetLine> lines = LineBreaker.Break(callout.Title, style, width - Bar - (2 * Pad));
        double height = (lines.Count * style.LeadingMillimetres) + (callout.Reversed ? 4 : 2.4);
        List<PageItem> items = callout.Reversed ? [new BoxItem(left, 0, width, height, 0, null)] : [];
        items.Add(new OpenTag(Tag.Paragraph));
        for (int i = 0; i < lines.Count; i++)
        {
            items.AddRange(TextSetter.Items(lines[i], style, left + Bar + Pad, 2 + (i * style.LeadingMillimetres)));
        }

        items.Add(new CloseTag());
        return new Slice(height, items) { SpaceBefore = Gap };
    }

    private static Slice Deepened(Slice slice, double by) =>
        slice with
        {
            HeightMillimetres = slice.HeightMillimetres + by,
            Items = [.. slice.Items.Select(item => item.Lowered(by))],
        };

    /// <summary>A low frame stays whole; a high one is parted between lines, never right below its title.</summary>
    private static bool KeepsWithNext(List<Slice> slices, int index, bool whole)
    {
        bool nearAnEnd = index < 2 || index == slices.Count - 2;
        return index < slices.Count - 1 && (whole || nearAnEnd || slices[index].KeepWithNext);
    }

    private static List<Slice> Framed(List<Slice> slices, double left, double width)
    {
        bool whole = slices.Sum(slice => slice.HeightMillimetres) < TallestWhole;
        for (int i = 0; i < slices.Count; i++)
        {
            double height = slices[i].HeightMillimetres;
            var frame = new List<PageItem>
            {
                new BoxItem(left, 0, Bar, height, 0, null),
                new RuleItem(left + width, 0, left + width, height, 0.25),
            };
            if (i == 0)
            {
                frame.Add(new RuleItem(left, 0, left + width, 0, 0.25));
            }

            if (i == slices.Count - 1)
            {
                frame.Add(new RuleItem(left, height, left + width, height, 0.25));
            }

            slices[i] = slices[i] with
            {
                Items = [.. frame, .. slices[i].Items],
                KeepWithNext = KeepsWithNext(slices, i, whole),
            };
        }

        return slices;
    }
}
