using NetTopologySuite.Geometries;
using NetTopologySuite.Simplify;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound;

/// <summary>
/// Finds the area where a value that falls away from the engines is at or above a threshold. A window is widened until
/// its edge is below; a coarse grid is sampled; cells that the boundary may cross, their neighbours and those about an
/// engine are sampled four times finer; the boundary is traced between samples, holes are filled, what rays from each
/// engine find is added, and the whole is widened by more than half a fine cell, so that what pokes out between samples
/// lies inside. A margin is the value less the threshold: zero or more is inside.
/// </summary>
internal sealed class ContourTracer
{
    private const int CoarseCells = 56;
    private const int FinePerCoarse = 4;
    private const int FineCells = CoarseCells * FinePerCoarse;
    private const int EdgeSamples = 180;
    private const double FirstPadMetres = 4;
    private const double LargestPadMetres = 20_000;

    // Shares of a fine cell: corners may be cut by the first, the second makes good for it and for what lies between.
    private const double SimplifiedBy = 0.1;
    private const double WidenedBy = 0.7;

    private readonly PlanPoint[] _seeds;
    private readonly (PlanPoint Place, double HeadingDegrees)[] _engines;

    public ContourTracer((PlanPoint Place, double HeadingDegrees)[] engines, ValueList<PlanPoint> outline)
    {
        _engines = engines;
        PlanPoint[] finite = [.. engines.Select(e => e.Place)];
        PlanPoint[] around = finite.Length > 0 ? finite : [.. outline.Where(IsFinite)];
        _seeds = around.Length > 0 ? around : [default];
    }

    /// <summary>The area; valid, possibly empty.</summary>
    public Geometry AreaAtOrAbove(Func<PlanPoint, double> valueAt, double threshold)
    {
        double Margin(PlanPoint place) => valueAt(place) - threshold;
        (PlanPoint corner, double size) = Window(place => Margin(place) >= 0);
        if (size > LargestPadMetres)
        {
            return Square(corner, size);
        }

        MarginGrid margins = Sample(Margin, corner, size);
        double cell = size / FineCells;
        Geometry traced = SiteGeometry.Union([
            new LoopTracer(margins, corner, cell, Margin).Union(),
            .. _engines.Select(e => new StarTracer(e.Place, e.HeadingDegrees, 2 * size).Area(Margin)),
        ]);
        return traced.IsEmpty
            ? SiteGeometry.Empty
            : SiteGeometry.Widened(DouglasPeuckerSimplifier.Simplify(traced, SimplifiedBy * cell), WidenedBy * cell);
    }

    private (PlanPoint Corner, double Size) Window(Func<PlanPoint, bool> isIn)
    {
        double left = _seeds.Min(p => p.XMetres);
        double low = _seeds.Min(p => p.YMetres);
        double span = Math.Max(_seeds.Max(p => p.XMetres) - left, _seeds.Max(p => p.YMetres) - low);
        double pad = FirstPadMetres;
        while (true)
        {
            var corner = new PlanPoint(left - pad, low - pad);
            double size = span + (2 * pad);
            if (pad > LargestPadMetres || !EdgePoints(corner, size).Any(isIn))
            {
                // A ring of coarse cells more, so that the outermost samples are surely below.
                double margin = size / CoarseCells;
                return (new(corner.XMetres - margin, corner.YMetres - margin), size + (2 * margin));
            }

            pad *= 1.5;
        }
    }

    private static IEnumerable<PlanPoint> EdgePoints(PlanPoint corner, double size)
    {
        for (int i = 0; i <= EdgeSamples / 4; i++)
        {
            double along = size * i * 4 / EdgeSamples;
            yield return new(corner.XMetres + along, corner.YMetres);
            yield return new(corner.XMetres + along, corner.YMetres + size);
            yield return new(corner.XMetres, corner.YMetres + along);
            yield return new(corner.XMetres + size, corner.YMetres + along);
        }
    }

