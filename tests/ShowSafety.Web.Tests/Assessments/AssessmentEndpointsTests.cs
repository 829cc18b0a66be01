using System.Net;
using System.Text.Json;

namespace ShowSafety.Web.Tests.Assessments;

public sealed class AssessmentEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Path = "/api/assessments";

    [Fact]
    public async Task Assess_Template_GivesHeadlineFindingsAndZones()
    {
        using var client = service.CreateClient();

        var assessment = await client.SendJsonAsync(Path, Api.Template()).GoodAsync();

        Assert.Equal("showsafety-assessment/1", assessment.GetProperty("schema").GetString());
        Assert.NotEqual("", assessment.GetProperty("headline").GetString());
        Assert.NotEqual(0, assessment.GetProperty("zones").GetArrayLength());
        Assert.NotEqual(0, assessment.GetProperty("findings").GetArrayLength());
    }

    [Theory]
    [InlineData("closed-marquee")]
    [InlineData("field-with-neighbour")]
    [InlineData("open-sided-marquee")]
    [InlineData("sports-hall")]
    public async Task Assess_Drag_IsTheFullAnswerWithLess(string template)
    {
        using var client = service.CreateClient();

        var full = await client.SendJsonAsync(Path + "?detail=full", Api.Template(template)).GoodAsync();
        var drag = await client.SendJsonAsync(Path + "?detail=drag", Api.Template(template)).GoodAsync();

        Assert.All(
            ["headline", "verdict", "zones", "people"],
            m => Assert.Equal(full.GetProperty(m).GetRawText(), drag.GetProperty(m).GetRawText())
        );
        Assert.Equal(
            full.GetProperty("rooms").GetProperty("layout").GetRawText(),
            Assert.Single(drag.GetProperty("rooms").EnumerateObject()).Value.GetRawText()
        );
        Assert.All(
            ["findOut", "assumptions", "sources"],
            m => Assert.True(full.TryGetProperty(m, out _) && !drag.TryGetProperty(m, out _))
        );
        Assert.Equal(Sentences(full), Sentences(drag));
        Assert.All(
            drag.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("finding")),
            f => Assert.False(f.TryGetProperty("arguments", out _) || f.TryGetProperty("citations", out _))
        );
    }

    private static IEnumerable<string?> Sentences(JsonElement assessment) =>
        assessment
            .GetProperty("findings")
            .EnumerateArray()
            .SelectMany(f => new[] { f.GetProperty("sentence").GetString(), f.GetProperty("remedy").GetString() });

    [Fact]
    public async Task Assess_Template_SaysWhatZonesAreAndWhatHoldsForPeople()
    {
        using var client = service.CreateClient();

        var assessment = await client.SendJsonAsync(Path + "?detail=drag", Api.Template()).GoodAsync();

        var zone = assessment.GetProperty("zones").EnumerateArray().First(z => Text(z, "row") == "hearingZone");
        Assert.Equal("Hearing zone", Text(zone, "label"));
        Assert.Contains("85.0\u00A0dB(A)", Text(zone, "sentence"), StringComparison.Ordinal);
        var person = assessment.GetProperty("people").EnumerateArray().First();
        Assert.Equal("operator", Text(person, "groupId"));
        Assert.Contains("dB(A)", Text(person, "sentence"), StringComparison.Ordinal);
        Assert.All(["wear", "stay"], m => Assert.EndsWith(".", Text(person, m), StringComparison.Ordinal));
    }

    private static string Text(JsonElement owner, string member) => owner.GetProperty(member).GetString()!;

    [Theory]
    [InlineData("""{}""", "/schema missing", "/title missing", "/site missing")]
    [InlineData("""{"schema": 1""", " not-json")]
    [InlineData("null", " null")]
    [InlineData("", " not-json")]
    public async Task Assess_BrokenFile_NamesEveryProblem(string json, params string[] expected)
    {
        using var client = service.CreateClient();

        var problem = await client.SendJsonAsync(Path, json).RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Equal(expected, problem.Errors());
    }

    // The traps that default JSON binding falls into: each must be refused by name.
    [Theory]
    [InlineData("\"shaftHeightMetres\"", "\"shaftHightMetres\"", "unknown-member")]
    [InlineData("\"exhaustHeadingDegrees\": ", "\"exhaustHeadingDegrees\": 1e999, \"x\": ", "not-finite")]
    [InlineData("\"exhaustHeadingDegrees\": ", "\"exhaustHeadingDegrees\": \"NaN\", \"x\": ", "wrong-type")]
    [InlineData("\"exhaustHeadingDegrees\": ", "\"exhaustHeadingDegrees\": 9999, \"x\": ", "out-of-range")]
    [InlineData("\"title\": ", "\"title\": \"twice\", \"title\": ", "duplicate-member")]
    [InlineData("\"engines\": [", "\"engines\": [null, ", "null")]
    [InlineData("\"language\": \"english\"", "\"language\": 99", "wrong-type")]
    public async Task Assess_Trap_IsRefusedByName(string stands, string instead, string code)
    {
        using var client = service.CreateClient();
        var json = Api.Template();
        Assert.Contains(stands, json, StringComparison.Ordinal);

        var problem = await client
            .SendJsonAsync(Path, json.Replace(stands, instead, StringComparison.Ordinal))
            .RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Contains(problem.Errors(), e => e.EndsWith(" " + code, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Assess_UnknownDetail_SaysWhichThereAre()
    {
        using var client = service.CreateClient();

        var problem = await client
            .SendJsonAsync(Path + "?detail=half", Api.Template())
            .RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Equal("full, drag", problem.GetProperty("errors")[0].GetProperty("allowed").GetString());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Assess_TwentyMegabytes_IsTooLarge(bool isChunked)
    {
        using var client = service.CreateClient();
        client.DefaultRequestHeaders.TransferEncodingChunked = isChunked;

        var problem = await client
            .SendJsonAsync(Path, new string(' ', 20_000_000))
            .RefusedAsync(HttpStatusCode.RequestEntityTooLarge);

        Assert.Equal([" too-large"], problem.Errors());
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    public async Task Assess_NotSentAsJson_IsRefused(string mediaType)
    {
        using var client = service.CreateClient();

        await client
            .SendAsAsync(Path, Api.Template(), mediaType, TestContext.Current.CancellationToken)
            .RefusedAsync(HttpStatusCode.UnsupportedMediaType);
    }

    [Fact]
    public async Task Assess_ClientGone_LeavesTheLaneFree()
    {
        using var client = service.CreateClient();
        using var impatient = new CancellationTokenSource(TimeSpan.FromMilliseconds(30));

        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () =>
        {
            // Whichever request is under way when patience ends is abandoned.
            while (true)
            {
                using var response = await client.SendAsAsync(
                    Path,
                    Api.Template(),
                    "application/json",
                    impatient.Token
                );
            }
        });
        var assessment = await client.SendJsonAsync(Path, Api.Template()).GoodAsync();
        Assert.Equal(JsonValueKind.Object, assessment.ValueKind);
    }
}
