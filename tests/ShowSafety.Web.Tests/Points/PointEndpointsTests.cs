using System.Net;

namespace ShowSafety.Web.Tests.Points;

public sealed class PointEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task Ask_TwoPlaces_SaysHowLoudHowLongAndWhy()
    {
        using var client = service.CreateClient();
        var body =
            $$"""{"plan": {{Api.Template()}}, "places": [{"place": [0, 0]}, {"place": [3, 4], "earHeightMetres": 1}]}""";

        var places = (await client.SendJsonAsync("/api/points", body).GoodAsync()).GetProperty("places");

        Assert.Equal(2, places.GetArrayLength());
        var level = places[0].GetProperty("loudest").GetProperty("levelDbA");
        Assert.Equal("dB(A)", level.GetProperty("unit").GetString());
        Assert.True(level.GetProperty("planning").GetDouble() > level.GetProperty("best").GetDouble());
        Assert.NotEqual(0, places[0].GetProperty("crew").GetProperty("rules").GetArrayLength());
        Assert.All(
            ["loud", "stay", "wear", "why"],
            m => Assert.EndsWith(".", places[0].GetProperty(m).GetString(), StringComparison.Ordinal)
        );
        Assert.NotEqual("", places[0].GetProperty("forCrew").GetProperty("stay").GetString());
        Assert.Equal(1, places[1].GetProperty("loudest").GetProperty("earHeightMetres").GetDouble());
    }

    [Fact]
    public async Task Ask_BadPlanAndBadPlaces_NamesBothAtOnce()
    {
        using var client = service.CreateClient();
        var body = """{"plan": {"title": 5}, "places": [{"place": [0, "x"]}, {"earHeightMetres": 99}], "more": 1}""";

        var errors = (await client.SendJsonAsync("/api/points", body).RefusedAsync(HttpStatusCode.BadRequest)).Errors();

        Assert.Contains("/plan/title wrong-type", errors);
        Assert.Contains("/plan/schema missing", errors);
        Assert.Contains("/places/1/place missing", errors);
        Assert.Contains("/places/1/earHeightMetres out-of-range", errors);
        Assert.Contains("/more unknown-member", errors);
    }

    [Fact]
    public async Task Ask_NoPlace_IsRefused()
    {
        using var client = service.CreateClient();
        var body = $$"""{"plan": {{Api.Template()}}, "places": []}""";

        var problem = await client.SendJsonAsync("/api/points", body).RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Equal(["/places too-few"], problem.Errors());
    }
}
