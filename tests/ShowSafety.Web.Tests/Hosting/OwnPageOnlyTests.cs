using System.Net;
using System.Text;
using Microsoft.Extensions.Configuration;
using ShowSafety.Web.Hosting;

namespace ShowSafety.Web.Tests.Hosting;

public sealed class OwnPageOnlyTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("elsewhere.example")]
    [InlineData("127.0.0.1.elsewhere.example")]
    [InlineData("10.0.0.1:5081")]
    public async Task Request_ByAnotherName_IsRefusedWithProblemDetails(string host)
    {
        foreach (var path in new[] { "/api/plans", "/health", "/openapi/v1.json" })
        {
            await SendAsync(HttpMethod.Get, path, ("Host", host)).RefusedAsync(HttpStatusCode.MisdirectedRequest);
        }
    }

    [Theory]
    [InlineData("127.0.0.1")]
    [InlineData("localhost:1234")]
    [InlineData("LOCALHOST")]
    public async Task Request_ByANameOfThisMachine_IsAnswered(string host)
    {
        using var response = await SendAsync(HttpMethod.Get, "/health", ("Host", host));

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Origin", "https://elsewhere.example")]
    [InlineData("Origin", "null")]
    public async Task Change_AskedForByAnotherPage_IsRefused(string header, string value)
    {
        foreach (var method in new[] { HttpMethod.Post, HttpMethod.Put, HttpMethod.Delete })
        {
            await SendAsync(method, "/api/plans/any", (header, value)).RefusedAsync(HttpStatusCode.Forbidden);
        }
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "same-origin")]
    [InlineData("Sec-Fetch-Site", "none")]
    [InlineData("X-Other", "1")]
    public async Task Change_AskedForByTheOwnPageOrAProgram_IsTaken(string header, string value)
    {
        using var response = await SendAsync(HttpMethod.Post, "/api/plans", (header, value));

        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
    }

    [Fact]
    public async Task Answer_ToAnotherOrigin_NeverAllowsItToRead()
    {
        using var read = await SendAsync(HttpMethod.Get, "/api/plans", ("Origin", "https://elsewhere.example"));
        using var asked = await SendAsync(HttpMethod.Options, "/api/plans", ("Origin", "https://elsewhere.example"));

        Assert.All(
            [read, asked],
            r => Assert.DoesNotContain(r.Headers, h => h.Key.StartsWith("Access-Control", StringComparison.Ordinal))
        );
        Assert.Equal(HttpStatusCode.MethodNotAllowed, asked.StatusCode);
        Assert.Equal("application/problem+json", asked.Content.Headers.ContentType!.MediaType);
    }

    [Theory]
    [InlineData(null, null, "127.0.0.1;localhost;[::1]")]
    [InlineData("http://127.0.0.1:6001", null, "127.0.0.1;localhost;[::1]")]
    [InlineData("http://localhost:6001;http://[::1]:6001", null, "127.0.0.1;localhost;[::1]")]
    [InlineData("http://0.0.0.0:6001", null, "")]
    [InlineData("http://127.0.0.1:6001;http://*:6002", null, "")]
    [InlineData("http://0.0.0.0:6001", "bench", "bench")]
    public void NamesFor_Addresses_AreThoseOfThisMachineWhileItListensThereOnly(
        string? urls,
        string? hosts,
        string expected
    )
    {
        var settings = new ConfigurationBuilder()
            .AddInMemoryCollection(new Dictionary<string, string?> { ["urls"] = urls, ["hosts"] = hosts })
            .Build();

        Assert.Equal(expected, OwnPageOnly.NamesFor(settings));
    }

    private async Task<HttpResponseMessage> SendAsync(
        HttpMethod method,
        string path,
        (string Name, string Value) header
    )
    {
        using var client = service.CreateClient();
        using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative));
        if (method == HttpMethod.Post || method == HttpMethod.Put)
        {
            request.Content = new StringContent(Api.Template(), Encoding.UTF8, "application/json");
        }

        request.Headers.TryAddWithoutValidation(header.Name, header.Value);
        return await client.SendAsync(request, TestContext.Current.CancellationToken);
    }
}
