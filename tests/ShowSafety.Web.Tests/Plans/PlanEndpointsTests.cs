using System.Net;
using System.Text;
using System.Text.Json;
using ShowSafety.Core.Plans;

namespace ShowSafety.Web.Tests.Plans;

public sealed class PlanEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task AddSaveGet_Plan_IsThereWithItsLatestTitle()
    {
        using var client = service.CreateClient();
        var (path, tag) = await AddAsync(client);

        using var saved = await SendAsync(client, HttpMethod.Put, path, tag, Titled("Second"));
        using var got = await SendAsync(client, HttpMethod.Get, path, null, null);
        var plan = JsonDocument.Parse(await got.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));

        Assert.Equal(HttpStatusCode.OK, saved.StatusCode);
        Assert.NotEqual(tag, saved.Headers.ETag!.Tag);
        Assert.Equal(saved.Headers.ETag, got.Headers.ETag);
        Assert.Equal("Second", plan.RootElement.GetProperty("title").GetString());
        var listed = (await client.GetGoodAsync("/api/plans")).EnumerateArray();
        Assert.Contains(listed, p => path.EndsWith(p.GetProperty("id").GetString()!, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Save_FromAnOldState_IsToldAndOverwritesNothing()
    {
        using var client = service.CreateClient();
        var (path, tag) = await AddAsync(client);
        using var first = await SendAsync(client, HttpMethod.Put, path, tag, Titled("First tab"));

        await SendAsync(client, HttpMethod.Put, path, tag, Titled("Second tab"))
            .RefusedAsync(HttpStatusCode.PreconditionFailed);
        await SendAsync(client, HttpMethod.Delete, path, tag, null).RefusedAsync(HttpStatusCode.PreconditionFailed);

        Assert.Equal("First tab", (await client.GetGoodAsync(path)).GetProperty("title").GetString());
    }

    [Theory]
    [InlineData("/api/plans/nothing/versions")]
    [InlineData("/api/plans/nothing/versions/1")]
    [InlineData("/api/plans/nothing/versions/99999999999999")]
    [InlineData("/api/plans/nothing/versions/first")]
    [InlineData("/api/plans/nothing/brief.pdf")]
    [InlineData("/api/plans/nothing/site-plan.svg")]
    [InlineData("/api/templates/nothing")]
    [InlineData("/api/templates/nothing/start")]
    [InlineData("/api/templates/..%2fopen-sided-marquee")]
    public async Task Get_NothingByThatName_IsNotFound(string path)
    {
        using var client = service.CreateClient();

        await SendAsync(client, HttpMethod.Get, path, null, null).RefusedAsync(HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task Get_VersionNotKept_IsNotFound()
    {
        using var client = service.CreateClient();
        var (path, _) = await AddAsync(client);

        await SendAsync(client, HttpMethod.Get, path + "/versions/1", null, null).RefusedAsync(HttpStatusCode.NotFound);
        Assert.Equal(0, (await client.GetGoodAsync(path + "/versions")).GetArrayLength());
    }

    [Theory]
    [InlineData("closed-marquee")]
    [InlineData("field-with-neighbour")]
    [InlineData("open-sided-marquee")]
    [InlineData("sports-hall")]
    public async Task AddGet_Template_IsReadAgainInItsCanonicalForm(string template)
    {
        using var client = service.CreateClient();
        using var added = await client.SendJsonAsync("/api/plans", Api.Template(template));
        using var got = await SendAsync(client, HttpMethod.Get, added.Headers.Location!.ToString(), null, null);

        var sent = PlanReader.Read(Encoding.UTF8.GetBytes(Api.Template(template))).Plan!;
        var read = await got.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        Assert.Equal(PlanWriter.Write(sent), read);
        Assert.Equal(sent, PlanReader.Read(read).Plan);
    }

    [Fact]
    public async Task Add_ManyAtOnce_KeepsAll()
    {
        using var client = service.CreateClient();

        var paths = await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => AddAsync(client)));

        Assert.Equal(10, paths.Select(p => p.Path).Distinct().Count());
        foreach (var (path, _) in paths)
        {
            Assert.Equal("First", (await client.GetGoodAsync(path)).GetProperty("title").GetString());
        }
    }

    [Fact]
    public async Task Save_ByManyAtOnce_LetsExactlyOneThrough()
    {
        using var client = service.CreateClient();
        var (path, tag) = await AddAsync(client);

        var answers = await Task.WhenAll(
            Enumerable.Range(0, 8).Select(i => SendAsync(client, HttpMethod.Put, path, tag, Titled($"Tab {i}")))
        );

        Assert.Single(answers, a => a.StatusCode == HttpStatusCode.OK);
        Assert.Equal(7, answers.Count(a => a.StatusCode == HttpStatusCode.PreconditionFailed));
        Array.ForEach(answers, a => a.Dispose());
    }

    [Theory]
    [InlineData("PUT", null, HttpStatusCode.PreconditionRequired)]
    [InlineData("DELETE", null, HttpStatusCode.PreconditionRequired)]
    [InlineData("PUT", "\"old\"", HttpStatusCode.PreconditionFailed)]
    [InlineData("PUT", "W/\"1\"", HttpStatusCode.PreconditionFailed)]
    [InlineData("PUT", "*", HttpStatusCode.PreconditionFailed)]
    [InlineData("PUT", "\"1\", \"2\"", HttpStatusCode.PreconditionFailed)]
    [InlineData("PUT", "\"99999999999\"", HttpStatusCode.PreconditionFailed)]
    [InlineData("PUT", "1", HttpStatusCode.BadRequest)]
    [InlineData("DELETE", "\"1", HttpStatusCode.BadRequest)]
    [InlineData("DELETE", "\"2\"", HttpStatusCode.PreconditionFailed)]
    public async Task Change_WithoutTheStateSeen_IsRefused(string method, string? tag, HttpStatusCode expected)
    {
        using var client = service.CreateClient();
        var (path, _) = await AddAsync(client);

        await SendAsync(client, new HttpMethod(method), path, tag, method == "PUT" ? Titled("New") : null)
            .RefusedAsync(expected);
    }

    [Theory]
    [InlineData("GET")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    public async Task Anything_MissingPlan_IsNotFound(string method)
    {
        using var client = service.CreateClient();

        await SendAsync(
                client,
                new HttpMethod(method),
                "/api/plans/nothing",
                method == "GET" ? null : "\"1\"",
                method == "PUT" ? Titled("New") : null
            )
            .RefusedAsync(HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task Save_BrokenPlan_IsRefusedAndTheDraftStays()
    {
        using var client = service.CreateClient();
        var (path, tag) = await AddAsync(client);

        var problem = await SendAsync(client, HttpMethod.Put, path, tag, "{}").RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Contains("/title missing", problem.Errors());
        Assert.Equal("First", (await client.GetGoodAsync(path)).GetProperty("title").GetString());
    }

    [Fact]
    public async Task Remove_Plan_LeavesItsVersionsReadable()
    {
        using var client = service.CreateClient();
        var (path, tag) = await AddAsync(client);
        var kept = await client.SendJsonAsync(path + "/versions", """{"name": "As agreed"}""").GoodAsync();
        using var saved = await SendAsync(client, HttpMethod.Put, path, tag, Titled("Later"));

        using var removed = await SendAsync(client, HttpMethod.Delete, path, saved.Headers.ETag!.Tag, null);

        Assert.Equal(HttpStatusCode.NoContent, removed.StatusCode);
        await SendAsync(client, HttpMethod.Get, path, null, null).RefusedAsync(HttpStatusCode.NotFound);
        Assert.Equal("As agreed", kept.GetProperty("name").GetString());
        Assert.Equal("First", (await client.GetGoodAsync(path + "/versions/1")).GetProperty("title").GetString());
        Assert.Equal(1, (await client.GetGoodAsync(path + "/versions")).GetArrayLength());
    }

    [Theory]
    [InlineData("""{"name": " "}""", "/name blank")]
    [InlineData("""{}""", "/name missing")]
    public async Task Keep_WithoutName_IsRefused(string json, string expected)
    {
        using var client = service.CreateClient();
        var (path, _) = await AddAsync(client);

        var problem = await client.SendJsonAsync(path + "/versions", json).RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Equal([expected], problem.Errors());
    }

    private static string Titled(string title) => Api.Changed(plan => plan["title"] = title);

    private static async Task<(string Path, string Tag)> AddAsync(HttpClient client)
    {
        using var added = await client.SendJsonAsync("/api/plans", Titled("First"));
        Assert.Equal(HttpStatusCode.Created, added.StatusCode);
        return (added.Headers.Location!.ToString(), added.Headers.ETag!.Tag);
    }

    private static async Task<HttpResponseMessage> SendAsync(
        HttpClient client,
        HttpMethod method,
        string path,
        string? tag,
        string? json
    )
    {
        using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative));
        if (tag is not null)
        {
            request.Headers.TryAddWithoutValidation("If-Match", tag);
        }

        request.Content = json is null ? null : new StringContent(json, Encoding.UTF8, "application/json");
        return await client.SendAsync(request, TestContext.Current.CancellationToken);
    }
}
