using ShowSafety.Brief.Documents;
using ShowSafety.Core;
using ShowSafety.Core.Layout;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Brief.Tests.Documents;

/// <summary>An invented plan, with zones and findings made by hand so that every section has something to print.</summary>
internal static class SampleBrief
{
    private static readonly Engine Bench = new()
    {
        Id = "e1",
        Name = "Bench north",
        Place = new(12, 14),
        ExhaustHeadingDegrees = 300,
        Bench = new() { LengthMetres = Example(1.4), WidthMetres = Example(0.7) },
        Sheet = new()
        {
            States = [new() { Id = "idle", Name = "Idle" }, new() { Id = "full", Name = "Full throttle" }],
        },
    };

    public static Plan Plan { get; } =
        new()
        {
            Title = "Hand-sized turbine on a bench, Alderwick green",
            Event = new()
            {
                Name = "Alderwick spring fair",
                Days = [new(2026, 5, 9), new(2026, 5, 10)],
                Venue = "The green, Alderwick",
            },
            RuleSets = ["uk-2005"],
            Site = new()
            {
                Outline = [new(0, 0), new(40, 0), new(40, 30), new(6, 30), new(0, 24)],
                NorthDegrees = 20,
                Exits =
                [
                    new()
                    {
                        Id = "x1",
                        Name = "Gate east",
                        Place = new(40, 6),
                    },
                ],
                Stands =
                [
                    new()
                    {
                        Id = "s1",
                        Name = "Clock maker",
                        Outline = Rectangle(30, 22, 6, 4),
                    },
                ],
                Structures =
                [
                    new()
                    {
                        Id = "w1",
                        Name = "Garden wall",
                        Line = [new(6, 30), new(40, 30)],
                    },
                ],
            },
            Engines = [Bench],
            Programme = new()
            {
                Runs =
                [
                    new()
                    {
                        Id = "r1",
                        EngineId = "e1",
                        StartsAt = new(11, 0),
                        Steps = [new() { StateId = "idle", Seconds = 90 }, new() { StateId = "full", Seconds = 300 }],
                    },
                ],
            },
            People =
            [
                new()
                {
                    Id = "p1",
                    Name = "Runner",
                    Role = PersonRole.Crew,
                    LegalClass = LegalClass.Volunteer,
                    Adults = 2,
                    Place = new(13.5, 13),
                },
                new()
                {
                    Id = "p2",
                    Name = "Spectators",
                    Role = PersonRole.Visitor,
                    Adults = 60,
                    Children = 20,
                    Area = Rectangle(22, 2, 14, 5),
                },
                new()
                {
                    Id = "p3",
                    Name = "House at the corner",
                    Role = PersonRole.Neighbour,
                    Adults = 3,
                    Place = new(64, 40),
                },
            ],
            CrowdLine = new() { Line = [new(20, 1), new(20, 12), new(38, 12)] },
            Supplies = new()
            {
                Fuel =
                [
                    new()
                    {
                        Id = "f1",
                        Fuel = FuelKind.Kerosene,
                        Place = new(30, 27),
                    },
                ],
                Extinguishers =
                [
                    new()
                    {
                        Id = "x2",
                        Kind = ExtinguisherKind.Foam,
                        Place = new(14.5, 15),
                    },
                ],
            },
            Gate = new()
            {
                Permissions =
                [
                    new()
                    {
                        Id = "g1",
                        Giver = PermissionGiver.Venue,
                        Who = "A. Invented",
                        On = new(2026, 3, 1),
                    },
                ],
                EngineEvidence = [new() { EngineId = "e1", RatedRuns = 4 }],
            },
        };

    public static Zone[] Zones { get; } =
    [
        Circle(
            ZoneRow.HearingZone,
            18,
            ZoneEffect.Requires,
            Audience.Everyone,
            Quantity.CautiousHigh(80, 85, Unit.DecibelA)
        ),
        Circle(ZoneRow.LandingArea, 120, ZoneEffect.Informs, Audience.Everyone, null),
        Circle(ZoneRow.Intake, 2, ZoneEffect.Excludes, Audience.Everyone, null),
        Wedge(ZoneRow.JetSpeedPublic, 300, 10, 14, Audience.Visitors),
        Wedge(ZoneRow.JetSpeedCrew, 300, 7, 8, Audience.Crew),
        Wedge(ZoneRow.DirectFlight, 30, 15, 40, Audience.Everyone),
        Wedge(ZoneRow.DirectFlight, 210, 15, 40, Audience.Everyone),
    ];

