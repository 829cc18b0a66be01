using ShowSafety.Brief.Documents;
using ShowSafety.Brief.Drawing;
using ShowSafety.Core;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Tests.Documents;

public sealed class SitePlanDrawingTests
{
    private static readonly IReadOnlyList<ScaleDrawing> Drawings = SitePlanDrawing.Of(SampleBrief.Input);
    private static readonly ScaleDrawing Drawing = Drawings[0];

    [Fact]
    public void Of_Plan_HasItsLayersFromTheGroundUp()
    {
        Assert.Equal(
            ["ground", "zones", "things", "lines", "engines", "people", "details"],
            Drawing.Layers.Select(l => l.Name)
        );
        Assert.Equal(20, Drawing.NorthDegrees);
        Assert.Equal(new MetreBox(0, 0, 40, 30), Drawing.Extent);
    }

    [Fact]
    public void Of_Plan_NamesEverybodyAndEverything()
    {
        string[] labels = [.. Labels()];

        Assert.Contains("Bench north", labels);
        Assert.Contains("Runner", labels);
        Assert.Contains("Spectators", labels);
        Assert.Contains("Gate east", labels);
        Assert.Contains("Clock maker", labels);
        Assert.Contains("Garden wall", labels);
        Assert.Contains("Fuel", labels);
        Assert.Contains("Extinguisher", labels);
        Assert.Contains("Planned crowd line", labels);
        Assert.Contains("Suggested crowd line", labels);
        Assert.Contains("Line short by 1.23\u00A0m", labels);
    }

    [Fact]
    public void Of_EveryZoneRow_IsDrawnNamedAndInTheLegend()
    {
        foreach (ZoneRow row in SampleBrief.Zones.Select(zone => zone.Row).Distinct())
        {
            string name = Sections.Sentence(RowLabels.Of(row));
            Assert.Contains(Labels(), text => text.StartsWith(name, StringComparison.Ordinal));
            Assert.Contains(Drawing.Legend, entry => entry.Text.StartsWith(name + ":", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Of_ZoneThatCoversTheSite_SaysSo()
    {
        Assert.Contains("Landing area of lobbed pieces: the whole site", Labels());
    }

    [Fact]
    public void Of_PersonBeyondTheSite_IsGivenWithTheDistance()
    {
        // From (40, 30) to (64, 40): 24 m and 10 m, 26 m by Pythagoras.
        Assert.Contains("House at the corner, 26.0\u00A0m beyond the drawing", Labels());
    }

    [Fact]
    public void Of_Exhaust_BlowsWhereThePlanSays()
    {
        Polyline arrow = Drawing
            .Layers.Single(l => l.Name == "engines")
            .Elements.OfType<Polyline>()
            .Single(l => l.ArrowAtEnd);

        Assert.Equal(new PlanPoint(12, 14), arrow.Line[0]);
        Assert.Equal(300, arrow.Line[0].BearingDegrees(arrow.Line[1]), 1e-6);
    }

    [Fact]
    public void Of_Bench_LiesBehindTheNozzle()
    {
        Area bench = Drawing.Layers.Single(l => l.Name == "engines").Elements.OfType<Area>().Single();

        // Heading 300 degrees blows to the upper left, so the bench lies to the lower right of the nozzle.
        Assert.True(bench.Points.Average(p => p.XMetres) > 12);
        Assert.True(bench.Points.Average(p => p.YMetres) < 14);
        Assert.Equal(1.4, bench.Rings[0][1].DistanceMetres(bench.Rings[0][2]), 1e-9);
        Assert.Equal(0.7, bench.Rings[0][0].DistanceMetres(bench.Rings[0][1]), 1e-9);
    }

    [Fact]
    public void Of_LargeSite_HasALargerDrawingRoundTheEngineAndNamesNothingTwice()
    {
        Assert.Equal(2, Drawings.Count);
        Assert.Equal(new MetreBox(4, 6, 20, 22), Drawings[1].Extent);
        Assert.Contains(BriefLabels.SeeDetail, Names(Drawings[0]));
        Assert.Contains("Runner", Names(Drawings[1]));
        Assert.DoesNotContain("Runner", Names(Drawings[0]));
        Assert.DoesNotContain("Spectators", Names(Drawings[1]));
        Assert.Equal("NOT TO RUN  ·  EXAMPLE", Drawings[1].Banner);
    }

    [Fact]
    public void Of_SmallSite_NeedsNoLargerDrawing()
    {
        Plan plan = SampleBrief.Plan with
        {
            Site = SampleBrief.Plan.Site with { Outline = [new(4, 6), new(22, 6), new(22, 22), new(4, 22)] },
        };

        Assert.Single(SitePlanDrawing.Of(SampleBrief.Input with { Plan = plan }));
    }

    [Fact]
    public void Of_EnginesSideBySide_ShareOneLargerDrawing()
    {
        Engine second = SampleBrief.Plan.Engines[0] with { Id = "e2", Place = new(17, 14) };
        Plan plan = SampleBrief.Plan with
        {
            Engines = [SampleBrief.Plan.Engines[0], second],
            Site = SampleBrief.Plan.Site with { Outline = [new(0, 0), new(90, 0), new(90, 60), new(0, 60)] },
        };

        IReadOnlyList<SitePlanView> views = SitePlanView.Of(plan);

        Assert.Equal(new MetreBox(4, 6, 25, 22), Assert.Single(views[0].Elsewhere));
    }

    [Fact]
    public void Of_StopOrExample_IsOnTheDrawing()
    {
        Assert.Equal("NOT TO RUN  ·  EXAMPLE", Drawing.Banner);
        Assert.Equal("EXAMPLE", SitePlanDrawing.Of(SampleBrief.Make())[0].Banner);
        Assert.Null(SitePlanDrawing.Of(SampleBrief.Make() with { IsExample = false })[0].Banner);
    }

    [Fact]
    public void Of_BarePlan_IsDrawnAllTheSame()
    {
        var plan = new Plan
        {
            Title = "Bare",
            Site = new() { Outline = [new(0, 0), new(10, 0), new(10, 8)] },
        };
        BriefInput input = SampleBrief.Make() with { Plan = plan, Zones = [], Layout = null };

        ScaleDrawing drawing = Assert.Single(SitePlanDrawing.Of(input));

        Assert.Equal(["ground"], drawing.Layers.Select(layer => layer.Name));
        Assert.Contains("No crowd line is planned", drawing.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_EveryZoneRow_HasAStyleThatTellsItFromTheOthers()
    {
        ZoneStyle[] styles = [.. Enum.GetValues<ZoneRow>().Select(ZoneStyle.Of)];

        Assert.Equal(styles.Length, styles.Distinct().Count());
        Hatch[] hatches = [.. styles.Select(style => style.Hatch).OfType<Hatch>()];
        Assert.Equal(hatches.Length, hatches.Distinct().Count());
    }

    [Fact]
    public void Of_OneDrawing_UsesEachMarkForOneThing()
    {
        LegendEntry[] marks = [.. Drawing.Legend.Where(entry => entry.Marker is not null)];

        Assert.Equal(marks.Length, marks.Select(entry => entry.Marker).Distinct().Count());
    }

    private static IEnumerable<string> Labels() =>
        Drawings
            .SelectMany(drawing => drawing.Layers)
            .SelectMany(layer => layer.Elements)
            .OfType<Label>()
            .Select(label => label.Text);

    private static IEnumerable<string> Names(ScaleDrawing drawing) =>
        drawing.Layers.SelectMany(layer => layer.Elements).OfType<Label>().Select(label => label.Text);
}
