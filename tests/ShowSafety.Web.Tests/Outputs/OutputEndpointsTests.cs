using System.Net;
using System.Text;

namespace ShowSafety.Web.Tests.Outputs;

public sealed class OutputEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("/api/briefs", "application/pdf", "%PDF-", "Open-sided-marquee-on-hard-standing-brief.pdf")]
    [InlineData("/api/site-plans", "image/svg+xml", "<svg", "Open-sided-marquee-on-hard-standing-site-plan.svg")]
    public async Task Write_Template_GivesAFileToKeep(string path, string mediaType, string mark, string name)
    {
        using var client = service.CreateClient();

        using var response = await client.SendJsonAsync(path, Api.Template());
        var bytes = await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(mediaType, response.Content.Headers.ContentType!.MediaType);
        Assert.Equal(name, response.Content.Headers.ContentDisposition!.FileName);
        Assert.Contains(
            mark,
            Encoding.Latin1.GetString(bytes, 0, Math.Min(400, bytes.Length)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("/api/briefs")]
    [InlineData("/api/site-plans")]
    public async Task Write_BrokenPlan_IsRefusedWithItsProblems(string path)
    {
        using var client = service.CreateClient();

        var problem = await client.SendJsonAsync(path, "{}").RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Contains("/site missing", problem.Errors());
    }
}
