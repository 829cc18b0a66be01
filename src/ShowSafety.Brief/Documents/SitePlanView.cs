using NetTopologySuite.Geometries;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>
/// One drawing of the site: the whole, or the surroundings of engines at a larger scale. What lies close to an engine
/// is named in the larger drawing alone; every name stands in exactly one of them.
/// </summary>
/// <param name="Extent">What is shown.</param>
/// <param name="Elsewhere">Parts of it that have a drawing of their own.</param>
/// <param name="IsDetail">Whether it is such a drawing.</param>
internal sealed record SitePlanView(MetreBox Extent, ValueList<MetreBox> Elsewhere, bool IsDetail)
{
    // Sixteen metres at 1:100 fill the width of a page.
    private const double DetailReachMetres = 8;

    // A site little larger than the detail needs none.
    private const double WorthIt = 1.8;

    /// <summary>The whole first, then the details in the order of the engines.</summary>
    public static IReadOnlyList<SitePlanView> Of(Plan plan)
    {
        MetreBox whole =
            MetreBox.Around(plan.Site.Outline.Concat(plan.Engines.Select(engine => engine.Place)))
            ?? new MetreBox(0, 0, 10, 10);
        MetreBox[] details = [.. Details(plan).Where(detail => Larger(whole) > WorthIt * Larger(detail))];
        return
        [
            new(whole, details.ToValueList(), false),
            .. details.Select(detail => new SitePlanView(detail, [], true)),
        ];
    }

    /// <summary>Zones are drawn as far as the window can reach, not to the horizon.</summary>
    public Geometry Window => Rings.Polygon(Extent.Grown(3 * Larger(Extent)));

    /// <summary>The part of the extent that has no drawing of its own.</summary>
    public Geometry NamedHere =>
        Rings.Polygon(Extent).Difference(SiteGeometry.Union(Elsewhere.Select(box => (Geometry)Rings.Polygon(box))));

    /// <summary>Whether a name at a place stands in this drawing.</summary>
    public bool Names(PlanPoint place) => IsDetail ? Holds(Extent, place) : !Elsewhere.Any(box => Holds(box, place));

    private static bool Holds(MetreBox box, PlanPoint p) =>
        p.XMetres >= box.LeftMetres
        && p.XMetres < box.RightMetres
        && p.YMetres >= box.BottomMetres
        && p.YMetres < box.TopMetres;

    private static double Larger(MetreBox box) => Math.Max(box.WidthMetres, box.HeightMetres);

    /// <summary>A box about each engine; boxes that overlap become one, so that nothing is named twice.</summary>
    private static List<MetreBox> Details(Plan plan)
    {
        var boxes = new List<MetreBox>();
        foreach (Engine engine in plan.Engines)
        {
            MetreBox box = new MetreBox(
                engine.Place.XMetres,
                engine.Place.YMetres,
                engine.Place.XMetres,
                engine.Place.YMetres
            ).Grown(DetailReachMetres);
            while (boxes.FindIndex(box.Overlaps) is >= 0 and int other)
            {
                box = box.With(boxes[other]);
                boxes.RemoveAt(other);
            }

            boxes.Add(box);
        }

        return boxes;
    }
}
