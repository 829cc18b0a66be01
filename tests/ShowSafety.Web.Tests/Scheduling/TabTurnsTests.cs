using System.Net;
using System.Text;
using System.Text.Json;

namespace ShowSafety.Web.Tests.Scheduling;

public sealed class TabTurnsTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task Drag_ManyOfOneTabAtOnce_AllButTheLastWaitingAreToldSo()
    {
        using var client = service.CreateClient();

        var answers = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => SendAsync(client, "one")));

        Assert.Contains(answers, a => a.Status == HttpStatusCode.OK);
        Assert.Contains(answers, a => a is { Status: HttpStatusCode.Conflict, Code: "superseded" });
        Assert.All(answers, a => Assert.Contains(a.Status, new[] { HttpStatusCode.OK, HttpStatusCode.Conflict }));
    }

    [Fact]
    public async Task Drag_OfTwoTabs_BothAreAnswered()
    {
        using var client = service.CreateClient();

        var answers = await Task.WhenAll(SendAsync(client, "left"), SendAsync(client, "right"));

        Assert.All(answers, a => Assert.Equal(HttpStatusCode.OK, a.Status));
    }

    [Theory]
    [InlineData("")]
    [InlineData("0123456789012345678901234567890123456789012345678901234567890123456789")]
    public async Task Drag_UnusableTabName_IsRefused(string tab)
    {
        using var client = service.CreateClient();
        using var request = Request(tab);

        var problem = await client
            .SendAsync(request, TestContext.Current.CancellationToken)
            .RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Equal([" too-long"], problem.Errors());
    }

    private static HttpRequestMessage Request(string tab)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, new Uri("/api/assessments?detail=drag", UriKind.Relative))
        {
            Content = new StringContent(Api.Template(), Encoding.UTF8, "application/json"),
        };
        request.Headers.TryAddWithoutValidation("ShowSafety-Tab", tab);
        return request;
    }

    private static async Task<(HttpStatusCode Status, string? Code)> SendAsync(HttpClient client, string tab)
    {
        using var request = Request(tab);
        using var response = await client.SendAsync(request, TestContext.Current.CancellationToken);
        var answer = JsonDocument
            .Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))
            .RootElement;
        return (response.StatusCode, answer.TryGetProperty("code", out var code) ? code.GetString() : null);
    }
}
