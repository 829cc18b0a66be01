using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Drawing;

/// <summary>A label in its place: its lines, the box they take, and where its leader starts, if it needs one.</summary>
internal sealed record PlacedLabel(Label Label, ValueList<PaperText> Lines, PaperBox Box, PaperPoint? LeaderFrom);

/// <summary>
/// Places labels greedily: by rank, each takes the first of its candidate places, near before far and right before
/// left, that stays in the window and off everything placed before. Those beyond arm's length get a leader line.
/// </summary>
internal sealed class LabelPlacer
{
    public const double WidestMillimetres = 44;

    private const double PadMillimetres = 0.5;
    private const double NearestMillimetres = 1.6;
    private const double LeaderFromMillimetres = 3;

    private static readonly double[] Distances = [NearestMillimetres, 3.5, 6, 10, 15, 21, 28];

    private static readonly (double X, double Y)[] Directions =
    [
        (1, 0),
        (-1, 0),
        (0, -1),
        (0, 1),
        (1, -1),
        (-1, -1),
        (1, 1),
        (-1, 1),
    ];

    private readonly PaperBox window;
    private readonly List<PaperBox> taken;
    private readonly int fixedObstacles;
    private readonly List<(PaperPoint From, PaperPoint To)> leaders = [];

    public LabelPlacer(PaperBox window, IEnumerable<PaperBox> obstacles)
    {
        this.window = window;
        taken = [.. obstacles];
        fixedObstacles = taken.Count;
    }

    /// <summary>The label in its place, or null where no place is free.</summary>
    public PlacedLabel? Place(Label label, PaperPoint anchor)
    {
        TextStyle style = label.Strong ? TextStyles.DrawingStrong : TextStyles.DrawingLabel;
        IReadOnlyList<SetLine> lines = LineBreaker.Break(label.Text, style, WidestMillimetres);
        double width = lines.Max(line => line.WidthMillimetres) + (2 * PadMillimetres);
        double height = (lines.Count * style.LeadingMillimetres) + (2 * PadMillimetres);
        foreach ((PaperBox box, bool needsLeader) in Candidates(label, anchor, width, height))
        {
            if (window.Holds(box) && IsFree(box) && (!needsLeader || IsFree(anchor, box.Nearest(anchor))))
            {
                taken.Add(box);
                if (needsLeader)
                {
                    leaders.Add((anchor, box.Nearest(anchor)));
                }

                return new(label, Set(lines, style, box), box, needsLeader ? anchor : null);
            }
        }

        return null;
    }

    /// <summary>The label at its point come what may: for the numbers that stand in for labels without room.</summary>
    public PlacedLabel Force(Label label, PaperPoint anchor)
    {
        if (Place(label, anchor) is { } placed)
        {
            return placed;
        }

        TextStyle style = TextStyles.DrawingStrong;
        IReadOnlyList<SetLine> lines = LineBreaker.Break(label.Text, style, WidestMillimetres);
        double width = lines.Max(line => line.WidthMillimetres) + (2 * PadMillimetres);
        double height = (lines.Count * style.LeadingMillimetres) + (2 * PadMillimetres);
        double left = Math.Clamp(anchor.X - (width / 2), window.Left, Math.Max(window.Left, window.Right - width));
        double top = Math.Clamp(anchor.Y - (height / 2), window.Top, Math.Max(window.Top, window.Bottom - height));
        var box = new PaperBox(left, top, width, height);
        taken.Add(box);
        return new(label, Set(lines, style, box), box, null);
    }

    private static IEnumerable<(PaperBox Box, bool NeedsLeader)> Candidates(
        Label label,
        PaperPoint anchor,
        double width,
        double height
    )
    {
        if (label.Centred)
        {
            yield return (new(anchor.X - (width / 2), anchor.Y - (height / 2), width, height), false);
        }

        foreach (double distance in Distances)
        {
            foreach ((double x, double y) in Directions)
            {
                yield return (BoxAt(anchor, x, y, distance, width, height), distance > LeaderFromMillimetres);
            }
        }
    }

    private bool IsFree(PaperBox box) =>
        !taken.Exists(box.Overlaps) && !leaders.Exists(leader => box.IsCrossedBy(leader.From, leader.To));

    /// <summary>A leader may pass a marker, never through another label.</summary>
    private bool IsFree(PaperPoint from, PaperPoint to) =>
        !taken.Skip(fixedObstacles).Any(b => b.IsCrossedBy(from, to));

    private static PaperBox BoxAt(PaperPoint anchor, double x, double y, double distance, double width, double height)
    {
        double left = anchor.X - (width / 2) + (x * ((width / 2) + distance));
        double top = anchor.Y - (height / 2) + (y * ((height / 2) + distance));
        return new(left, top, width, height);
    }

    private static ValueList<PaperText> Set(IReadOnlyList<SetLine> lines, TextStyle style, PaperBox box) =>
        lines
            .Select(
                (line, index) =>
                    new PaperText(
                        new(
                            box.Left + PadMillimetres,
                            box.Top + PadMillimetres + (index * style.LeadingMillimetres) + style.BaselineMillimetres
                        ),
                        line.Text.TrimEnd(),
                        style
                    )
            )
            .ToValueList();
}