    // Nodes of the fine grid; the outermost ring stays out, so that every boundary closes.
    private MarginGrid Sample(Func<PlanPoint, double> marginAt, PlanPoint corner, double size)
    {
        double cell = size / FineCells;
        PlanPoint Node(double i, double j) => new(corner.XMetres + (i * cell), corner.YMetres + (j * cell));
        var coarse = new MarginGrid(CoarseCells + 1, 0);
        Parallel.For(
            0,
            CoarseCells + 1,
            i =>
            {
                for (int j = 0; j <= CoarseCells; j++)
                {
                    coarse[i, j] = marginAt(Node(i * FinePerCoarse, j * FinePerCoarse));
                }
            }
        );

        double Centre(int i, int j) => marginAt(Node((i + 0.5) * FinePerCoarse, (j + 0.5) * FinePerCoarse));
        BoolGrid refine = Refined(coarse, Centre, corner, size);
        return Fine(coarse, refine, (i, j) => marginAt(Node(i, j)));
    }

    private static MarginGrid Fine(MarginGrid coarse, BoolGrid refine, Func<int, int, double> marginAt)
    {
        var fine = new MarginGrid(FineCells + 1, MarginGrid.OutsideUnknown);
        Parallel.For(
            1,
            FineCells,
            i =>
            {
                int ci = i / FinePerCoarse;
                for (int j = 1; j < FineCells; j++)
                {
                    int cj = j / FinePerCoarse;
                    bool even = i % 2 == 0 && j % 2 == 0;
                    fine[i, j] =
                        refine[ci, cj] && even ? marginAt(i, j)
                        : coarse.IsIn(ci, cj) ? MarginGrid.InsideUnknown
                        : MarginGrid.OutsideUnknown;
                }
            }
        );
        fine.FillOdd((i, j) => i > 0 && j > 0 && refine[i / FinePerCoarse, j / FinePerCoarse], marginAt);
        return fine;
    }

    // Cells the boundary may cross and their neighbours, save those where the level is far from the threshold.
    private BoolGrid Refined(MarginGrid coarse, Func<int, int, double> centre, PlanPoint corner, double size)
    {
        BoolGrid mixed = Mixed(coarse, centre).Dilated();
        for (int i = 0; i < CoarseCells; i++)
        {
            for (int j = 0; j < CoarseCells; j++)
            {
                mixed[i, j] = mixed[i, j] && !coarse.IsFarFromZero(i, j);
            }
        }

        var near = new BoolGrid(CoarseCells);
        foreach (PlanPoint seed in _seeds)
        {
            int i = (int)((seed.XMetres - corner.XMetres) / size * CoarseCells);
            int j = (int)((seed.YMetres - corner.YMetres) / size * CoarseCells);
            near[Math.Clamp(i, 0, CoarseCells - 1), Math.Clamp(j, 0, CoarseCells - 1)] = true;
        }

        return mixed.Or(near.Dilated());
    }

    private static BoolGrid Mixed(MarginGrid coarse, Func<int, int, double> centre)
    {
        var mixed = new BoolGrid(CoarseCells);
        Parallel.For(
            0,
            CoarseCells,
            i =>
            {
                for (int j = 0; j < CoarseCells; j++)
                {
                    mixed[i, j] =
                        !coarse.IsFarFromZero(i, j) && (coarse.IsMixed(i, j) || centre(i, j) >= 0 != coarse.IsIn(i, j));
                }
            }
        );

        return mixed;
    }

    private static Polygon Square(PlanPoint corner, double size) =>
        SiteGeometry.Polygon([
            corner,
            new(corner.XMetres + size, corner.YMetres),
            new(corner.XMetres + size, corner.YMetres + size),
            new(corner.XMetres, corner.YMetres + size),
        ]);

    private static bool IsFinite(PlanPoint place) => double.IsFinite(place.XMetres) && double.IsFinite(place.YMetres);
}