    public static BriefInput Input { get; } = Make([Stop(), Act(), Note()]);

    public static BriefInput Make(params ValueList<Finding> findings) =>
        new()
        {
            Plan = Plan,
            PlanHash = new string('a', 6) + new string('b', 58),
            PreparedOn = new(2026, 5, 1, 9, 0, 0, TimeSpan.Zero),
            IsExample = true,
            Headline = Core.Wording.Headline.Of(
                findings,
                new Core.Wording.Phrasebook(ElementNames.Of(Plan)),
                ZoneRow.DirectFlight,
                Quantity.CautiousHigh(12, 12.4, Unit.Metre)
            ),
            Findings = findings,
            Zones = [.. Zones],
            Figures =
            [
                new("layout.line-distance", "p2", Quantity.CautiousHigh(12, 12.4, Unit.Metre)),
                new("layout.line-length", null, Quantity.Plain(31.5, Unit.Metre)),
            ],
            Layout = Layout(),
            Assumptions = AssumptionList.Of(Plan),
            FindOut =
            [
                new("ThrottleState.ThrustNewtons", "e1", "thrust", FindOut.Scale, Severity.Stop, null),
                new("Site.Air", null, "air", FindOut.Meter, null, Quantity.Plain(1.5, Unit.Metre)),
            ],
            Duties = [new("Spectators", "Noise rules, clause 1", "86.0 dB(A)", "85 dB(A)", "protectors are worn")],
        };

    private static LayoutAssessment Layout() =>
        new()
        {
            PublicKeepOut = KeepOut.For(Zones, Audience.Visitors),
            CrewKeepOut = KeepOut.For(Zones, Audience.Crew),
            HearingArea = Zones[0].Area,
            PlannedLine = [new(new(20, 1), new(20, 3), false, 1.23, ZoneRow.DirectFlight, "e1")],
            SuggestedLine = [new(22, 0), new(24, 12), new(39, 20)],
            LineSetBy = ZoneRow.DirectFlight,
        };

    private static Finding Stop() =>
        new("layout.people-in-zone", Severity.Stop)
        {
            Arguments = [FindingArgument.Of("who", "Spectators")],
            Row = ZoneRow.DirectFlight,
            ElementId = "p2",
        };

    private static Finding Act() =>
        new("layout.group-without-place", Severity.Act) { Arguments = [FindingArgument.Of("who", "p3")] };

    private static Finding Note() => new("layout.no-line-drawn", Severity.Note);

    private static Zone Circle(ZoneRow row, double radius, ZoneEffect effect, Audience whom, Quantity? boundary) =>
        new(row, "e1", effect, whom, Phases.Running, ZoneFrame.Engine, SiteGeometry.CircleAround(Bench.Place, radius))
        {
            Reach = Quantity.CautiousHigh(radius * 0.9, radius, Unit.Metre),
            Boundary = boundary,
        };

    private static Zone Wedge(ZoneRow row, double heading, double half, double reach, Audience whom) =>
        new(
            row,
            "e1",
            ZoneEffect.Excludes,
            whom,
            Phases.Start | Phases.Running,
            ZoneFrame.Engine,
            SiteGeometry.Polygon([
                Bench.Place,
                Bench.Place.Along(heading - half, reach),
                Bench.Place.Along(heading, reach),
                Bench.Place.Along(heading + half, reach),
            ])
        )
        {
            Reach = Quantity.CautiousHigh(reach * 0.8, reach, Unit.Metre),
        };

    private static ValueList<PlanPoint> Rectangle(double left, double bottom, double width, double height) =>
        [new(left, bottom), new(left + width, bottom), new(left + width, bottom + height), new(left, bottom + height)];

    private static Stated Example(double value) => new() { Value = value, Pedigree = Pedigree.Example };
}
