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

    [Fact]
    public async Task Assess_Drag_SaysTheSameWithoutPrices()
    {
        using var client = service.CreateClient();

        var full = await client.SendJsonAsync(Path + "?detail=full", Api.Template()).GoodAsync();
        var drag = await client.SendJsonAsync(Path + "?detail=drag", Api.Template()).GoodAsync();

        Assert.Equal(full.GetProperty("findings").GetRawText(), drag.GetProperty("findings").GetRawText());
        Assert.Equal(full.GetProperty("zones").GetRawText(), drag.GetProperty("zones").GetRawText());
        Assert.DoesNotContain("lineMetres", drag.GetProperty("findOut").GetRawText(), StringComparison.Ordinal);
    }

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
