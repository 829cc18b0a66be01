namespace ShowSafety.Web.Tests.Hosting;

public sealed class SecurityHeadersTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("/")]
    [InlineData("/health")]
    [InlineData("/api/nothing")]
    public async Task Headers_AnyAnswer_KeepThePageToItsOwnFiles(string path)
    {
        using var client = service.CreateClient();

        using var response = await client.GetAsync(
            new Uri(path, UriKind.Relative),
            TestContext.Current.CancellationToken
        );

        Assert.Equal("nosniff", Header(response, "X-Content-Type-Options"));
        Assert.Equal("DENY", Header(response, "X-Frame-Options"));
        Assert.Equal("no-referrer", Header(response, "Referrer-Policy"));
        Assert.Equal("same-origin", Header(response, "Cross-Origin-Opener-Policy"));
        Assert.Equal("same-origin", Header(response, "Cross-Origin-Resource-Policy"));
        Assert.False(response.Headers.Contains("Server"));
    }

    [Fact]
    public async Task ContentPolicy_Page_AllowsNothingInlineAndNothingFromElsewhere()
    {
        using var client = service.CreateClient();

        using var response = await client.GetAsync(
            new Uri("/", UriKind.Relative),
            TestContext.Current.CancellationToken
        );

        var policy = Header(response, "Content-Security-Policy").Split("; ");
        Assert.Contains("default-src 'none'", policy);
        Assert.Contains("script-src 'self'", policy);
        Assert.Contains("style-src 'self'", policy);
        Assert.Contains("connect-src 'self'", policy);
        Assert.Contains("frame-ancestors 'none'", policy);
        Assert.All(policy, rule => Assert.DoesNotContain("unsafe", rule, StringComparison.Ordinal));
        Assert.All(policy, rule => Assert.DoesNotContain("http", rule, StringComparison.Ordinal));
    }

    private static string Header(HttpResponseMessage response, string name) =>
        Assert.Single(response.Headers.GetValues(name));
}
