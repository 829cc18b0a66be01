using System.Buffers.Binary;
using System.Net;
using System.Text.Json;

namespace ShowSafety.Web.Tests.Levels;

public sealed class LevelEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Window =
        """{"lowerLeft": [-20, -10], "stepMetres": 2, "columns": 21, "rows": 11, "earHeightMetres": 1.55}""";

    [Fact]
    public async Task Draw_Window_GivesTheLevelsThePlacesHave()
    {
        using var client = service.CreateClient();

        var (header, values) = await DrawAsync(client, Api.Template(), Window);
        var body = $$"""{"plan": {{Api.Template()}}, "places": [{"place": [-18, -10], "earHeightMetres": 1.55}]}""";
        var said = (await client.SendJsonAsync("/api/points", body).GoodAsync())
            .GetProperty("places")[0]
            .GetProperty("loudest")
            .GetProperty("levelDbA");

        Assert.False(header.GetProperty("cannotTell").GetBoolean());
        Assert.Equal("""["best","planning"]""", header.GetProperty("layers").GetRawText());
        Assert.Equal(2 * 21 * 11, values.Length);
        Assert.Equal(said.GetProperty("best").GetDouble(), values[1], 0.006);
        Assert.Equal(said.GetProperty("planning").GetDouble(), values[(21 * 11) + 1], 0.006);
        Assert.All(values, v => Assert.True(float.IsFinite(v)));
    }

    [Fact]
    public async Task Draw_EngineWithoutSheet_CanNotTellAndDrawsNothing()
    {
        using var client = service.CreateClient();
        var plan = Api.Changed(p => p["engines"]![0]!.AsObject().Remove("sheet"));

        var (header, values) = await DrawAsync(client, plan, Window);

        Assert.True(header.GetProperty("cannotTell").GetBoolean());
        Assert.Empty(values);
    }

    [Fact]
    public async Task Draw_WindowTooFineAndTooWide_IsRefused()
    {
        using var client = service.CreateClient();
        var window = """{"lowerLeft": [0, 0], "stepMetres": 0, "columns": 601, "rows": 0}""";

        var problem = await client
            .SendJsonAsync("/api/levels", $$"""{"plan": {{Api.Template()}}, "window": {{window}}}""")
            .RefusedAsync(HttpStatusCode.BadRequest);

        Assert.Equal(
            ["/window/stepMetres out-of-range", "/window/columns out-of-range", "/window/rows out-of-range"],
            problem.Errors()
        );
    }

    private static async Task<(JsonElement Header, float[] Values)> DrawAsync(
        HttpClient client,
        string plan,
        string window
    )
    {
        using var response = await client.SendJsonAsync(
            "/api/levels",
            $$"""{"plan": {{plan}}, "window": {{window}}}"""
        );
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        var bytes = await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        var length = (int)BinaryPrimitives.ReadUInt32LittleEndian(bytes);
        Assert.Equal(0, length % 4);
        var values = bytes
            .Skip(4 + length)
            .Chunk(4)
            .Select(four => BinaryPrimitives.ReadSingleLittleEndian(four))
            .ToArray();
        return (JsonDocument.Parse(bytes.AsMemory(4, length)).RootElement, values);
    }
}
