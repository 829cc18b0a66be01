using System.Net;
using System.Text.RegularExpressions;

namespace ShowSafety.Web.Tests.Hosting;

public sealed partial class PageFilesTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task Root_Page_IsServedAndAskedForAgainEachTime()
    {
        using var client = service.CreateClient();

        using var response = await client.GetAsync(
            new Uri("/", UriKind.Relative),
            TestContext.Current.CancellationToken
        );

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("text/html", response.Content.Headers.ContentType!.MediaType);
        Assert.True(response.Headers.CacheControl!.NoCache);
        Assert.Contains("<title>ShowSafety</title>", await Text(response), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Assets_NamedByThePage_AreServedAndMayBeKept()
    {
        using var client = service.CreateClient();
        var page = await client.GetStringAsync(new Uri("/", UriKind.Relative), TestContext.Current.CancellationToken);
        var assets = AssetAddress().Matches(page).Select(match => match.Value).ToList();

        Assert.True(assets.Count >= 2, "The page names a script and a style sheet.");
        foreach (var asset in assets)
        {
            using var response = await client.GetAsync(
                new Uri(asset, UriKind.Relative),
                TestContext.Current.CancellationToken
            );
            Assert.Equal(HttpStatusCode.OK, response.StatusCode);
            Assert.NotEmpty(await Text(response));
            Assert.Contains(
                "immutable",
                response.Headers.GetValues("Cache-Control").Single(),
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public async Task Root_ClientThatAcceptsCompression_GetsTheWholePage()
    {
        using var handler = new HttpClientHandler
        {
            AutomaticDecompression = DecompressionMethods.All,
            CheckCertificateRevocationList = true,
        };
        using var client = new HttpClient(handler) { BaseAddress = service.Address };

        var page = await client.GetStringAsync(new Uri("/", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Contains("</html>", page, StringComparison.Ordinal);
    }

    private static Task<string> Text(HttpResponseMessage response) =>
        response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

    [GeneratedRegex("/assets/[^\"]+")]
    private static partial Regex AssetAddress();
}
