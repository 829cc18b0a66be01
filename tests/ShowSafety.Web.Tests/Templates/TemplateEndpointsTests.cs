using System.Net;

namespace ShowSafety.Web.Tests.Templates;

public sealed class TemplateEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task List_Templates_NamesEachWithItsTitle()
    {
        using var client = service.CreateClient();

        var list = await client.GetGoodAsync("/api/templates");

        Assert.Equal(
            ["closed-marquee", "field-with-neighbour", "open-sided-marquee", "sports-hall"],
            list.EnumerateArray().Select(t => t.GetProperty("name").GetString())
        );
        Assert.All(list.EnumerateArray(), t => Assert.NotEqual("", t.GetProperty("title").GetString()));
    }

    [Fact]
    public async Task Get_EveryTemplate_IsAPlanTheServiceAssessesAsExample()
    {
        using var client = service.CreateClient();

        foreach (var entry in (await client.GetGoodAsync("/api/templates")).EnumerateArray())
        {
            var plan = await client.GetGoodAsync($"/api/templates/{entry.GetProperty("name").GetString()}");
            var assessment = await client.SendJsonAsync("/api/assessments?detail=full", plan.GetRawText()).GoodAsync();
            Assert.True(assessment.GetProperty("example").GetBoolean());
        }
    }

    [Fact]
    public async Task Start_Template_OpensNotToRunWithThingsToFindOut()
    {
        using var client = service.CreateClient();

        var plan = await client.GetGoodAsync("/api/templates/open-sided-marquee/start");
        var assessment = await client.SendJsonAsync("/api/assessments?detail=full", plan.GetRawText()).GoodAsync();

        Assert.Equal("notToRun", assessment.GetProperty("verdict").GetString());
        Assert.NotEqual(0, assessment.GetProperty("findOut").GetArrayLength());
    }

    [Theory]
    [InlineData("/api/templates/nothing")]
    [InlineData("/api/templates/nothing/start")]
    [InlineData("/api/templates/..%2F..%2Fappsettings")]
    public async Task Get_UnknownName_SaysSo(string path)
    {
        using var client = service.CreateClient();

        await client
            .GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken)
            .RefusedAsync(HttpStatusCode.NotFound);
    }
}
