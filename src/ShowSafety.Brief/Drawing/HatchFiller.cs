namespace ShowSafety.Brief.Drawing;

/// <summary>A straight stroke of a hatch, in millimetres of paper.</summary>
internal readonly record struct HatchStroke(PaperPoint From, PaperPoint To);

/// <summary>
/// Cuts hatch lines and dots to an area. Case by case: a line crosses the rings an even number of times, and by the
/// even-odd rule the stretches between the first and second crossing, third and fourth, and so on lie inside. The
/// hatch hangs from the corner of the picture, so that areas side by side match.
/// </summary>
internal static class HatchFiller
{
    public static IReadOnlyList<HatchStroke> Strokes(
        IReadOnlyList<IReadOnlyList<PaperPoint>> rings,
        HatchLines lines,
        PaperBox within
    )
    {
        double radians = lines.AngleDegrees * Math.PI / 180;
        double alongX = Math.Cos(radians);
        double alongY = -Math.Sin(radians);
        (double lowest, double highest) = Reach(rings, within, p => Across(p, alongX, alongY));
        var strokes = new List<HatchStroke>();
        int first = (int)Math.Ceiling((lowest / lines.SpacingMillimetres) - 0.5);
        int last = (int)Math.Floor((highest / lines.SpacingMillimetres) - 0.5);
        for (int i = first; i <= last; i++)
        {
            double offset = (i + 0.5) * lines.SpacingMillimetres;
            List<double> crossings = Crossings(rings, offset, alongX, alongY);
            for (int c = 0; c + 1 < crossings.Count; c += 2)
            {
                strokes.Add(
                    new(At(crossings[c], offset, alongX, alongY), At(crossings[c + 1], offset, alongX, alongY))
                );
            }
        }

        return strokes;
    }

    /// <summary>The middles of the dots that lie inside.</summary>
    public static IReadOnlyList<PaperPoint> Dots(
        IReadOnlyList<IReadOnlyList<PaperPoint>> rings,
        HatchDots dots,
        PaperBox within
    )
    {
        var centres = new List<PaperPoint>();
        var rows = new HatchLines(0, dots.SpacingMillimetres, dots.DiameterMillimetres);
        foreach (HatchStroke row in Strokes(rings, rows, within))
        {
            double from = Math.Max(row.From.X, within.Left);
            double to = Math.Min(row.To.X, within.Right);
            for (
                int i = (int)Math.Ceiling((from / dots.SpacingMillimetres) - 0.5);
                (i + 0.5) * dots.SpacingMillimetres <= to;
                i++
            )
            {
                centres.Add(new((i + 0.5) * dots.SpacingMillimetres, row.From.Y));
            }
        }

        return centres;
    }

    private static (double Lowest, double Highest) Reach(
        IReadOnlyList<IReadOnlyList<PaperPoint>> rings,
        PaperBox within,
        Func<PaperPoint, double> across
    )
    {
        List<double> ofRings = [.. rings.SelectMany(ring => ring).Select(across)];
        double[] ofBox =
        [
            across(new(within.Left, within.Top)),
            across(new(within.Right, within.Top)),
            across(new(within.Left, within.Bottom)),
            across(new(within.Right, within.Bottom)),
        ];
        return ofRings.Count == 0
            ? (0, -1)
            : (Math.Max(ofRings.Min(), ofBox.Min()), Math.Min(ofRings.Max(), ofBox.Max()));
    }

    private static List<double> Crossings(
        IReadOnlyList<IReadOnlyList<PaperPoint>> rings,
        double offset,
        double alongX,
        double alongY
    )
    {
        var crossings = new List<double>();
        foreach (IReadOnlyList<PaperPoint> ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                PaperPoint from = ring[i];
                PaperPoint to = ring[(i + 1) % ring.Count];
                double before = Across(from, alongX, alongY) - offset;
                double after = Across(to, alongX, alongY) - offset;
                // Half-open, so that a line through a corner crosses once or twice, never in between.
                if (before <= 0 != after <= 0)
                {
                    double share = before / (before - after);
                    double a = Along(from, alongX, alongY);
                    crossings.Add(a + (share * (Along(to, alongX, alongY) - a)));
                }
            }
        }

        crossings.Sort();
        return crossings;
    }

    private static double Along(PaperPoint p, double alongX, double alongY) => (p.X * alongX) + (p.Y * alongY);

    private static double Across(PaperPoint p, double alongX, double alongY) => (p.Y * alongX) - (p.X * alongY);

    private static PaperPoint At(double along, double across, double alongX, double alongY) =>
        new((along * alongX) - (across * alongY), (along * alongY) + (across * alongX));
}
