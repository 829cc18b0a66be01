using ShowSafety.Core.Crowd;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Crowd;

/// <summary>Invented plans with a crowd; the engine's nozzle is at the origin.</summary>
internal static class CrowdPlans
{
    public static Stated Measured(double value) => new() { Value = value, Pedigree = Pedigree.Measured };

    public static ValueList<PlanPoint> Box(double left, double bottom, double width, double height) =>
        [new(left, bottom), new(left + width, bottom), new(left + width, bottom + height), new(left, bottom + height)];

    public static Engine Turbine { get; } =
        new()
        {
            Id = "one",
            ShaftHeightMetres = Measured(1),
            Sheet = new() { LengthMetres = Measured(0.4), CasingDiameterMetres = Measured(0.12) },
        };

    public static PersonGroup Watchers { get; } =
        new()
        {
            Id = "watchers",
            Role = PersonRole.Visitor,
            Adults = 80,
            Children = 20,
            Area = Box(-10, 30, 20, 5),
        };

    /// <summary>Outdoors, nothing missing.</summary>
    public static Plan Complete { get; } =
        new()
        {
            Site = new()
            {
                Outline = Box(-60, -60, 120, 120),
                Exits =
                [
                    new()
                    {
                        Id = "east",
                        Place = new(60, 40),
                        WidthMetres = Measured(3),
                    },
                    new()
                    {
                        Id = "west",
                        Place = new(-60, 40),
                        WidthMetres = Measured(2),
                    },
                ],
            },
            Engines = [Turbine],
            People = [Watchers],
            CrowdLine = new()
            {
                Line = [new(-15, 28), new(15, 28)],
                PanelLengthMetres = Measured(2.5),
                HeightMetres = Measured(1.4),
                Infill = BarrierInfill.Mesh,
            },
            Viewing = new()
            {
                StewardPosts = [new() { Id = "s", Place = new(0, 27) }],
                WheelchairPlaces = [new() { Id = "w", Place = new(9, 31) }],
            },
        };

    public static Plan WithLine(Func<CrowdLine, CrowdLine> change) =>
        Complete with
        {
            CrowdLine = change(Complete.CrowdLine!),
        };

    public static Plan WithWatchers(Func<PersonGroup, PersonGroup> change) =>
        Complete with
        {
            People = [change(Watchers)],
        };

    public static Plan WithExits(params SiteExit[] exits) =>
        Complete with
        {
            Site = Complete.Site with { Exits = [.. exits] },
        };

    /// <summary>Codes of findings that ask for something: no notes.</summary>
    public static IReadOnlyList<string> Codes(Plan plan) =>
        [.. CrowdAssessor.Assess(plan).Findings.Where(f => f.Severity > Severity.Note).Select(f => f.Code)];
}
