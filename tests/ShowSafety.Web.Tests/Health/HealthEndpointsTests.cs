using System.Net;
using System.Net.Http.Json;
using System.Text.Json;

namespace ShowSafety.Web.Tests.Health;

public sealed class HealthEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task GetHealth_RunningService_SaysHealthyAndItsVersion()
    {
        using var client = service.CreateClient();

        var health = await client.GetFromJsonAsync<JsonElement>("/health", TestContext.Current.CancellationToken);

        Assert.Equal("healthy", health.GetProperty("status").GetString());
        Assert.Matches(@"^\d+\.\d+\.\d+$", health.GetProperty("version").GetString());
        Assert.Equal(2, health.EnumerateObject().Count());
    }

    [Fact]
    public async Task GetHealth_Answer_IsNeverKept()
    {
        using var client = service.CreateClient();

        using var response = await client.GetAsync(
            new Uri("/health", UriKind.Relative),
            TestContext.Current.CancellationToken
        );

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.True(response.Headers.CacheControl!.NoStore);
    }
}
