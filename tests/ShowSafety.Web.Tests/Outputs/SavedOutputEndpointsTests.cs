using System.Net;
using System.Text;

namespace ShowSafety.Web.Tests.Outputs;

public sealed class SavedOutputEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("brief.pdf", "application/pdf", "%PDF-")]
    [InlineData("site-plan.svg", "image/svg+xml", "<svg")]
    public async Task Get_SavedPlan_GivesItsDocumentWithItsTagAndAName(string file, string mediaType, string mark)
    {
        using var client = service.CreateClient();
        using var added = await client.SendJsonAsync("/api/plans", Api.Changed(p => p["title"] = "Fête / Öl: \"7\""));

        using var response = await client.GetAsync(
            new Uri($"{added.Headers.Location}/{file}", UriKind.Relative),
            TestContext.Current.CancellationToken
        );
        var bytes = await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(mediaType, response.Content.Headers.ContentType!.MediaType);
        Assert.Equal(added.Headers.ETag, response.Headers.ETag);
        Assert.Equal($"Fête-Öl-7-{file}", response.Content.Headers.ContentDisposition!.FileNameStar);
        Assert.True(response.Headers.CacheControl!.NoStore);
        Assert.Contains(
            mark,
            Encoding.Latin1.GetString(bytes, 0, Math.Min(400, bytes.Length)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("A plan", "A-plan-brief.pdf")]
    [InlineData("  ..//\\ ", "brief.pdf")]
    [InlineData("../../etc/passwd", "etc-passwd-brief.pdf")]
    public void FileName_OfATitle_HoldsLettersDigitsAndHyphens(string title, string expected) =>
        Assert.Equal(expected, ShowSafety.Web.Outputs.Documents.FileName(title, "brief.pdf"));
}
