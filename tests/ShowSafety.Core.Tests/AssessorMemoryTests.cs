using System.Text.Json;
using ShowSafety.Core.Crowd;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Files;
using ShowSafety.Core.Gate;
using ShowSafety.Core.IndoorAir;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Supplies;

namespace ShowSafety.Core.Tests;

public sealed class AssessorMemoryTests
{
    private const int Edits = 300;

    public static TheoryData<string> Templates =>
        ["field-with-neighbour", "open-sided-marquee", "sports-hall", "closed-marquee"];

    // What memory gives after any history of edits is what a fresh assessment gives, to the last byte.
    [Fact]
    public void Assess_ThreeHundredRandomEdits_IsTheSameWithMemoryAndWithout()
    {
        var random = new Random(20270626);
        var memory = new AssessorMemory();
        var before = new List<Plan> { Template("field-with-neighbour") };
        for (int i = 0; i < Edits; i++)
        {
            Plan plan = Edited(before[^1], before, random);
            before.Add(plan);

            byte[] remembered = AssessmentJson.Write(plan, Assessor.AssessWithoutCosts(plan, memory), false);
            byte[] fresh = AssessmentJson.Write(plan, Assessor.AssessWithoutCosts(plan), false);

            Assert.True(remembered.AsSpan().SequenceEqual(fresh), $"Edit {i} is not the same with memory.");
        }
    }

    // A room given only its part finds what it finds in the whole plan: the part leaves out nothing it reads.
    [Theory]
    [MemberData(nameof(Templates))]
    public void Rooms_GivenTheirPart_FindWhatTheyFindInTheWholePlan(string template)
    {
        Plan plan = Template(template);
        SoundField field = SoundField.Build(plan);

        Same(p => SoundAssessor.Assess(p, SoundField.Build(p)), AssessedParts.OfSound);
        Same(p => ExposureAssessor.Assess(p, field), AssessedParts.OfExposure);
        Same(ExhaustAssessor.Assess, AssessedParts.OfExhaust);
        Same(IndoorAirAssessor.Assess, AssessedParts.OfIndoorAir);
        Same(DebrisAssessor.Assess, AssessedParts.OfDebris);
        Same(SuppliesAssessor.Assess, AssessedParts.OfSupplies);
        Same(CrowdAssessor.Assess, AssessedParts.OfCrowd);
        Same(GateAssessor.Assess, AssessedParts.OfGate);

        void Same(Func<Plan, RoomAssessment> room, Func<Plan, Plan> part) =>
            Assert.Equal(Written(room(plan)), Written(room(part(plan))));
    }

    [Fact]
    public void Recall_SamePart_WorksOnce()
    {
        var memory = new AssessorMemory();
        int worked = 0;
        Plan plan = Template("field-with-neighbour");

        object first = memory.Recall("stage", plan, Work);
        object again = memory.Recall("stage", Template("field-with-neighbour"), Work);
        object other = memory.Recall("another", plan, Work);

        Assert.Same(first, again);
        Assert.NotSame(first, other);
        Assert.Equal(2, worked);

        object Work(Plan part)
        {
            worked++;
            return new();
        }
    }

    [Fact]
    public void Recall_MoreThanIsKept_ForgetsWhatWasUsedLongestAgo()
    {
        var memory = new AssessorMemory();
        int worked = 0;
        for (int i = 0; i <= AssessorMemory.MostKept; i++)
        {
            memory.Recall($"{i}", new Plan(), Work);
            memory.Recall("0", new Plan(), Work);
        }

        int afterAll = worked;
        memory.Recall("0", new Plan(), Work);
        Assert.Equal(afterAll, worked);
        memory.Recall("1", new Plan(), Work);
        Assert.Equal(afterAll + 1, worked);

        object Work(Plan part)
        {
            worked++;
            return new();
        }
    }

    private static Plan Edited(Plan plan, List<Plan> before, Random random)
    {
        double Metres() => Math.Round((random.NextDouble() * 8) - 4, 3);
        PlanPoint Shifted(PlanPoint p) => new(p.XMetres + Metres(), p.YMetres + Metres());
        // All corners alike: an outline that crosses itself is no plan.
        ValueList<PlanPoint> Moved(ValueList<PlanPoint> outline)
        {
            (double x, double y) = (Metres(), Metres());
            return [.. outline.Select(p => new PlanPoint(p.XMetres + x, p.YMetres + y))];
        }

        return random.Next(12) switch
        {
            0 or 1 => plan with { Engines = [.. plan.Engines.Select(e => e with { Place = Shifted(e.Place) })] },
            2 => plan with
            {
                Engines = [.. plan.Engines.Select(e => e with { ExhaustHeadingDegrees = random.Next(3600) / 10.0 })],
            },
            3 when plan.CrowdLine is { } line => plan with
            {
                CrowdLine = line with { Line = [.. line.Line.Select(Shifted)] },
            },
            4 => plan with { People = [.. plan.People.Select(g => g with { Area = Moved(g.Area) })] },
            5 => plan with { People = [.. plan.People.Skip(plan.People.Count > 2 ? 1 : 0)] },
            6 => plan with { RuleSets = random.Next(2) == 0 ? ["eu-2003-10"] : ["who-venues-2022", "eu-2003-10"] },
            7 => plan with { Gate = null },
            8 => plan with { Supplies = plan.Supplies is null ? before[0].Supplies : null },
            9 => plan with { Protectors = [.. plan.Protectors.Skip(1)] },
            10 => plan with
            {
                Site = plan.Site with { Exits = [.. plan.Site.Exits.Select(e => e with { Place = Shifted(e.Place) })] },
            },
            // Undo: back to a plan seen before.
            _ => before[random.Next(before.Count)],
        };
    }

    private static string Written(RoomAssessment room) =>
        JsonSerializer.Serialize(room, room.GetType(), AssessmentJson.Dense)
        + JsonSerializer.Serialize(room.Findings, AssessmentJson.Dense)
        + JsonSerializer.Serialize(room.Zones, AssessmentJson.Dense);

    private static Plan Template(string name) =>
        PlanReader
            .Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "site-templates", name + ".json")))
            .Plan!;
}
