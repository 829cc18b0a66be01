using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Documents;

/// <summary>Engines: bench, shaft line and the way the exhaust blows.</summary>
internal static class SitePlanEngines
{
    // Drawn where the plan states no size: about the size of a bench one person carries (common practice, no source).
    private const double UnstatedLengthMetres = 1;
    private const double UnstatedWidthMetres = 0.6;

    private static readonly Stroke BenchPen = new(0.5);
    private static readonly Stroke ShaftPen = new(0.25, LineStyle.DashDotted);
    private static readonly Stroke ExhaustPen = new(0.8);
    private static readonly Stroke ExhaustBed = new(3.4, LineStyle.Solid, 1);

    public static SitePlanPart Of(Plan plan, MetreBox extent)
    {
        double arrow = Math.Max(1.5, 0.1 * Math.Max(extent.WidthMetres, extent.HeightMetres));
        ValueList<LegendEntry> legend =
        [
            new("Bench with engine", BenchPen, FillGrey: 1),
            new("Line of the shaft", ShaftPen, IsLine: true),
            new("Exhaust blows this way", ExhaustPen, IsLine: true, Arrow: true),
        ];
        return new(
            new Layer("engines", plan.Engines.SelectMany(engine => Drawn(engine, arrow)).ToValueList()),
            plan.Engines.Count > 0 ? legend : []
        );
    }

    private static IEnumerable<DrawingElement> Drawn(Engine engine, double arrowMetres)
    {
        double heading = engine.ExhaustHeadingDegrees;
        double length = engine.Bench?.LengthMetres?.Value ?? UnstatedLengthMetres;
        double width = engine.Bench?.WidthMetres?.Value ?? UnstatedWidthMetres;
        PlanPoint middle = engine.Place.Along(heading + 180, length / 2);
        yield return new Area([Rings.Turned(middle, heading, length, width)], BenchPen, null, 1) { KeepClear = true };
        yield return new Polyline(
            [engine.Place.Along(heading + 180, length + 0.5), engine.Place.Along(heading, 0.5)],
            ShaftPen
        );
        // White under the arrow, so that it stays to be seen on hatches and edges.
        yield return new Polyline([engine.Place, engine.Place.Along(heading, arrowMetres)], ExhaustBed);
        yield return new Polyline([engine.Place, engine.Place.Along(heading, arrowMetres)], ExhaustPen, true)
        {
            KeepClear = true,
        };
        yield return new Label(middle, engine.Name ?? engine.Id, 0, true);
    }
}
