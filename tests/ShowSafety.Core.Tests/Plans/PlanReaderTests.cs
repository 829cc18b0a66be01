using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

public sealed class PlanReaderTests
{
    [Fact]
    public void Read_SmallestPlan_GivesIt()
    {
        Plan plan = PlanJson.Plan(PlanJson.Smallest);

        Assert.Equal("Small", plan.Title);
        Assert.Equal(3, plan.Site.Outline.Count);
        Assert.Empty(plan.Engines);
    }

    [Theory]
    [InlineData("", "not-json")]
    [InlineData(" ", "not-json")]
    [InlineData("{", "not-json")]
    [InlineData("""{"schema":"showsafety-plan/1","ti""", "not-json")]
    [InlineData("""{"title":"x"} {"title":"y"}""", "not-json")]
    [InlineData("""{"title":NaN}""", "not-json")]
    [InlineData("""{"title":"x",}""", "not-json")]
    [InlineData("""{"title":"x" /* why */}""", "not-json")]
    [InlineData("null", "null")]
    [InlineData("[]", "wrong-type")]
    [InlineData("\"plan\"", "wrong-type")]
    [InlineData("1e999", "wrong-type")]
    public void Read_NoObject_SaysSoOfTheWholeFile(string json, string code)
    {
        PlanProblem problem = Assert.Single(PlanJson.Read(json).Problems);

        Assert.Equal("", problem.Pointer);
        Assert.Equal(code, problem.Code);
    }

    [Fact]
    public void Read_EmptyObject_NamesTheThreeRequiredMembers() =>
        Assert.Equal(["/schema", "/title", "/site"], PlanJson.Read("{}").Problems.Select(p => p.Pointer));

    [Fact]
    public void Read_SeveralProblems_ReportsAllAtOnce()
    {
        PlanReading reading = PlanJson.Read(
            """
            {"schema":"showsafety-plan/2","titel":"x","site":{"outline":[[0,0],[10,10],[10,0],[0,10]]},
             "engines":[{"id":"e","place":[0,"NaN"],"exhaustHeadingDegrees":400}]}
            """
        );

        Assert.Null(reading.Plan);
        Assert.Equal(
            [
                ("/schema", "wrong-text"),
                ("/titel", "unknown-member"),
                ("/site/outline", "ring-crosses"),
                ("/engines/0/place/1", "wrong-type"),
                ("/engines/0/exhaustHeadingDegrees", "out-of-range"),
                ("/title", "missing"),
            ],
            reading.Problems.Select(p => (p.Pointer, p.Code))
        );
    }

