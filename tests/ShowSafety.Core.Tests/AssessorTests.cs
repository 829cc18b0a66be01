using CsCheck;
using ShowSafety.Core.Files;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests;

public sealed class AssessorTests
{
    public static TheoryData<string> Templates =>
        ["field-with-neighbour", "open-sided-marquee", "sports-hall", "closed-marquee"];

    [Theory]
    [MemberData(nameof(Templates))]
    public void Assess_SamePlanTwice_GivesTheSameBytes(string template)
    {
        Plan plan = Template(template);

        byte[] first = AssessmentJson.Write(plan, Assessor.Assess(plan));
        byte[] second = AssessmentJson.Write(plan, Assessor.Assess(Template(template)));

        Assert.Equal(first, second);
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Assess_EveryTemplate_HasASentenceForEveryFindingAndALabelForEveryFigure(string template)
    {
        Assessment assessment = Assessor.Assess(Template(template));
        var phrases = new Phrasebook(assessment.Names);

        Assert.All(assessment.Findings, f => Assert.NotEmpty(phrases.Sentence(f) + phrases.Remedy(f)));
        Assert.All(assessment.Figures, f => Assert.NotEmpty(phrases.Label(f)));
        Assert.True(assessment.IsExample);
    }

    [Theory]
    [InlineData("field-with-neighbour")]
    [InlineData("open-sided-marquee")]
    public void Assess_OpenAirTemplates_StandFreeOfStop(string template) =>
        Assert.DoesNotContain(Assessor.Assess(Template(template)).Findings, f => f.Severity == Severity.Stop);

    [Fact]
    public void Assess_SportsHall_IsStoppedByItsMissingPermissions()
    {
        Assessment assessment = Assessor.Assess(Template("sports-hall"));

        Assert.True(assessment.NotToRun);
        Assert.All(
            assessment.Findings.Where(f => f.Severity == Severity.Stop),
            f => Assert.StartsWith("gate.permission-missing", f.Code, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Assess_ClosedMarquee_IsRefused()
    {
        Assessment assessment = Assessor.Assess(Template("closed-marquee"));

        Assert.True(assessment.NotToRun);
        Assert.StartsWith(Headline.NotToRun, assessment.HeadlineSentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Assess_TheSmallestPlan_IsNotToRunOrSilentButNeverCrashes()
    {
        var bare = new Plan
        {
            Title = "Bare",
            Site = new Site { Outline = [new(0, 0), new(40, 0), new(0, 40)] },
        };

        Assessment assessment = Assessor.Assess(bare);

        Assert.NotEmpty(assessment.HeadlineSentence);
        Assert.NotEmpty(AssessmentJson.Write(bare, assessment));
    }

    [Fact]
    public void Assess_EngineNobodyKnowsAnythingAbout_IsNotToRunWithAFindOutList()
    {
        var unknown = new Plan
        {
            Title = "Unknown",
            Site = new Site { Outline = [new(0, 0), new(40, 0), new(40, 40), new(0, 40)] },
            Engines =
            [
                new Engine
                {
                    Id = "e1",
                    Place = new(20, 20),
                    ExhaustHeadingDegrees = 0,
                },
            ],
        };

        Assessment assessment = Assessor.Assess(unknown);

        Assert.True(assessment.NotToRun);
        Assert.Contains(assessment.FindOut, i => i.Cost == Severity.Stop);
    }

    [Fact]
    public void Assess_TemplateStartedFrom_IsNotToRunAndNoLongerAnExample()
    {
        Plan started = PlanExamples.StartFrom(Template("field-with-neighbour"));

        Assessment assessment = Assessor.Assess(started);

        Assert.True(assessment.NotToRun);
        Assert.NotEmpty(assessment.FindOut);
    }

    [Fact]
    public void Assess_TemplateWithAnythingTakenAway_NeverCrashesAndNeverSaysMore() =>
        Gen.Int[0, 10000]
            .Array[150]
            .Sample(
                choices =>
                {
                    Plan less = Thinned(Template("field-with-neighbour"), choices);
                    Assessment assessment = Assessor.Assess(less);
                    return AssessmentJson.Write(less, assessment).Length > 0;
                },
                iter: 40
            );

    private static Plan Template(string name)
    {
        byte[] file = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "site-templates", name + ".json"));
        PlanReading reading = PlanReader.Read(file);
        Assert.Empty(reading.Problems);
        return reading.Plan!;
    }

    /// <summary>Takes members out of the plan's file at random, then whatever no longer reads.</summary>
    private static Plan Thinned(Plan plan, IEnumerable<int> choices)
    {
        var chance = new Queue<int>(choices);
        System.Text.Json.Nodes.JsonNode root = System.Text.Json.Nodes.JsonNode.Parse(PlanWriter.Write(plan))!;
        for (int cut = 0; cut < 12; cut++)
        {
            System.Text.Json.Nodes.JsonNode before = root.DeepClone();
            CutOne(root, chance);
            if (PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(root.ToJsonString())).Plan is null)
            {
                root = before;
            }
        }

        return PlanReader.Read(System.Text.Encoding.UTF8.GetBytes(root.ToJsonString())).Plan!;
    }

    private static void CutOne(System.Text.Json.Nodes.JsonNode node, Queue<int> chance)
    {
        while (true)
        {
            switch (node)
            {
                case System.Text.Json.Nodes.JsonObject { Count: > 0 } record:
                    string key = record.ElementAt(Pick(chance, record.Count)).Key;
                    if (Pick(chance, 3) == 0 || record[key] is System.Text.Json.Nodes.JsonValue or null)
                    {
                        record.Remove(key);
                        return;
                    }

                    node = record[key]!;
                    break;
                case System.Text.Json.Nodes.JsonArray { Count: > 0 } list:
                    int index = Pick(chance, list.Count);
                    if (Pick(chance, 3) == 0 || list[index] is System.Text.Json.Nodes.JsonValue or null)
                    {
                        list.RemoveAt(index);
                        return;
                    }

                    node = list[index]!;
                    break;
                default:
                    return;
            }
        }
    }

    private static int Pick(Queue<int> chance, int count) => chance.TryDequeue(out int choice) ? choice % count : 0;
}
