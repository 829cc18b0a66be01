using System.Net;

namespace ShowSafety.Web.Tests.Sums;

public sealed class SumEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task List_Sums_EachHasParametersAndSources()
    {
        using var client = service.CreateClient();

        var list = await client.GetGoodAsync("/api/sums");

        Assert.Contains(list.EnumerateArray(), s => s.GetProperty("name").GetString() == "air-absorption");
        Assert.All(list.EnumerateArray(), s => Assert.NotEqual(0, s.GetProperty("sources").GetArrayLength()));
    }

    // The service gives what the sum gives; the sum itself is tested against published values in the core.
    [Fact]
    public async Task Solve_DefaultsOrNumbers_GivesEveryResultAUnitAndAMeaning()
    {
        using var client = service.CreateClient();

        var sums = await client.GetGoodAsync("/api/sums");
        var solvable = sums.EnumerateArray()
            .Where(s =>
                s.GetProperty("parameters")
                    .EnumerateArray()
                    .All(p =>
                        p.GetProperty("default").ValueKind != System.Text.Json.JsonValueKind.Null
                        || p.GetProperty("words").GetArrayLength() > 0
                    )
            )
            .Select(s => s.GetProperty("name").GetString()!)
            .ToList();
        Assert.NotEmpty(solvable);
        foreach (var name in solvable)
        {
            var solved = await client.SendJsonAsync($"/api/sums/{name}", "{}").GoodAsync();
            Assert.Equal(name, solved.GetProperty("name").GetString());
            Assert.All(
                solved.GetProperty("results").EnumerateArray(),
                r => Assert.NotEqual("", r.GetProperty("meaning").GetString())
            );
        }
    }

    [Theory]
    [InlineData("""{"temperatureCelsius": "20"}""", "/temperatureCelsius wrong-type")]
    [InlineData("""{"temperatureCelsius": 1e999}""", "/temperatureCelsius out-of-range")]
    [InlineData("""{"temperatureCelsius": null}""", "/temperatureCelsius wrong-type")]
    [InlineData("""{"temperatureCelsius": [20]}""", "/temperatureCelsius wrong-type")]
    [InlineData("""{"a/b": 1}""", "/a~1b unknown-member")]
    [InlineData("""{"a": 1, "a": 2}""", " not-json")]
    [InlineData("""{"temperatureCelsius": "\ud800"}""", " not-json")]
    [InlineData("""{"\ud800": 1}""", " not-json")]
    [InlineData("[]", " wrong-type")]
    [InlineData("", " not-json")]
    public async Task Solve_BadInput_NamesIt(string json, string expected)
    {
        using var client = service.CreateClient();

        var problem = await client
            .SendJsonAsync("/api/sums/air-absorption", json)
            .RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Contains(expected, problem.Errors());
    }

    [Fact]
    public async Task Solve_UnknownSum_SaysSo()
    {
        using var client = service.CreateClient();

        await client.SendJsonAsync("/api/sums/nothing", "{}").RefusedAsync(HttpStatusCode.NotFound);
    }
}