    [Fact]
    public void Read_MisspeltMember_SuggestsTheNearest()
    {
        PlanProblem problem = PlanJson.Read("""{"titel":"x"}""").Problems[0];

        Assert.Equal("title", problem.Allowed);
        Assert.Contains("\"title\"", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_OddMemberName_EscapesThePointer() =>
        Assert.Equal("/a~1b~0c", PlanJson.Read("""{"a/b~c":1}""").Problems[0].Pointer);

    [Theory]
    [InlineData("""{"\ud800":1}""")]
    [InlineData("""{"title":"\ud800"}""")]
    [InlineData("""{"prepared":{"on":"\udc00"}}""")]
    public void Read_HalfACharacter_IsAProblem(string json) => Assert.Null(PlanJson.Read(json).Plan);

    [Fact]
    public void Read_ByteOrderMark_IsPassedOver() =>
        Assert.NotNull(
            PlanReader.Read(Encoding.UTF8.Preamble.ToArray().Concat(PlanJson.Bytes(PlanJson.Smallest)).ToArray()).Plan
        );

    [Fact]
    public void Read_Utf16_IsRefusedByName() =>
        Assert.Equal("not-utf8", Assert.Single(PlanReader.Read(Encoding.Unicode.GetPreamble()).Problems).Code);

    [Fact]
    public void Read_TwentyMegabytes_IsRefusedByName()
    {
        byte[] large = new byte[20_000_000];
        Array.Fill(large, (byte)' ');
        using MemoryStream stream = new(large);

        Assert.Equal("too-large", Assert.Single(PlanReader.Read(large).Problems).Code);
        Assert.Equal("too-large", Assert.Single(PlanReader.Read(stream).Problems).Code);
    }

    [Fact]
    public void Read_Stream_GivesThePlan()
    {
        using MemoryStream stream = new(PlanJson.Bytes(PlanJson.Smallest));

        Assert.Equal(PlanJson.Plan(PlanJson.Smallest), PlanReader.Read(stream).Plan);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(100_000)]
    public void Read_DeepNesting_IsRefusedByName(int levels) =>
        Assert.Equal(
            "too-deep",
            Assert.Single(PlanJson.Read(new string('[', levels) + new string(']', levels)).Problems).Code
        );

    [Fact]
    public void Read_AMillionProblems_ListsSomeAndCountsTheRest()
    {
        string members = string.Join(',', Enumerable.Range(0, 1000).Select(i => $"\"zz{i}\":1"));

        PlanReading reading = PlanJson.Read("{" + members + "}");

        Assert.Equal(501, reading.Problems.Count);
        Assert.Equal("more-problems", reading.Problems[^1].Code);
    }

    [Fact]
    public void Read_EmptyOptionalText_IsAbsent() =>
        Assert.Null(
            PlanJson
                .Plan(PlanJson.Smallest.Replace("{\"schema", "{\"notes\":\"\",\"schema", StringComparison.Ordinal))
                .Notes
        );

    [Fact]
    public void Read_CalculatedPedigree_IsRefused()
    {
        PlanReading reading = PlanJson.Read(
            """{"site":{"air":{"humidityPercent":{"value":50,"pedigree":"calculated"}}}}"""
        );

        Assert.Contains(
            reading.Problems,
            p => p is { Pointer: "/site/air/humidityPercent/pedigree", Code: "unknown-word" }
        );
    }

    [Fact]
    public void Read_AnyPlanOfTheCatalogue_IsAccepted() =>
        Gen.ULong.Sample(seed => Assert.Empty(PlanJson.Read(RandomPlan.Some(seed)).Problems), iter: 300);

    [Fact]
    public void Read_PlanCutAnywhere_NamesAProblem()
    {
        byte[] whole = PlanJson.Bytes(RandomPlan.Complete().ToJsonString());

        Gen.Int[0, whole.Length - 1]
            .Sample(length => Assert.Single(PlanReader.Read(whole.AsMemory(0, length)).Problems), iter: 200);
    }

    [Fact]
    public void Read_BytesChangedAnywhere_AnswersWithAPlanOrProblems()
    {
        byte[] whole = PlanJson.Bytes(RandomPlan.Complete().ToJsonString());

        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte)
            .List[1, 5]
            .Sample(
                changes =>
                {
                    byte[] changed = [.. whole];
                    foreach ((int place, byte value) in changes)
                    {
                        changed[place] = value;
                    }

                    PlanReading reading = PlanReader.Read(changed);
                    Assert.Equal(reading.Plan is null, reading.Problems.Count > 0);
                },
                iter: 500
            );
    }

    [Fact]
    public void Read_AnyBytes_AnswersWithProblems() =>
        Gen.Byte.Array[0, 60].Sample(bytes => Assert.NotEmpty(PlanReader.Read(bytes).Problems), iter: 2000);

    [Fact]
    public void Problems_OfABrokenPlan_PointIntoTheFile()
    {
        JsonObject plan = RandomPlan.Complete();
        plan["site"]!["ground"] = "lava";

        PlanProblem problem = Assert.Single(PlanJson.Read(plan).Problems);

        Assert.Equal("/site/ground", problem.Pointer);
        Assert.Equal("\"lava\"", problem.Value);
        Assert.Contains("grass", problem.Allowed, StringComparison.Ordinal);
    }
}
