using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Exposure;

/// <summary>An invented plan: one engine at the origin, one run of ten minutes, crew beside it, visitors away.</summary>
internal static class SamplePlan
{
    public static Plan Plan(double visitorMetres = 10, double seconds = 600) =>
        new()
        {
            Title = "invented",
            RuleSets = ["eu-2003-10", "who-venues-2022"],
            Event = new() { Days = [new(2031, 5, 3), new(2031, 5, 4)] },
            Engines =
            [
                new()
                {
                    Id = "e1",
                    Sheet = new() { States = [new() { Id = "idle" }, new() { Id = "full" }] },
                },
            ],
            Programme = new() { Runs = [Run("r1", new(11, 0), ("full", seconds))] },
            People = [Crew(), Visitors(visitorMetres)],
            Protectors = [Muff()],
        };

    public static Run Run(string id, TimeOnly startsAt, params (string State, double Seconds)[] steps) =>
        new()
        {
            Id = id,
            EngineId = "e1",
            StartsAt = startsAt,
            Steps = [.. steps.Select(s => new ThrottleStep { StateId = s.State, Seconds = s.Seconds })],
        };

    public static PersonGroup Crew() =>
        new()
        {
            Id = "crew",
            Role = PersonRole.Crew,
            LegalClass = LegalClass.Worker,
            Adults = 2,
            Children = 0,
            Place = new(2, 0),
            EarHeightMetres = Measured(1.6),
            ProtectorId = "muff",
        };

    public static PersonGroup Visitors(double metres) =>
        new()
        {
            Id = "visitors",
            Role = PersonRole.Visitor,
            Adults = 50,
            Children = 0,
            Place = new(0, metres),
            EarHeightMetres = Measured(1.6),
        };

    public static HearingProtector Muff() =>
        new()
        {
            Id = "muff",
            Kind = ProtectorKind.Muff,
            HighDb = Measured(32),
            MediumDb = Measured(28),
            LowDb = Measured(20),
        };

    public static FakeSound Sound(double fullDbA = 120) =>
        new()
        {
            Places = new Dictionary<string, PlanPoint> { ["e1"] = new(0, 0) },
            LevelAtOneMetre = new Dictionary<string, double> { ["idle"] = 100, ["full"] = fullDbA },
        };

    public static Stated Measured(double value) => new() { Value = value, Pedigree = Pedigree.Measured };
}
