using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>
/// Stands, things that burn, ways out, fuel, gas and extinguishers. Signs are named by their ISO 7010:2019 reference.
/// </summary>
internal static class SitePlanThings
{
    public static SitePlanPart Of(Plan plan)
    {
        var elements = new List<DrawingElement>();
        var legend = new List<LegendEntry>();
        AddAreas(plan, elements, legend);
        AddMarks(
            elements,
            legend,
            plan.Site.Exits.Select(exit => (exit.Place, exit.Name ?? "Way out")),
            new LegendEntry("Way out (ISO 7010 E001, E002)", Marker: MarkerShape.OpenSquare),
            2
        );
        SupplyList supplies = plan.Supplies ?? new();
        AddMarks(
            elements,
            legend,
            [
                .. supplies.Fuel.Select(fuel => (fuel.Place, "Fuel")),
                .. supplies.Gas.Select(gas => (gas.Place, "Gas cylinder")),
                .. supplies.Batteries.Select(battery => (battery.Place, battery.Name ?? "Battery")),
            ],
            new LegendEntry("Fuel, gas, battery", Marker: MarkerShape.Triangle),
            4
        );
        AddMarks(
            elements,
            legend,
            supplies.Extinguishers.Select(e => (e.Place, "Extinguisher")),
            new LegendEntry("Fire extinguisher (ISO 7010 F001)", Marker: MarkerShape.Cross),
            4
        );
        return new(new Layer("things", elements.ToValueList()), legend.ToValueList());
    }

    private static void AddAreas(Plan plan, List<DrawingElement> elements, List<LegendEntry> legend)
    {
        foreach (OtherStand stand in plan.Site.Stands.Where(s => s.Outline.Count >= 3))
        {
            elements.Add(new Area([stand.Outline], Stroke.Thin, null, 0.85));
            elements.Add(new Label(Middle(stand.Outline), stand.Name ?? "Stand", 6, Centred: true));
        }

        foreach (Burnable burnable in plan.Site.Burnables.Where(b => b.Outline.Count >= 3))
        {
            elements.Add(new Area([burnable.Outline], new(0.25, LineStyle.Dotted), null, 0.92));
            elements.Add(new Label(Middle(burnable.Outline), burnable.Name ?? "Burns or blows", 6, Centred: true));
        }

        if (plan.Site.Stands.Count > 0)
        {
            legend.Add(new LegendEntry("Another exhibitor's stand", Stroke.Thin, FillGrey: 0.85));
        }

        if (plan.Site.Burnables.Count > 0)
        {
            legend.Add(new LegendEntry("Burns, blows or softens", new(0.25, LineStyle.Dotted), FillGrey: 0.92));
        }
    }

    private static void AddMarks(
        List<DrawingElement> elements,
        List<LegendEntry> legend,
        IEnumerable<(PlanPoint Place, string Name)> things,
        LegendEntry entry,
        int rank
    )
    {
        int before = elements.Count;
        foreach ((PlanPoint place, string name) in things)
        {
            elements.Add(new Marker(place, entry.Marker!.Value));
            elements.Add(new Label(place, name, rank));
        }

        if (elements.Count > before)
        {
            legend.Add(entry);
        }
    }

    private static PlanPoint Middle(ValueList<PlanPoint> ring) =>
        SiteGeometry.PlanPoint(SiteGeometry.Polygon(ring).InteriorPoint.Coordinate);
}
