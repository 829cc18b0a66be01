using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>Outline, hall or tent, walls and screens.</summary>
internal static class SitePlanGround
{
    private static readonly Stroke Outline = new(0.6);
    private static readonly Stroke Shell = new(1.1);
    private static readonly Stroke Wall = new(1.1, LineStyle.Solid, 0.35);

    public static SitePlanPart Of(Plan plan)
    {
        var elements = new List<DrawingElement>();
        var legend = new List<LegendEntry>();
        if (plan.Site.Outline.Count >= 3)
        {
            elements.Add(new Area([plan.Site.Outline], Outline, null, 0.97));
            legend.Add(new LegendEntry("Edge of the site", Outline, FillGrey: 0.97));
        }

        if (plan.Site.Enclosure is { Footprint.Count: >= 3 } enclosure)
        {
            string kind = enclosure.Kind == EnclosureKind.Tent ? "Tent" : "Hall";
            elements.Add(new Area([enclosure.Footprint], Shell));
            legend.Add(new LegendEntry(kind, Shell));
        }

        AddStructures(plan, elements, legend);
        return new(new Layer("ground", elements.ToValueList()), legend.ToValueList());
    }

    private static void AddStructures(Plan plan, List<DrawingElement> elements, List<LegendEntry> legend)
    {
        foreach (Structure structure in plan.Site.Structures.Where(s => s.Line.Count >= 2))
        {
            elements.Add(new Polyline(structure.Line, Wall));
            PlanPoint middle = Middle(structure.Line);
            elements.Add(new Label(middle, structure.Name ?? NameOf(structure.Kind), 6));
        }

        foreach (DebrisScreen screen in plan.DebrisScreens.Where(s => s.Line.Count >= 2))
        {
            elements.Add(new Polyline(screen.Line, Wall));
            string evidence = screen.Evidence is null ? "Debris screen, no evidence" : "Debris screen";
            elements.Add(new Label(Middle(screen.Line), evidence, 4));
        }

        if (elements.OfType<Polyline>().Any())
        {
            legend.Add(new LegendEntry("Wall, building or screen", Wall, IsLine: true));
        }
    }

    private static PlanPoint Middle(ValueList<PlanPoint> line)
    {
        PlanPoint from = line[(line.Count - 1) / 2];
        PlanPoint to = line[((line.Count - 1) / 2) + 1];
        return new((from.XMetres + to.XMetres) / 2, (from.YMetres + to.YMetres) / 2);
    }

    private static string NameOf(StructureKind kind) =>
        kind switch
        {
            StructureKind.Wall => "Wall",
            StructureKind.Building => "Building",
            StructureKind.SoundScreen => "Sound screen",
            _ => "Blast deflector",
        };
}
