using ShowSafety.Brief.Drawing;
using ShowSafety.Core.Measures;

namespace ShowSafety.Brief.Tests.Drawing;

/// <summary>An invented site, with every kind of element and every hatch.</summary>
internal static class SampleDrawing
{
    public static ValueList<PlanPoint> Box(double left, double bottom, double width, double height) =>
        [new(left, bottom), new(left + width, bottom), new(left + width, bottom + height), new(left, bottom + height)];

    public static ValueList<PlanPoint> Circle(double x, double y, double radius) =>
        Enumerable.Range(0, 48).Select(i => new PlanPoint(x, y).Along(i * 7.5, radius)).ToValueList();

    public static ScaleDrawing Hall()
    {
        DrawingElement[] zones =
        [
            .. Hatches.All.Select(
                (hatch, i) => new Area([Box(1 + (i % 6 * 5), 15 - (i / 6 * 3), 4.5, 2.5)], Stroke.Thin, hatch)
            ),
        ];
        return new ScaleDrawing(
            "Hall",
            "A hall of 32 m by 20 m with an engine on a bench, \"zones\" & a crowd line.",
            [
                new("site", [new Area([Box(0, 0, 32, 20)], Stroke.Heavy, null, 0.97)]),
                new(
                    "zones",
                    [.. zones, new Area([Circle(16, 5, 4.5), Circle(16, 5, 2.5)], Stroke.Medium, Hatches.RisingHeavy)]
                ),
                new(
                    "lines",
                    [
                        new Polyline([new(2, 2), new(30, 2)], new(0.7, LineStyle.LongDashed)),
                        new Polyline([new(2, 3), new(30, 3)], new(0.5, LineStyle.DashDotted)),
                        new Polyline([new(2, 4), new(12, 4)], new(0.5, LineStyle.Dotted)),
                        new Polyline([new(2, 5), new(12, 5)], new(0.35, LineStyle.Dashed)),
                        new Polyline([new(16, 5), new(24, 8)], Stroke.Medium, true),
                    ]
                ),
                new(
                    "things",
                    [
                        .. Enum.GetValues<MarkerShape>()
                            .Select((shape, i) => (DrawingElement)new Marker(new(20 + (i * 1.5), 6), shape)),
                        .. Enumerable
                            .Range(0, 7)
                            .Select(i =>
                                (DrawingElement)new Label(new(20 + (i * 1.5), 6), $"Marker number {i} with words", 4)
                            ),
                        new Label(new(16, 5), "Engine", 1, true),
                        .. Hatches.All.Select(
                            (hatch, i) =>
                                (DrawingElement)
                                    new Label(new(3 + (i % 6 * 5), 16.2 - (i / 6 * 3)), hatch.Name, 3, Centred: true)
                        ),
                    ]
                ),
            ],
            [
                .. Hatches.All.Select(hatch => new LegendEntry(
                    $"Zone {hatch.Name}: hearing protection is worn",
                    Stroke.Thin,
                    hatch
                )),
                new("Planned crowd line", new(0.7, LineStyle.LongDashed), IsLine: true),
                new("Exhaust blows this way", Stroke.Medium, IsLine: true, Arrow: true),
                new("Steward", Marker: MarkerShape.Disc),
            ]
        )
        {
            NorthDegrees = 30,
            Banner = "NOT TO RUN",
        };
    }
}
